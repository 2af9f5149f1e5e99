import type { Athlete } from "../../coaching/record/athlete";
import type { Cells } from "../cells";
import { trimmed } from "../column/text-column";
import { headerWords } from "../header/header-words";
import { headingLookup, recogniseHeader } from "../header/recognise-header";
import { joinedNames } from "../name/joined-names";
import { readTable } from "../read-table";
import type { Reading } from "../reading";
import { beginsSummary } from "../table/summary-lines";
import { isBlank } from "../value/blank";
import { foundText } from "../value/found-text";

/** One athlete asked about; `athlete` is "" for a blank cell, which has a row in the result too. */
export type AskedAthlete = {
  readonly athlete: string;
  /** The athlete's row of the Athletes table, when the whole table was given. */
  readonly record: Athlete | null;
};

/** Whatever is longer is no name; sentences that quote it stay readable. */
const longestName = 200;

export type AthletesArgument = {
  /** One for each row the result must have, in the order given. */
  readonly asked: readonly AskedAthlete[];
  /** True when one single cell was given: then a refusal is thrown. */
  readonly single: boolean;
  /** The reading of the Athletes table, when the whole table was given. */
  readonly table: Reading<Athlete> | null;
};

/**
 * Athletes as a formula is given them: one cell, a column or row of cells, or the whole Athletes
 * table with its header. A leading heading ("Athlete") is no athlete and has no row; blank cells
 * inside keep their row; blanks at the end are trimmed.
 */
export function readAthletesArgument(argument: unknown): AthletesArgument {
  if (!Array.isArray(argument)) return one(argument);
  const cells = joinedNames(argument.map((line: unknown) => (Array.isArray(line) ? line : [line])));
  const width = Math.max(0, ...cells.map((line) => line.length));
  if (cells.length === 1 && width === 1) return one(cells[0]![0]);
  if (width > 1 && cells.length > 1) {
    const headed = cells.findIndex(
      (line) => recogniseHeader("Athletes", line).fields.athlete !== undefined,
    );
    if (headed >= 0 && headed < 10) return wholeTable(cells, headed);
  }
  const flat = cells.length === 1 ? cells[0]! : cells.map((line) => line[0]);
  // A hole in a row is a blank cell: `map` would leave it a hole.
  const names = Array.from(flat, listedName);
  const start = isHeading(names[0] ?? "") ? 1 : 0;
  return { asked: untilLastFilled(names.slice(start)), single: false, table: null };
}

function one(cell: unknown): AthletesArgument {
  return { asked: [{ athlete: nameOf(cell), record: null }], single: true, table: null };
}

function wholeTable(cells: Cells, headed: number): AthletesArgument {
  const table = readTable("Athletes", cells);
  const column = recogniseHeader("Athletes", cells[headed]!).fields.athlete!.index;
  const byRow = new Map(table.records.map((record) => [record.row, record]));
  const names = cells.slice(headed + 1).map((line) => listedName(line[column]));
  const asked = untilLastFilled(names).map(({ athlete }, at) => ({
    athlete,
    record: byRow.get(headed + at + 2) ?? null,
  }));
  return { asked, single: false, table };
}

function untilLastFilled(names: readonly string[]): AskedAthlete[] {
  let end = names.length;
  while (end > 0 && names[end - 1] === "") end--;
  return names.slice(0, end).map((athlete) => ({ athlete, record: null }));
}

/** A sum or a count below the names is nobody's. */
function listedName(cell: unknown): string {
  return beginsSummary([cell], { index: 0 }) ? "" : nameOf(cell);
}

function nameOf(cell: unknown): string {
  if (isBlank(cell) || typeof cell === "boolean") return "";
  return trimmed(typeof cell === "string" ? cell.slice(0, longestName) : foundText(cell));
}

function isHeading(name: string): boolean {
  return headingLookup("Athletes").get(headerWords(name).words) === "athlete";
}
