import { plainWords } from "../../header/header-words";
import { isBlankLine, namesSummary } from "../../table/read-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import { type Unit, unitOf } from "../../value/units";
import { liftInWords } from "../lift-in-words";
import { emitSets } from "../shorthand/emit-sets";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import type { TabAnswers } from "../tab-answers";
import { type Placed, Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { withWords } from "../with-words";
import { jumpCell } from "./jump-cell";
import { type JumpPart, jumpTitle } from "./jump-title";
import { isJumpColumn, partOf, testName } from "./test-heading";

type TestColumn = {
  readonly index: number;
  readonly heading: string;
  readonly part: JumpPart | null;
};

/** What a column of a test stands for. */
type MeantTest = { readonly test: string; readonly part: JumpPart; readonly unit: Unit | null };

/**
 * One row an athlete and day, one column a test or a lift ("Box jump (cm)", "Drop jump contact ms",
 * "Squat" with shorthand cells). `unknown` are the columns without a meaning of their own. Null when
 * none of them is a test or lift.
 */
export function unfoldWideTests(
  view: TableView,
  table: "Sets" | "Jumps",
  unknown: readonly number[],
  tab: TabAnswers,
): Unfolded | null {
  const { cells, fields, headerRow } = view;
  const head = cells[headerRow]!;
  const columns: TestColumn[] = [];
  for (const index of [...unknown, ...(table === "Jumps" ? figureColumns(view) : [])]) {
    const heading = String(head[index]).trim();
    const isTest = table === "Jumps" ? isJumpColumn(heading) : liftInWords(heading) !== null;
    if (isTest) columns.push({ index, heading, part: partOf(heading) });
  }
  if (columns.length === 0) return null;
  const into = new Unfolded(table, cells, headerRow);
  for (let row = 0; row < view.first; row++) into.mark(row, "heading");
  const tests = new Map<number, MeantTest>();
  for (const { index, heading, part } of columns) {
    const title = jumpTitle(heading);
    const unit =
      title.parts[0]?.unit ?? unitOf(/\b(ms|s|cm|mm|m|in)\b\)?$/.exec(plainWords(heading))?.[1]);
    tests.set(index, { test: testName(heading), part: part ?? "height", unit });
    if (part !== null || unit !== null)
      into.describe(part ?? "height", { heading, words: heading });
  }
  for (let row = view.first; row < view.end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (namesSummary(line.find((cell) => !isBlank(cell)))) {
      into.mark(row, "heading");
      continue;
    }
    const shared: Record<string, Placed | undefined> = {};
    for (const field of [
      "day",
      "minute",
      "athlete",
      "kind",
      "tool",
      "gym",
      "by",
      "drop",
      "landing",
      "note",
    ]) {
      const column = fields[field];
      if (column !== undefined) shared[field] = [line[column.index], column.index];
    }
    into.mark(row, "data");
    const groups = new Map<string, Record<string, Placed | undefined>>();
    for (const { index, heading } of columns) {
      if (isBlank(line[index])) continue;
      if (table === "Sets") setColumn(into, row, line, index, heading, shared, tab);
      else jumpColumn(into, row, line, index, tests.get(index), shared, groups);
    }
    for (const flat of groups.values()) into.emit(row, flat);
    const empty = columns.every(({ index }) => isBlank(line[index]));
    if (empty && (isBlank(shared.day![0]) || isBlank(shared.athlete![0])))
      into.emit(row, { ...shared, test: ["-", -1] });
  }
  return into;
}

function setColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  index: number,
  heading: string,
  shared: Readonly<Record<string, Placed | undefined>>,
  tab: TabAnswers,
): void {
  const said = setCell(line[index], schemeSense(orderFromWords(heading), tab.setsFirst));
  const athlete = String(shared.athlete![0] ?? "");
  if (said.is === "none") into.note(row, index, athlete, null, "day", said.note);
  else if (said.is !== "sets")
    into.log.addAtSource(
      said.is === "order-unsettled" ? "scheme-order-unsettled" : "scheme-unread",
      row,
      index,
    );
  else {
    const { note, ...rest } = shared;
    const place = {
      row,
      schemeColumn: index,
      speedColumn: index,
      shared: { ...rest, exercise: [liftInWords(heading), index] as Placed },
      note: withWords(note, said.note, index),
    };
    emitSets(into, place, said.groups, said.speeds, tab.speeds ?? null);
  }
}

function jumpColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  index: number,
  meant: MeantTest | undefined,
  shared: Readonly<Record<string, Placed | undefined>>,
  groups: Map<string, Record<string, Placed | undefined>>,
): void {
  if (meant === undefined) return;
  const said = jumpCell(line[index], meant.part === "height" ? [] : [meant.part]);
  if (said.problem !== null)
    into.log.addAtSource(
      said.problem,
      row,
      index,
      said.problem === "unsure" ? { mend: String(line[index]).replace(/[?\s]/g, "") } : {},
    );
  into.note(row, index, String(shared.athlete![0] ?? ""), null, "day", said.note);
  said.attempts.forEach((attempt, at) => {
    const key = `${meant.test}|${at}`;
    const flat = groups.get(key) ?? { ...shared, test: [meant.test, index] as Placed };
    groups.set(key, flat);
    // Each column has its own unit: inches here, centimetres in the next.
    if (attempt.height !== undefined) flat.height = [withUnit(attempt.height, meant.unit), index];
    if (attempt.stack !== undefined) flat.stack = [attempt.stack, index];
    if (attempt.cleared !== undefined) flat.cleared = [attempt.cleared, index];
    if (attempt.contact !== undefined)
      flat.contact = [withUnit(attempt.contact, meant.unit), index];
    if (attempt.flight !== undefined) flat.flight = [withUnit(attempt.flight, meant.unit), index];
  });
}

/** Columns such as "Contact ms" belong to a test column of their own when no test is named. */
function figureColumns(view: TableView): number[] {
  return ["contact", "flight", "height", "stack"].flatMap((field) => {
    const column = view.fields[field];
    return column === undefined ? [] : [column.index];
  });
}
