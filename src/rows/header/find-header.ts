import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import { isBlank } from "../value/blank";
import { isDate } from "../value/is-date";
import { type Unit, unitOf } from "../value/units";
import type { Column } from "./column";
import { neededFields } from "./columns";
import { plainWords } from "./header-words";
import { namedByValues } from "./named-by-values";
import { numbersAlone, speedsUnderNumbers } from "./one-set-a-row";
import { type RecognisedHeader, recogniseHeader } from "./recognise-header";
import { rowsSearched } from "./rows-searched";
import { twoRows } from "./two-rows";
import { withUnitsRow } from "./units-row";

/** The rows that read most like the table's header, and how well. Rows count from 0. */
export type FoundHeader = RecognisedHeader & {
  readonly row: number;
  /** First row of data: below a second header row and a row of units, when there are such. */
  readonly first: number;
  /** The headings as one line; of a header over two rows, both joined. */
  readonly line: readonly unknown[];
  /** Needed meanings that no heading names. */
  readonly missing: readonly string[];
};

/** Looks for the header among the first rows; null when no row names even one meaning. */
export function findHeader(
  table: TableName,
  cells: Cells,
  end: number,
  only: number | null = null,
): FoundHeader | null {
  let best: FoundHeader | null = null;
  let bestWeight = 0;
  for (let row = only ?? 0; row < Math.min(end, only === null ? rowsSearched : only + 1); row++) {
    const line = cells[row]!;
    const alone = headerAt(table, line, row, row + 1);
    const weight = weightOf(table, alone);
    if (weight > bestWeight) {
      best = alone;
      bestWeight = weight;
    }
    const joined = named(alone) > 0 ? twoRows(table, line, cells[row + 1] ?? []) : null;
    if (joined === null) continue;
    const both = headerAt(table, joined, row, row + 2);
    // Two rows read as one header only when that names more than the first row alone.
    if (weightOf(table, both) - 1 > bestWeight) {
      best = both;
      bestWeight = weightOf(table, both) - 1;
    }
  }
  if (best === null) return null;
  const seen = withValues(table, withUnitsRow(best, cells, end), cells, end);
  return table === "Sets" ? withNumberedReps(withTitledUnit(seen, cells), cells, end) : seen;
}

/** "All loads in lb" alone in a line above gives loads their unit; "45 lb bar" says it of the bar. */
function withTitledUnit(found: FoundHeader, cells: Cells): FoundHeader {
  const { load } = found.fields;
  if (load === undefined || load.unit !== null) return found;
  const named = new Set<Unit | null>();
  for (const line of cells.slice(0, found.row)) {
    const [title, ...others] = line.filter((cell) => !isBlank(cell));
    if (others.length > 0) continue;
    for (const [, word] of plainWords(title).matchAll(/(?<!\d ?)\b(kgs?|lbs?|pounds)\b/g))
      named.add(unitOf(word));
  }
  const [unit = null, ...more] = named;
  if (unit === null || more.length > 0) return found;
  return { ...found, fields: { ...found.fields, load: { ...load, unit } } };
}

/** Numbers alone over the speeds of one set a row are its repetitions. */
function withNumberedReps(found: FoundHeader, cells: Cells, end: number): FoundHeader {
  const columns = found.repColumns.length === 0 ? numbersAlone(found.line) : [];
  if (columns.length === 0) return found;
  if (speedsUnderNumbers(cells, found, end, found.fields, columns) !== "each rep") return found;
  return {
    ...found,
    repColumns: columns.map((index, at) => ({
      index,
      unit: null,
      heading: String(found.line[index]),
      words: `rep ${at + 1}`,
    })),
    unknown: found.unknown.filter((index) => !columns.includes(index)),
  };
}

/** The header with what its columns say by their values alone. */
function withValues(table: TableName, found: FoundHeader, cells: Cells, end: number): FoundHeader {
  // With nothing missing no column is looked through.
  if (found.missing.length === 0) return found;
  const seen = namedByValues(table, found, found.line, { cells, first: found.first, end });
  const taken = new Set(Object.values(seen).map(({ index }) => index));
  const others = Object.entries(found.fields).filter(([, { index }]) => !taken.has(index));
  const fields = { ...Object.fromEntries(others), ...seen };
  return {
    ...found,
    fields,
    unknown: found.unknown.filter((index) => !taken.has(index)),
    missing: missingOf(table, fields),
  };
}

export function missingOf(table: TableName, fields: Readonly<Record<string, Column>>): string[] {
  return neededFields[table].filter(
    (field) => fields[field] === undefined && !(field === "load" && fields.scheme !== undefined),
  );
}

function headerAt(
  table: TableName,
  line: readonly unknown[],
  row: number,
  first: number,
): FoundHeader {
  const { fields, repColumns, unknown } = recogniseHeader(table, line);
  return { fields, repColumns, unknown, row, first, line, missing: missingOf(table, fields) };
}

function named({ fields, repColumns }: FoundHeader): number {
  return Object.keys(fields).length + repColumns.length;
}

function weightOf(table: TableName, found: FoundHeader): number {
  const { missing, unknown, line } = found;
  // A row of headings is words; numbers and dates speak against it.
  const figures = line.filter(
    (cell) => (typeof cell === "number" && cell > 20) || isDate(cell),
  ).length;
  return (
    10 * (neededFields[table].length - missing.length) +
    named(found) -
    0.5 * unknown.length -
    5 * figures
  );
}
