import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isDate } from "../value/is-date";
import { type Unit, unitOf } from "../value/units";
import type { Column } from "./column";
import { neededFields } from "./columns";
import { plainWords } from "./header-words";
import { namedByValues } from "./named-by-values";
import { numbersAlone, speedsUnderNumbers } from "./one-set-a-row";
import { type RecognisedHeader, recogniseHeader } from "./recognise-header";
import { rowsSearched } from "./rows-searched";

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

/** Headings of two rows joined column by column, the upper ones carried right; null when the second is data. */
function twoRows(
  table: TableName,
  upper: readonly unknown[],
  lower: readonly unknown[],
): unknown[] | null {
  const joined: unknown[] = [];
  let carried = "";
  let filled = 0;
  for (let index = 0; index < Math.max(upper.length, lower.length); index++) {
    const below = lower[index];
    if (
      isDate(below) ||
      (typeof below === "number" && !(Number.isInteger(below) && below >= 1 && below <= 20))
    )
      return null;
    if (!isBlank(upper[index])) carried = String(upper[index]);
    if (!isBlank(below)) filled++;
    // "Rep speeds" over 1, 2, 3 are Rep 1 … Rep 3.
    const numbered = /^\s*(?:rep|r)?\s*(\d{1,2})\s*$/i.exec(isBlank(below) ? "" : String(below));
    const speeds =
      /\b(rep|speed|speeds|m\/s|velocity|wdh|geschwindigkeit)/i.test(carried) ||
      recogniseHeader("Sets", [carried]).fields.speed !== undefined;
    if (numbered !== null && speeds)
      joined.push(`rep ${numbered[1]}${/m\/s/.test(carried) ? " (m/s)" : ""}`);
    else if (isBlank(below)) joined.push(upper[index] ?? "");
    else
      joined.push(
        isBlank(upper[index]) || recogniseWords(table, below) ? below : `${upper[index]} ${below}`,
      );
  }
  return filled >= 2 ? joined : null;
}

function recogniseWords(table: TableName, cell: unknown): boolean {
  return [table, "Sets" as const, "Jumps" as const].some(
    (one) => Object.keys(recogniseHeader(one, [cell]).fields).length > 0,
  );
}

/** Meanings that have no unit: something under them is data. */
const wordsOf = ["athlete", "exercise", "test", "race", "rule"];

/** A row of units under the header ("", "", "kg", "m/s") gives its units to the columns. */
function withUnitsRow(found: FoundHeader, cells: Cells, end: number): FoundHeader {
  if (found.first >= end) return found;
  const line = cells[found.first]!;
  const filled = line.filter((cell) => !isBlank(cell));
  const bare = (cell: unknown) => String(cell).replace(/[()[\]]/g, "");
  const units = filled.filter((cell) => !isDitto(cell) && unitOf(bare(cell)) !== null).length;
  const wordsOnly = filled.every(
    (cell) =>
      typeof cell === "string" && !/\d/.test(cell.replace(/0\s*[-–]\s*10|1\s*[-–]\s*[57]/, "")),
  );
  // "Ilka, mile" is an athlete and her event.
  if (wordsOf.some((field) => !isBlank(line[found.fields[field]?.index ?? -1]))) return found;
  if (units === 0 || !wordsOnly || units < filled.length / 2) return found;
  const united = (column: Column): Column => ({
    ...column,
    unit: column.unit ?? unitOf(bare(line[column.index])),
  });
  return {
    ...found,
    first: found.first + 1,
    fields: Object.fromEntries(
      Object.entries(found.fields).map(([field, column]) => [field, united(column)]),
    ),
    repColumns: found.repColumns.map(united),
  };
}
