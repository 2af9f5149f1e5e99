import Papa from "papaparse";
import { accept, type Outcome, refuse } from "../../outcome";
import { cellName } from "../a1";
import { type CellData, plainTab, type TabData } from "../workbook-data";
import { csvCell } from "./csv-cell";
import { type FileNote, fileNote } from "./file-note";
import { isHarmlessFormula } from "./harmless-formula";
import { limits } from "./limits";

export type CsvTab = { readonly tab: TabData; readonly notes: readonly FileNote[] };

/**
 * A CSV file as a tab: comma, semicolon or tabulator between fields, quotes as RFC 4180. Formulas run
 * when they are harmless, and stay text with a note when they are not.
 *
 * @param own names of the add-on's functions, upper case
 * @returns refuses `csv-quotes` (a quote that never closes), `too-many-rows`, `too-many-columns`
 */
export function csvTab(name: string, text: string, own: ReadonlySet<string>): Outcome<CsvTab> {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: delimiterOf(text) });
  const broken = errors.find(({ type }) => type === "Quotes");
  if (broken) return refuse("csv-quotes", { file: `${name}.csv`, row: (broken.row ?? 0) + 1 });
  if (data.length > limits.rows) {
    return refuse("too-many-rows", { tab: name, rows: data.length, most: limits.rows });
  }
  const notes: FileNote[] = [];
  const cells: (CellData | null)[][] = [];
  for (const [row, fields] of data.entries()) {
    if (fields.length > limits.columns) {
      return refuse("too-many-columns", {
        tab: name,
        columns: fields.length,
        most: limits.columns,
      });
    }
    cells.push(
      fields.map((field, column) => {
        if (!field.startsWith("=") || field === "=") return csvCell(field);
        if (isHarmlessFormula(field, own)) return { value: null, formula: field };
        notes.push(fileNote("formula-kept-as-text", { cell: `${name} ${cellName(row, column)}` }));
        return { value: field };
      }),
    );
  }
  while (cells.length > 0 && cells[cells.length - 1]!.every((cell) => cell === null)) cells.pop();
  const firstIsHeader = cells.length > 1 && (cells[0] ?? []).every((cell) => cell !== null);
  return accept({ tab: { ...plainTab(name, cells), frozenRows: firstIsHeader ? 1 : 0 }, notes });
}

/**
 * What parts the fields: the sign that the first line with one has most of, as a title may stand above
 * the headings; of two as frequent there the one that the next lines have more of; a comma when none is.
 */
function delimiterOf(text: string): string {
  const lines = text
    .slice(0, 100_000)
    .replace(/"(?:[^"]|"")*"/g, "")
    .split(/[\r\n]+/);
  const from = lines.findIndex((line) => /[,;\t]/.test(line));
  const [first = "", ...next] = from < 0 ? [] : lines.slice(from, from + 20);
  const below = next.join("");
  const more = (line: string, a: string, b: string) => line.split(a).length - line.split(b).length;
  return [";", "\t"].reduce(
    (best, sign) => ((more(first, sign, best) || more(below, sign, best)) > 0 ? sign : best),
    ",",
  );
}
