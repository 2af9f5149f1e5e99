import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { illnessIn, saysNoValue } from "../value/no-value";
import { saysWhy, saysWhyNothing } from "../value/why-nothing";

const notDone =
  /^(?:dn[sp]|skip(?:ped)?|missed|rest|off|abs\.?|not done|cancelled|ausgelassen|entfällt)$/i;

const didNot =
  /(?<!\p{L})(?:did(?: not|n['’]?t) (?:train|lift|come)|stayed(?: at)? home|nicht trainiert|zu hause geblieben)(?: today| heute)?\s*(?:$|[,;.:(–—-])/iu;

/**
 * True for words that say that nothing was done, or why; a figure among them may be what was.
 *
 * @param isNote pain in a note may be of what was done: there it must be said that nothing was
 */
function saysNotDone(cell: unknown, isNote: boolean): boolean {
  if (typeof cell !== "string" || (/\d/.test(cell) && !saysWhyNothing(cell))) return false;
  if (notDone.test(cell.trim())) return true;
  return isNote
    ? cell.split(/[,;.:(–—]/).some((part) => illnessIn(part) !== "") || didNot.test(cell)
    : saysWhy(cell);
}

/**
 * Reader of the columns, from 0, in whose cells of a row words say that nothing was done, "ill" where the
 * load would stand or "ill, did not train" in the note; none where a figure stands beside them.
 */
export function notDoneCells({
  fields,
  repColumns,
}: TableView): (line: readonly unknown[]) => readonly number[] {
  const of = [fields.load, fields.reps, fields.speed, fields.rep, ...repColumns];
  const figures = of.flatMap((column) => (column === undefined ? [] : [column.index]));
  const note = fields.note?.index ?? -1;
  const labels = [fields.exercise, fields.set, fields.kind].map((column) => column?.index ?? -1);
  return (line) => {
    const filled = figures.filter((index) => !isBlank(line[index]) && line[index] !== false);
    if (filled.some((index) => typeof line[index] !== "string")) return [];
    const says = [...labels, ...filled, note].filter((index) =>
      saysNotDone(line[index], index === note),
    );
    return filled.every((index) => says.includes(index) || saysNoValue(line[index] as string))
      ? says
      : [];
  };
}
