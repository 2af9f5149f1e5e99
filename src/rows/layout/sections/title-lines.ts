import type { Column } from "../../header/column";
import { plainWords } from "../../header/header-words";
import { setKinds } from "../../table/set-kinds";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { foundText } from "../../value/found-text";
import { minuteOfDay } from "../../value/minute-of-day";
import { groupsAsSaid } from "../across/header-of-groups";
import { countsSets } from "../counts-sets";
import { liftInWords, namesJump } from "../lift-in-words";
import { loadMeaning } from "../load-meaning";
import { personName, type Walk, whoAbove } from "./above";
import type { SectionLine } from "./section-line";

/** A header line: its columns hold for the rows below; a lift may stand among the headings. */
export function startBlock(
  walk: Walk,
  said: Extract<SectionLine, { is: "header" }>,
  row: number,
  end: number,
): void {
  const { above, into, tab } = walk;
  into.mark(row, "heading");
  above.header = row;
  above.across = said.across ? groupsAsSaid(said.across, tab.speeds) : null;
  above.set = null;
  const { setCount, ...others } = said.columns;
  const numbers = setCount && !countsSets(into.source, setCount.index, row + 1, end);
  const columns = numbers ? { set: setCount, ...others } : said.columns;
  above.columns = said.across === undefined ? withLabels(columns, into.source[row]!) : columns;
  above.reps = said.reps;
  above.test = null;
  above.load = "";
  if (said.lift !== null) above.exercise = [into.source[row]![said.lift], said.lift];
  describeColumns(walk, above.columns, said.reps);
}

/** Without a column of lifts or sets their names and numbers stand in the first one left of the loads without a heading. */
function withLabels(
  columns: Readonly<Record<string, Column>>,
  headings: readonly unknown[],
): Readonly<Record<string, Column>> {
  const { load, set, exercise } = columns;
  const index = headings.findIndex(
    (heading, at) => at < (load?.index ?? 0) && (isBlank(heading) || dayOfCell(heading) !== null),
  );
  if ((set ?? exercise) !== undefined || index < 0) return columns;
  return { ...columns, set: { index, unit: null, heading: "", words: "set" } };
}

/** Unit and heading of the columns that hold from here on. */
export function describeColumns(
  { into, massUnit }: Walk,
  columns: Readonly<Record<string, Column>>,
  reps: readonly Column[],
): void {
  for (const [field, column] of Object.entries(columns)) into.describe(field, column);
  const { load } = columns;
  if (load !== undefined) into.describe("load", loadMeaning(load, massUnit));
  reps.forEach((column, at) => {
    into.describe(`rep${at + 1}`, column);
  });
}

/** A line with a day on it starts a session; words beside it may name the time, the place, the bar. */
export function startDay(
  walk: Walk,
  said: Omit<Extract<SectionLine, { is: "day" }>, "is">,
  row: number,
): void {
  const { above, into, settler } = walk;
  into.mark(row, "heading");
  const { minute } = said.text;
  above.day = null;
  above.kind = null;
  above.barDoubtful = false;
  above.sessionBar = null;
  above.gym = null;
  above.test = null;
  above.minute = minute === null ? null : [minute / 1440, said.column];
  const result = settler.settle(said.text);
  if (!("day" in result)) {
    into.report(result.code, row, said.column, result.facts);
    return;
  }
  above.day = { day: result.day, row, column: said.column };
  // Beside days names are of one session each.
  const named = above.columns.athlete === undefined;
  if (above.besideDay) above.athlete = null;
  said.line.forEach((cell, column) => {
    if (column === said.column || isBlank(cell)) return;
    const name = named && above.athlete === null ? personName(String(cell)) : null;
    if (minuteOfDay(cell) !== null) above.minute = [cell, column];
    else if (name !== null) {
      above.athlete = [name, column];
      above.besideDay = true;
    } else readSetting(walk, String(cell), row, column);
  });
}

/** A line with words only: an athlete's name, a lift, or settings. */
export function readWords(
  walk: Walk,
  words: readonly { readonly text: string; readonly column: number }[],
  row: number,
): void {
  const { above, into } = walk;
  into.mark(row, "heading");
  for (const { text, column } of words) {
    const lift = liftInWords(text);
    const name = lift === null && !namesJump(text) ? personName(text) : null;
    if (name !== null) {
      above.athlete = [name, column];
      above.besideDay = false;
      above.day = null;
      above.kind = null;
    } else if (lift !== null) {
      above.exercise = [lift, column];
      above.test = null;
    } else {
      // Whatever else stands alone ends a warm-up: no work is taken for one.
      above.kind = setKinds.has(plainWords(text)) ? [text, column] : null;
      // Below names in a column of their own words alone are of none of them.
      if (above.columns.athlete !== undefined && above.kind === null && !isSetting(text))
        into.report("words-alone", row, column, {}, true);
      else readSetting(walk, text, row, column);
    }
  }
}

const ofBar = /\b(?:bar|stange)\b[\s:(=]*(\d{1,2}(?:[.,]\d)?)?\s*(?:kg)?\s*(\?)?/i;
const place = /\b(gym|hall|school|halle|studio|home|track|club)\b/i;

const isSetting = (text: string): boolean => ofBar.test(text) || place.test(text);

/** "bar 20", "their bar (15?)", "school hall – their bar"; anything else is a note. */
function readSetting({ above, into, tab }: Walk, text: string, row: number, column: number): void {
  const day = above.day?.day ?? null;
  into.note(row, column, whoAbove(above), day, day === null ? "table" : "day", text.trim());
  const bar = ofBar.exec(text);
  const parts = text.split(/\s[–—-]\s|\|/);
  const gym = parts.find((part) => place.test(part) && !/\d\s*gym\//.test(part));
  if (day !== null && gym !== undefined) above.gym = [gym, column];
  if (bar === null) return;
  const mass = bar[1] === undefined ? null : Number(bar[1].replace(",", "."));
  const answered = tab.bars?.get(foundText(text).trim());
  if (answered !== undefined) {
    // Where the doubt was the session's, so is the answer: the next day has its own bar again.
    if (day === null) above.bar = [answered, -1];
    else above.sessionBar = [answered, -1];
  } else if (bar[2] !== undefined || (mass === null && day !== null)) {
    above.barDoubtful = true;
    // Only loads depend on the bar; jumps kept in the same tab do not.
    if (into.table === "Sets")
      into.log.addAtSource("bar-unsettled", row, column, mass === null ? {} : { said: mass });
  } else if (mass !== null) above.bar = [mass, -1];
}
