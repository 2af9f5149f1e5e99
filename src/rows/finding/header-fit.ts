import type { Cells } from "../cells";
import { askedInWords } from "../header/asked-in-words";
import { neededFields, tableColumns } from "../header/columns";
import { type FoundHeader, findHeader } from "../header/find-header";
import { headerWords, plainWords } from "../header/header-words";
import { sampleColumn } from "../header/value-fit";
import type { TableName } from "../table-name";

/** What coaches call the tab of each table. */
const tabWords: Readonly<Record<TableName, RegExp>> = {
  Athletes: /athlet|squad|roster|runners|team|kader/,
  Availability: /availab|injur|who may|verfugbar|verletz/,
  Sets: /set|gym|lift|strength|weights|kraft/,
  Jumps: /jump|cmj|sprung/,
  Diary: /diary|wellness|well-?being|check-?in|tagebuch/,
  Runs: /\bruns?\b|running|mileage|lauf/,
  Races: /race|fixture|meets|meetings|wettk|rennen/,
  Plates: /plate|kit|scheiben/,
  Rules: /rule|regel/,
};

/** True for a tab that is called as coaches call the tab of a table. */
export const isCalledSo = (table: TableName, tab: string): boolean =>
  tabWords[table].test(plainWords(tab));

function asksDiary({ line, first }: FoundHeader, cells: Cells, end: number, at: number): boolean {
  return askedInWords(headerWords(line[at]).words, sampleColumn(cells, first, end, at)) !== null;
}

/** Meanings that a tab of one athlete or one lift need not name in every row. */
const spared: Readonly<Partial<Record<TableName, readonly string[]>>> = {
  Sets: ["athlete", "exercise"],
  Jumps: ["athlete"],
  Diary: ["athlete"],
  Runs: ["athlete"],
};

/** Meanings that rows of any table may have beside what they are about. */
const saysNothing: ReadonlySet<string> = new Set(["minute", "note", "exertion", "effort", "kind"]);

/** How a tab's header fits a table. */
export type HeaderFit = {
  /** From 0 to 1: all needed headings, then the share of headings it knows. */
  readonly fit: number;
  /** It could only be a tab of one athlete or lift, by its further headings. */
  readonly lacking: boolean;
  /** How many headings it knows of a table whose rows cannot be used for the want of a single one. */
  readonly near: number;
  /** It has the needed headings alone, or with such as every table may have. */
  readonly bare?: boolean;
};

/** How well the header of a tab, of such a name, fits a table. */
export function headerFit(table: TableName, tab: string, cells: Cells, end: number): HeaderFit {
  const header = findHeader(table, cells, end);
  const named = isCalledSo(table, tab) ? 0.15 : 0;
  if (header === null) return { fit: 0, lacking: false, near: 0 };
  const lacking = header.missing.length > 0;
  // A form asks the diary's questions in sentences.
  const asked =
    table === "Diary" ? header.unknown.filter((at) => asksDiary(header, cells, end, at)) : [];
  const known = Object.keys(header.fields).length + header.repColumns.length + asked.length;
  // Of three columns two are enough to ask, where nothing else stands beside them.
  const enough = table === "Plates" && header.unknown.length === 0 ? 2 : 3;
  const wanting = header.missing.filter((field) => !spared[table]?.includes(field));
  if (wanting.length > 0)
    return { fit: 0, lacking, near: wanting.length === 1 && known >= enough ? known : 0 };
  const share = known / (known + header.unknown.length - asked.length);
  const needed = neededFields[table].length - header.missing.length;
  // Fewer headings are no proof of a tab that lacks a needed one.
  if (lacking && known - needed < 2) return { fit: 0, lacking, near: 0 };
  // A table of two needed headings that knows nothing else is no proof on its own.
  const further = Math.min(
    1,
    (known - needed) / Math.min(3, Object.keys(tableColumns[table]).length),
  );
  const fit = Math.min(1, 0.35 + 0.35 * share + 0.15 * Math.max(0, further) + named);
  const without = new Set<string>([...saysNothing, ...neededFields[table]]);
  const says = Object.keys(header.fields).some((field) => !without.has(field));
  return { fit, lacking, near: 0, bare: !says };
}
