import { headerWords } from "../../header/header-words";
import { isBlankLine } from "../../table/read-lines";
import { namesSummary } from "../../table/summary-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import { saysNoValue } from "../../value/no-value";
import { yesNo } from "../../value/yes-no";
import type { Placed } from "../flat-rows";
import { Unfolded } from "../unfolded";

type Runners = { readonly index: number; readonly who: string };

/**
 * Races down, athletes or groups across, a mark where they run: one race for each mark. `unknown` are
 * the columns without a meaning of their own. Null when none of them holds marks only.
 */
export function unfoldRaceRunners(view: TableView, unknown: readonly number[]): Unfolded | null {
  const { cells, headerRow } = view;
  const { who: headed, ...fields } = view.fields;
  const named = namesBelow(view, unknown);
  // "Runners" over a name, and over others beside it, heads marks; over none it heads names.
  if (headed !== undefined && !(named && !isBlank(cells[view.first]![headed.index]))) return null;
  const first = view.first + (named ? 1 : 0);
  const columns = headed === undefined ? unknown : [headed.index, ...unknown];
  const runners = columns.flatMap((index): Runners[] => {
    const who = String((named && cells[view.first]![index]) || cells[headerRow]![index]).trim();
    return who !== "" && holdsMarks(view, first, index) ? [{ index, who }] : [];
  });
  if (runners.length === 0) return null;
  const into = new Unfolded("Races", cells, headerRow);
  const isOpen = (column: number) => runners.every(({ index }) => index !== column);
  into.passesOver = isOpen;
  into.markHeadings(first);
  for (const [field, column] of Object.entries(fields)) into.describe(field, column);
  for (let row = first; row < view.end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (isSummary(line)) {
      into.mark(row, "heading");
      continue;
    }
    const own: Record<string, Placed> = {};
    for (const [field, { index }] of Object.entries(fields)) own[field] = [line[index], index];
    // The table knows this column by its heading: what is no mark would be asked about nowhere.
    if (headed !== undefined && isOpen(headed.index) && !saysNo(line[headed.index]))
      into.unread.see(view.first, row, headed.index);
    const marked = runners.filter(({ index }) => isMark(line[index]));
    // Nobody marked is not everybody: the race would stand in weeks of athletes who stay at home.
    if (marked.length === 0) into.report("race-without-runner", row, runners[0]!.index);
    for (const { index, who } of marked) into.emit(row, { ...own, who: [who, index] });
  }
  return into;
}

const isSummary = (line: readonly unknown[]): boolean =>
  namesSummary(line.find((cell) => !isBlank(cell)));
const cross = /^\s*x+\s*$/i;
const isCross = (cell: unknown): boolean => cross.test(String(cell));
const isMark = (cell: unknown): boolean => yesNo(cell) === true || isCross(cell);
const saysNo = (cell: unknown): boolean =>
  isBlank(cell) || yesNo(cell) === false || (typeof cell === "string" && saysNoValue(cell));

/** A row of names below the headings: nothing under the day and the race, words under columns of their own. */
function namesBelow({ cells, first, fields }: TableView, unknown: readonly number[]): boolean {
  const line = cells[first] ?? [];
  const empty = [fields.day, fields.race].every((field) => isBlank(line[field?.index ?? -1]));
  const words = unknown.filter(
    (index) => !isMark(line[index]) && /\p{L}{2}/u.test(String(line[index] ?? "")),
  );
  return empty && words.length > 0;
}

/** Marks and nothing else; ticks beside crosses could mean yes and no, so they are asked about. */
function holdsMarks({ cells, end, headerRow }: TableView, first: number, index: number): boolean {
  if (headerWords(cells[headerRow]![index]).unit !== null) return false;
  const filled = cells
    .slice(first, end)
    .filter((row) => !isSummary(row))
    .map((row) => row[index])
    .filter((cell) => !saysNo(cell));
  const crosses = filled.filter(isCross).length;
  return filled.length > 0 && filled.every(isMark) && (crosses === 0 || crosses === filled.length);
}
