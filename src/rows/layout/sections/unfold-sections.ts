import { plainWords } from "../../header/header-words";
import { isBlankLine } from "../../table/read-lines";
import { setKinds } from "../../table/set-kinds";
import { beginsSummary } from "../../table/summary-lines";
import { isBlank } from "../../value/blank";
import { cellAddress } from "../../value/cell-address";
import { dayOfCell } from "../../value/day-of-cell";
import { isDitto } from "../../value/ditto";
import { foundText } from "../../value/found-text";
import { DaySettler } from "../day-settler";
import type { LayoutContext } from "../layout-context";
import { namesJump } from "../lift-in-words";
import { noSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import { titleYear } from "../title-year";
import { Unfolded } from "../unfolded";
import { jumpCell } from "../wide/jump-cell";
import { speaksOfWeek } from "../wide/week-header";
import { aboveAll, type Walk } from "./above";
import { acrossJumps, acrossRow, tellNotes } from "./across-row";
import { jumpRow } from "./jump-row";
import { markMarkerSets } from "./marker-sets";
import { linesIn, type SectionLine } from "./section-line";
import { setRow, takeOwnContext } from "./set-row";
import { readWords, startBlock, startDay } from "./title-lines";

/**
 * Blocks one under another: an athlete's name or a day on a line of its own, a header above each
 * block, sets below. One tab an athlete is such a tab with the name in a title cell or the tab's
 * name. Null when no header of sets stands in the tab.
 */
export function unfoldSections(context: LayoutContext): Unfolded | null {
  const { cells, end } = context;
  const lines = linesIn(cells, end);
  const header = lines.findIndex((line) => line.is === "header");
  if (header < 0) return null;
  const into = new Unfolded(
    context.table === "Jumps" ? "Jumps" : "Sets",
    cells,
    header,
    context.leftAlone,
  );
  const walk: Walk = {
    into,
    above: aboveAll(context.title, context.tab),
    settler: settlerOf(context, lines),
    pending: [],
    tab: context.tab,
    massUnit: context.massUnit,
  };
  for (let row = 0; row < end; row++) {
    const line = cells[row]!;
    const said = lines[row] as SectionLine;
    if (isBlankLine(line)) continue;
    noteWeek(walk, line, row);
    if (said.is === "summary" && beginsSummary(line, walk.above.columns.athlete))
      into.mark(row, "heading");
    else if (said.is === "header") {
      if (said.day !== null) startDay(walk, { ...said.day, line: [] }, row);
      startBlock(walk, said, row, endOfBlock(lines, row));
    } else if (said.is === "labels") into.mark(row, "heading");
    else if (said.is === "day" && !isOfAthlete(walk, line, said.column)) startDay(walk, said, row);
    else if (said.is === "words" && startsTest(walk, said.words[0]!)) into.mark(row, "heading");
    else if (said.is === "words" && !isLoneFigure(walk, said.words[0]!))
      readWords(walk, said.words, row);
    else dataRow(walk, line, row);
  }
  markMarkerSets(walk.pending);
  for (const { row, flat, meanings } of walk.pending) into.emit(row, flat, undefined, meanings);
  return into;
}

/** A line that names a week names no day: rows that lack theirs are told of it. */
function noteWeek({ above }: Walk, line: readonly unknown[], row: number): void {
  const at = line.findIndex((cell) => speaksOfWeek(cell) && dayOfCell(cell) === null);
  if (at >= 0) above.week = { week: foundText(line[at]), cell: cellAddress(row + 1, at + 1) };
}

/** Day and name in their own columns: a row like the others, with nothing lifted. */
function isOfAthlete({ above }: Walk, line: readonly unknown[], column: number): boolean {
  const { day, athlete } = above.columns;
  return day?.index === column && athlete !== undefined && !isBlank(line[athlete.index]);
}

/** Row of the next header, or after the last. */
function endOfBlock(lines: readonly SectionLine[], header: number): number {
  const next = lines.findIndex((line, at) => at > header && line.is === "header");
  return next < 0 ? lines.length : next;
}

/** All days of the tab together settle order and year. */
function settlerOf(context: LayoutContext, lines: readonly SectionLine[]): DaySettler {
  const columns = new Set(
    lines.flatMap((line) => (line.is === "header" ? [line.columns.day?.index ?? -1] : [])),
  );
  const texts = lines.flatMap((line, row) => {
    if (line.is === "day") return [line.text];
    if (line.is === "header") return line.day === null ? [] : [line.day.text];
    return [...columns].flatMap((index) => dayOfCell(context.cells[row]![index]) ?? []);
  });
  return new DaySettler(texts, titleYear(context), context.today, context.dateOrder);
}

/** A jump named alone where set numbers stand: the rows below are its attempts. */
function startsTest(
  { above }: Walk,
  { text, column }: { readonly text: string; readonly column: number },
): boolean {
  const { load, exercise } = above.columns;
  const under = load !== undefined && exercise === undefined;
  if (!under || column !== labelColumn(above) || !namesJump(text)) return false;
  above.test = [text, column];
  return true;
}

/** A cell alone in its row that stands where figures stand and reads as one: "85x3x5" under "kg". */
function isLoneFigure(
  { above }: Walk,
  { text, column }: { readonly text: string; readonly column: number },
): boolean {
  if (above.test !== null && column > labelColumn(above))
    return jumpCell(text, []).attempts.length > 0;
  const under = [above.columns.load, above.columns.scheme].some((one) => one?.index === column);
  return under && /^(sets|order-unsettled|ditto)$/.test(setCell(text, noSense).is);
}

/** Where set numbers and names of lifts stand. */
function labelColumn({ columns }: Walk["above"]): number {
  return (columns.set ?? columns.exercise)?.index ?? -1;
}

/** The jump a row under a column of exercises is of, its own or the one above; null when it is a lift's. */
function jumpUnderExercises({ above }: Walk, line: readonly unknown[]): unknown {
  const { exercise } = above.columns;
  if (exercise === undefined) return null;
  const own = line[exercise.index];
  const named = isBlank(own) || isDitto(own) ? above.exercise?.[0] : own;
  return namesJump(named) ? named : null;
}

/** Nothing stands under lifts and figures: who and when hold for the rows below, words are the day's. */
function namesNothingLifted({ above }: Walk, line: readonly unknown[]): boolean {
  const { athlete: _athlete, day: _day, note: _note, ...figures } = above.columns;
  return (
    figures.load !== undefined &&
    above.test === null &&
    [...Object.values(figures), ...above.reps].every(({ index }) => isBlank(line[index]))
  );
}

/** A word where set numbers stand starts another exercise or a jump test on its own line. */
function dataRow(walk: Walk, line: readonly unknown[], row: number): void {
  const { above } = walk;
  if (above.across !== null) {
    const test = jumpUnderExercises(walk, line);
    if (test === null) acrossRow(walk, line, row);
    else acrossJumps(walk, line, row, test);
    return;
  }
  if (namesNothingLifted(walk, line)) {
    if (takeOwnContext(walk, line, row)) tellNotes(walk, line, row);
    return;
  }
  const jump = jumpUnderExercises(walk, line);
  if (jump !== null) {
    if (!takeOwnContext(walk, line, row)) return;
    const { load, exercise } = above.columns;
    above.test = [jump, exercise!.index];
    jumpRow(walk, line, row, load === undefined ? exercise!.index : load.index - 1);
    above.test = null;
    return;
  }
  const column = labelColumn(above);
  const label = line[column];
  const words = typeof label === "string" ? label.trim() : "";
  const isSet =
    /^(?:s|set|satz)?\s*\d{1,2}[.)]?$/i.test(words) ||
    setKinds.has(plainWords(words)) ||
    isDitto(label);
  if (words !== "" && !isSet && above.columns.exercise === undefined) {
    above.test = namesJump(label) ? [label, column] : null;
    if (above.test === null) above.exercise = [label, column];
  }
  if (above.test !== null && (isBlank(label) || namesJump(label))) jumpRow(walk, line, row, column);
  else setRow(walk, line, row, column);
}
