import fc from "fast-check";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { plainWords } from "../../src/rows/header/header-words";
import { type Understanding, understandTable } from "../../src/rows/read-table";
import { PlainSet } from "../../src/rows/table/plain-set";
import { namesSummary } from "../../src/rows/table/summary-lines";
import type { TableName } from "../../src/rows/table-name";
import { isBlank } from "../../src/rows/value/blank";
import { dayOfCell } from "../../src/rows/value/day-of-cell";
import { isDitto } from "../../src/rows/value/ditto";
import { saysNoValue } from "../../src/rows/value/no-value";
import { sayRowIssue } from "../../src/words/row-issues";
import { type KeptTable, keptTable } from "./kept-tables";
import type { Table } from "./tables";

const today = dayFromIso("2026-06-16") as number;

/** Cells that slip into tables: words, units, two figures, marks, dates, doubts. */
const junk: fc.Arbitrary<unknown> = fc.constantFrom<unknown>(
  "zq",
  "felt heavy",
  "85 tired",
  "85 kg",
  "185 lb",
  "62 cm/s",
  "7 8",
  "80/85",
  "0.62 0.60",
  "0.58?",
  "46 sore",
  "5x5 95 zq",
  "95x5x5 .62 zq",
  "5x15+5 zq",
  "45 easy zq",
  "2-3",
  "3+2",
  "1,234",
  "12/5 zq",
  "2026-05-12 zq",
  "18:00 zq",
  "y zq",
  "squat zq",
  "wu",
  "AVG",
  '"',
  "as above",
  "-",
  "DNS",
  7,
  85,
  0.62,
  185,
  2026,
  0,
  true,
  new Date(2026, 4, 12),
  new Date(1899, 11, 30, 18, 5),
);

const headings = fc.constantFrom(
  "",
  "Feel",
  "Zq",
  "kg",
  "Reps",
  "m/s",
  "Speed",
  "Load",
  "Athlete",
  "Date",
  "Notes",
  "Coach notes",
  "PB",
  "Total",
  "Time",
  "Set",
  "Rep 1",
  "Height",
  "min",
  "km",
  "Sleep",
  "Group",
  "Test",
  "Kind",
);

type Slip = (table: KeptTable) => KeptTable;

const slips: fc.Arbitrary<Slip> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.tuple(fc.nat(), fc.nat(), junk).map(
      ([r, c, cell]): Slip =>
        (kept) => {
          const { cells, first } = kept;
          const row = first + (r % Math.max(cells.length - first, 1));
          return withCells(kept, (line, at) => {
            if (at !== row || line.length === 0) return line;
            return line.map((old, index) => (index === c % line.length ? cell : old));
          });
        },
    ),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(fc.nat(), headings, fc.array(junk, { minLength: 1, maxLength: 4 })).map(
      ([c, heading, column]): Slip =>
        (kept) => {
          const width = Math.max(...kept.cells.map((line) => line.length));
          const place = c % (width + 1);
          return withCells(kept, (line, at) => {
            if (line.length === 0) return line;
            const cell =
              at === kept.first - 1 ? heading : at < kept.first ? "" : column[at - kept.first];
            const full = [...line, ...Array<unknown>(Math.max(place - line.length, 0)).fill("")];
            return [...full.slice(0, place), cell ?? "", ...full.slice(place)];
          });
        },
    ),
  },
  fc.tuple(fc.nat(), fc.array(junk, { minLength: 1, maxLength: 4 })).map(
    ([r, line]): Slip =>
      (kept) => {
        const at = kept.first + (r % (kept.cells.length - kept.first + 1));
        return { ...kept, cells: [...kept.cells.slice(0, at), line, ...kept.cells.slice(at)] };
      },
  ),
);

function withCells(
  kept: KeptTable,
  change: (line: readonly unknown[], row: number) => readonly unknown[],
): KeptTable {
  return { ...kept, cells: kept.cells.map(change) };
}

/** All that a coach is told of a table: records, notes, issues, questions, what became of columns and rows. */
function told(all: readonly Understanding<TableName>[]): string {
  return JSON.stringify(
    all.map(({ reading, questions, tabQuestions }) => ({
      records: reading.records.map((one) => (one instanceof PlainSet ? one.record() : one)),
      notes: reading.notes,
      issues: reading.issues.map(({ code, cell, found, facts }) => [code, cell, found, facts]),
      questions,
      tabQuestions,
      counts: [reading.rowsRead, reading.rowsReported, reading.rowsBlank, reading.rowsHeading],
    })),
  );
}

type Understand = (kept: KeptTable, cells: Table) => Understanding<TableName>[];

export const understoodBy: Understand = (kept, cells) =>
  [kept.table, ...kept.also].map((table) =>
    understandTable<TableName>(table, cells, { today, title: kept.title, said: true }),
  );

/** Other contents of a cell: nothing, another figure or word, and each of its parts changed by itself. */
export function others(cell: unknown): (readonly unknown[])[] {
  if (typeof cell !== "string") {
    return [["", typeof cell === "number" ? cell + 1 : "qz", "qz", 77777]];
  }
  const parts = [...cell.matchAll(/\p{L}+|\d+/gu)];
  const changed = parts.map(({ 0: part, index }) =>
    (/\d/.test(part) ? [`${Number(part) + 1}`, "9"] : ["qzq", "vv"]).map(
      (other) => cell.slice(0, index) + other + cell.slice(index + part.length),
    ),
  );
  return [["", "qz", 77777], ...changed];
}

const replaced = (cells: Table, row: number, column: number, cell: unknown): Table =>
  cells.map((line, at) =>
    at === row ? line.map((old, index) => (index === column ? cell : old)) : line,
  );

/** What of a cell the product passed over without a word; null when all of it was read or told. */
export function lostOf(
  kept: KeptTable,
  row: number,
  column: number,
  understood: Understand = understoodBy,
): string | null {
  const { cells } = kept;
  const cell = cells[row]![column];
  if (isBlank(cell) || cell === false) return null;
  // A mark under a blank repeats the blank.
  if (typeof cell === "string" && (saysNoValue(cell) || isDitto(cell))) return null;
  const before = understood(kept, cells);
  if (declared(kept, before, row, column)) return null;
  const said = told(before);
  for (const way of others(cell)) {
    const same = way.every(
      (other) => told(understood(kept, replaced(cells, row, column, other))) === said,
    );
    if (same) return way.map(String).join(" or ");
  }
  return null;
}

/** A record, a note or an issue of the table is of the row. */
const speaksOf = (
  { records, notes = [], issues }: Understanding<TableName>["reading"],
  row: number,
): boolean => [...records, ...notes, ...issues].some((one) => one.row === row);

/** The row or column is named as not used, or the row is one of sums. */
function declared(
  { table, also, cells, first }: KeptTable,
  all: readonly Understanding<TableName>[],
  row: number,
  column: number,
): boolean {
  const line = cells[row]!;
  const filled = line.filter((one) => !isBlank(one));
  // Sums, and a word alone in its row: a section's name.
  const [one, ...others] = new Set(filled);
  // So is a name that stands twice, under two headings of athletes: somebody who did nothing.
  if (line.some(namesSummary) || (others.length === 0 && typeof one === "string")) return true;
  const heading = (at: number) => plainWords(cells[first - 1]?.[at]);
  const [{ columns, layout }] = all as [Understanding<TableName>];
  if (layout === "not recognised") return true;
  // The time and the number of a try tell jumps apart that are typed twice; a jump has neither.
  const field = columns.find((one) => one.column === column + 1)?.field ?? "";
  const ofJump =
    table === "Jumps" ||
    all.some(({ reading }, at) => also[at - 1] === "Jumps" && speaksOf(reading, row + 1));
  if (ofJump && ["minute", "attempt"].includes(field)) return true;
  // "2/3" is the second set of three.
  if (field === "set" && /^\d+\/\d+$/.test(String(line[column]))) return true;
  // One figure beside single repetitions is their mean, or their best.
  const reps = columns.some((one) => one.field === "rep 1" && !isBlank(line[one.column - 1]));
  if (field === "speed" && reps && /^[\d.,]+$/.test(String(line[column]))) return true;
  const issues = all.flatMap((one) => one.reading.issues);
  const identity = columns.flatMap(({ field, column: at }) =>
    ["day", "athlete", "exercise", "test"].includes(field ?? "") ? [at - 1] : [],
  );
  // Two dates beside one another head a grid of their own.
  if (filled.filter((one) => dayOfCell(one) !== null).length >= 2) return true;
  // A header within the tab, a row that names its athlete only, who and when and nothing else.
  const wordy = line.every((one) => isBlank(one) || typeof one === "string");
  if (layout === "blocks one under another" && wordy) return true;
  const read = all.some(({ reading: { records, notes = [] } }) =>
    [...records, ...notes].some((one) => one.row === row + 1),
  );
  const counts = all.some(({ reading: { records } }) => records.some((one) => one.row === row + 1));
  const named = issues.some((issue) => issue.row === row + 1) && identity.includes(column);
  if (!counts && (named || /^(athlete|name)$/.test(heading(column)))) return true;
  if (line.every((one, at) => isBlank(one) || identity.includes(at))) return true;
  const ofRow = issues.some(
    (issue) =>
      issue.row === row + 1 &&
      /speeds: others|whole row is left out|this one does not|counts for nobody/.test(
        sayRowIssue(issue).whyItMatters,
      ),
  );
  const ofColumn = all
    .flatMap(({ questions }) => questions)
    .some(
      (asked) =>
        asked.about === "meaning" &&
        (asked.column === column + 1 ||
          (heading(column) !== "" && heading(column) === plainWords(asked.heading))),
    );
  const leftAlone =
    layout !== "dates across" &&
    columns.some((one) => one.column === column + 1 && one.field === null && one.by === "heading");
  const ofHeading = issues.some(
    (issue) =>
      issue.row <= Math.max(first, row + 1) &&
      ((issue.row <= first && issue.column === column + 1) ||
        ["exercise-missing", "diary-question-missing"].includes(issue.code)),
  );
  const atCell = issues.some(
    (issue) => issue.row === row + 1 && (!read || issue.column === column + 1),
  );
  return ofRow || ofColumn || leftAlone || ofHeading || atCell;
}

/** Rows of one length, as a spreadsheet hands them over. */
function rectangular(kept: KeptTable): KeptTable {
  const width = Math.max(...kept.cells.map((line) => line.length));
  return withCells(kept, (line) => Array.from({ length: width }, (_, at) => line[at] ?? ""));
}

/** Changing what a cell holds, or any part of it, changes what is read or told of it. */
export const nothingPassedOver = fc.property(
  keptTable,
  fc.array(slips, { maxLength: 3 }),
  fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 6, maxLength: 6 }),
  (base, changes, places) => {
    const kept = rectangular(changes.reduce((so, change) => change(so), base));
    const { cells, first } = kept;
    for (const [r, c] of places) {
      const row = first + (r % Math.max(cells.length - first, 1));
      const line = cells[row];
      if (line === undefined || line.length === 0) continue;
      const column = c % line.length;
      const lost = lostOf(kept, row, column);
      if (lost !== null)
        throw new Error(
          `row ${row + 1}, column ${column + 1} of ${kept.table}: ${String(line[column])} may as well be ${lost}`,
        );
    }
  },
);
