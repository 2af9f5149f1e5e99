import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { saysNoValue } from "../value/no-value";
import { saysWhy, saysWhyNothing } from "../value/why-nothing";

const notDone =
  /^(?:dn[sp]|skip(?:ped)?|missed|rest|off|abs\.?|not done|cancelled|ausgelassen|entfällt)$/i;

/** True for words that say that nothing was done, or why; a figure among them may be what was. */
function saysNotDone(cell: unknown): boolean {
  if (typeof cell !== "string" || (/\d/.test(cell) && !saysWhyNothing(cell))) return false;
  return notDone.test(cell.trim()) || saysWhy(cell);
}

/**
 * Reader of the columns, from 0, in whose cells of a row words say that nothing was done, "ill" where the
 * load would stand; none where a figure stands beside them.
 */
export function notDoneCells({
  fields,
  repColumns,
}: TableView): (line: readonly unknown[]) => readonly number[] {
  const of = [fields.load, fields.reps, fields.speed, fields.rep, ...repColumns];
  const figures = of.flatMap((column) => (column === undefined ? [] : [column.index]));
  const labels = [fields.exercise, fields.set, fields.kind].map((column) => column?.index ?? -1);
  return (line) => {
    const filled = figures.filter((index) => !isBlank(line[index]) && line[index] !== false);
    if (filled.some((index) => typeof line[index] !== "string")) return [];
    const says = [...labels, ...filled].filter((index) => saysNotDone(line[index]));
    return filled.every((index) => says.includes(index) || saysNoValue(line[index] as string))
      ? says
      : [];
  };
}
