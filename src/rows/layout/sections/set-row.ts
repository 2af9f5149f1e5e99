import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { isDitto } from "../../value/ditto";
import { holdsNothing } from "../../value/no-value";
import type { Placed } from "../flat-rows";
import { noSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import { withWords } from "../with-words";
import { keyOf, reportLacking, type Walk, whoAbove } from "./above";
import { shorthandRow } from "./shorthand-row";

/** A row of sets under a header: its own cells first, then what stands above it. */
export function setRow(
  walk: Walk,
  line: readonly unknown[],
  row: number,
  labelColumn: number,
): void {
  const { above, into } = walk;
  if (above.columns.load === undefined) {
    into.report("row-unread", row, Math.max(labelColumn, 0));
    return;
  }
  if (!takeOwnContext(walk, line, row)) return;
  if (into.table === "Jumps") {
    into.mark(row, "heading");
    return;
  }
  const { athlete, day, exercise } = above;
  if (athlete === null || day === null || exercise === null) {
    reportLacking(walk, row);
    return;
  }
  const own: Record<string, Placed | undefined> = {};
  for (const [field, { index }] of Object.entries(above.columns)) own[field] = [line[index], index];
  // A lift's name where set numbers stand is no number to be missed.
  if (line[labelColumn] === exercise[0]) own.set = undefined;
  if (above.set !== null) own.set = above.set;
  const written = loadOf(walk, own.load!);
  const shared: Record<string, Placed | undefined> = {
    ...own,
    day: [isoFromDay(day.day), day.row === row ? day.column : -1],
    minute: own.minute ?? above.minute ?? undefined,
    athlete,
    exercise,
    kind: own.kind ?? above.kind ?? undefined,
    // A mark for no value: the doubtful bar was reported once, its loads are not missing one by one.
    load: above.barDoubtful ? ["-", written[1]] : written,
    bar: own.bar ?? (above.barDoubtful ? undefined : (above.sessionBar ?? above.bar ?? undefined)),
    gym: own.gym ?? above.gym ?? undefined,
    note: noteOf(walk, line, row),
  };
  if (shorthandRow(walk, line, row, shared, written) || perSide(walk, line, row, shared)) return;
  above.reps.forEach(({ index }, at) => {
    shared[`rep${at + 1}`] = [line[index], index];
  });
  walk.pending.push({ row, writtenLoad: written[0], flat: shared, meanings: into.meanings() });
}

/** Day, athlete and exercise written in the row itself hold from here on; false when the day is bad. */
export function takeOwnContext(
  { above, into, settler }: Walk,
  line: readonly unknown[],
  row: number,
): boolean {
  const at = (field: string) => above.columns[field]?.index ?? -1;
  if (!isBlank(line[at("day")]) && !isDitto(line[at("day")])) {
    const text = dayOfCell(line[at("day")]);
    const result = text === null ? { code: "not-a-day", facts: {} } : settler.settle(text);
    if (!("day" in result)) {
      into.report(result.code, row, at("day"), result.facts, true);
      return false;
    }
    above.day = { day: result.day, row, column: at("day") };
  }
  for (const field of ["athlete", "exercise"] as const)
    if (!isBlank(line[at(field)]) && !isDitto(line[at(field)]))
      above[field] = [line[at(field)], at(field)];
  return true;
}

/**
 * The row's load; a ditto mark or "as above" repeats the load above, and so does a blank, where that is of
 * the same athlete, day and lift: pull-ups below squats have none.
 */
function loadOf({ above }: Walk, load: Placed): Placed {
  const of = keyOf(above);
  if (isDitto(load[0]) || isBlank(load[0]))
    return [above.loadOf === of || isDitto(load[0]) ? above.load : "", load[1]];
  above.load = load[0];
  above.loadOf = of;
  return load;
}

const sides = /^\s*(\d{1,2})\s*\+\s*\1\s*$/;

/** "6+6" under the repetitions of a one-legged lift: six each side, one cell a set. */
function perSide(
  { above, into }: Walk,
  line: readonly unknown[],
  row: number,
  shared: Readonly<Record<string, Placed | undefined>>,
): boolean {
  const cells = above.reps.filter(({ index }) => !holdsNothing(line[index]));
  if (!cells.every(({ index }) => sides.test(String(line[index])))) return false;
  for (const { index } of cells) {
    const each = Number(sides.exec(String(line[index]))![1]);
    into.emit(row, { ...shared, set: undefined, bar: undefined, reps: [each, index] });
  }
  return cells.length > 0;
}

/** The note of a row: its own column, and words in columns without a meaning; figures there are told. */
export function noteOf(
  { above, into }: Walk,
  line: readonly unknown[],
  row: number,
): Placed | undefined {
  const { note, scheme } = above.columns;
  const said = scheme && setCell(line[scheme.index], noSense);
  const words = said?.is === "none" && said.note !== "" ? scheme!.index : undefined;
  let noted: Placed | undefined = note && [line[note.index], note.index];
  const known = new Set([...Object.values(above.columns), ...above.reps].map(({ index }) => index));
  for (let index = 0; index < line.length; index++) {
    const cell = line[index];
    const taken = known.has(index) ? index !== words : above.across?.known.has(index);
    if (taken || isBlank(cell) || cell === false) continue;
    if (typeof cell !== "string") {
      into.unread.see(above.header, row, index);
      continue;
    }
    const text = cell.trim();
    into.note(row, index, whoAbove(above), above.day?.day ?? null, "day", text);
    noted = withWords(noted, text, index);
  }
  return noted;
}
