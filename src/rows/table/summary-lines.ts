import type { Column } from "../header/column";
import { plainWords } from "../header/header-words";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";

const summary = new Set(
  "avg average mean max min sum total totals count sd median schnitt mittel mittelwert durchschnitt summe gesamt ø subtotal best bestwert range volume tonnage moyenne somme promedio suma totale gemiddelde summa".split(
    " ",
  ),
);

/** True for the first word of a row of averages or sums. */
export function namesSummary(cell: unknown): boolean {
  return summary.has(plainWords(cell).replace(/[.:]$/, ""));
}

/** Words of such rows that are first names too. */
export function mayBeName(cell: unknown): boolean {
  return /^m(ax|in)$/.test(plainWords(cell));
}

/** What a row is of; the best or greatest, and a day of volume, may be rows like the others. */
const labels = ["exercise", "test", "set"];
const mayBeRow = /^(?:best|max|min|volume)/;

/** Whether a row's lift, test or set, or what kind of run it was, is a sum or an average: "Total" beside the athlete's name. */
export function sumsUp({
  table,
  fields,
}: Pick<TableView, "table" | "fields">): (line: readonly unknown[]) => boolean {
  const columns = (table === "Runs" ? ["kind"] : labels).flatMap(
    (field) => fields[field]?.index ?? [],
  );
  // The same few words stand down a column.
  const seen = new Map<string, boolean>();
  const sums = (cell: unknown) => {
    if (typeof cell !== "string" || cell === "") return false;
    if (!seen.has(cell)) seen.set(cell, namesSummary(cell) && !mayBeRow.test(plainWords(cell)));
    return seen.get(cell)!;
  };
  return (line) => columns.some((index) => sums(line[index]));
}

/** "Summe: 5 Athleten", "Total athletes: 5", "5 runners": how many there are. */
const counted =
  /^(?:(?:sum|summe|total|gesamt|anzahl|count)\b\D*\d+\D*|\d+ (?:athletes?|athleten|runners?|läufer))$/i;

/** True for a row that begins so, where its first filled cell names no athlete. */
export function beginsSummary(
  line: readonly unknown[],
  athlete: Pick<Column, "index"> | undefined,
): boolean {
  const at = line.findIndex((cell) => !isBlank(cell));
  const words = line[at];
  if (typeof words === "string" && counted.test(words.trim())) return true;
  return namesSummary(line[at]) && !(at === athlete?.index && mayBeName(line[at]));
}

/** "AVG", "Schnitt", "total" in the row's first filled cell, and a needed cell left blank. */
export function isSummary(
  line: readonly unknown[],
  heads: readonly number[],
  athlete: Column | undefined,
): boolean {
  let lacks = heads.length < 2;
  for (const index of heads) if (isBlank(line[index])) lacks = true;
  return lacks && beginsSummary(line, athlete);
}
