import type { Run } from "../coaching/record/run";
import type { Cells } from "./cells";
import { unitsBeside } from "./column/units-beside";
import { askedInWords } from "./header/asked-in-words";
import { neededFields, tableColumns } from "./header/columns";
import { type FoundHeader, findHeader } from "./header/find-header";
import { headerWords, plainWords } from "./header/header-words";
import { sampleColumn } from "./header/value-fit";
import { hasHeadedGroups } from "./layout/across/headed-groups";
import { type TableBeside, tablesBeside } from "./layout/tables-beside";
import { isJumpColumn } from "./layout/wide/test-heading";
import { joinedNames } from "./name/joined-names";
import { type Understanding, understandTable } from "./read-table";
import { endOfRows } from "./table/trim-padding";
import { type TableName, tableNames } from "./table-name";
import { optionsOf, together } from "./understanding/of-all-beside";
import type { ReadOptions } from "./understanding/read-options";

/** One tab of a workbook. */
export type Tab = { readonly name: string; readonly cells: Cells };

/** A table found in a tab. One tab may hold two: sets and the jumps kept among them. */
export type FoundTable = {
  readonly tab: string;
  readonly table: TableName;
  /** 0–1; below 0.6 it should be asked before it is used. */
  readonly sureness: number;
  readonly understanding: Understanding<TableName>;
};

/** A sureness at which a tab is shown and asked about, and its rows do not count yet. */
const toBeAsked = 0.5;

/**
 * Looks through the tabs for the tables the add-on knows. A tab is the table whose needed headings
 * it has and whose further headings it shares most; its name counts as evidence. Sets, jumps, runs
 * and diary are also looked for in coaches' own layouts, and tabs of one athlete by their further headings.
 */
export function findTables(
  tabs: readonly Tab[],
  options: Omit<ReadOptions, "title"> = {},
): FoundTable[] {
  return tabs.flatMap(({ name, cells: written }) => {
    const cells = unitsBeside(joinedNames(written, options.answers));
    const end = endOfRows(cells);
    if (end === 0) return [];
    const beside = tablesBeside(cells);
    if (beside.length > 0) return ofAllBeside(name, cells, beside, options);
    const read = (table: TableName) =>
      understandTable<TableName>(table, cells, { ...options, title: name });
    const across = hasHeadedGroups(cells, end) ? ownLayouts(name, ["Sets"], read) : [];
    if (across.length > 0) return [...across, ...jumpsAmong(name, cells, options)];
    const all = tableNames
      .map((table) => ({ table, ...headerFit(table, name, cells, end) }))
      .sort((a, b) => b.fit - a.fit);
    const [best, second] = all.filter(({ lacking }) => !lacking);
    // A grid of dates has an athletes' column too, also one to be asked about, and a row of tests has days
    // besides; they tell more.
    const bare = best?.bare === true && (best.table === "Diary" || best.table === "Runs");
    const grid = bare || best?.table === "Athletes" ? ownLayouts(name, wideTables, read) : [];
    if (grid.some((one) => one.sureness >= 0.6 || isGrid(one))) return grid;
    const ofOne = all.find(({ lacking, fit }) => lacking && fit >= 0.5);
    // "Name: …" above the rows of one athlete is no table of athletes.
    const outdone = best?.table === "Athletes" && (ofOne?.fit ?? 0) > best.fit;
    if (best !== undefined && best.fit >= 0.5 && !outdone) {
      const lead = best.fit - (second?.fit ?? 0);
      const understanding = read(best.table);
      const { layout, reading } = understanding;
      // Tries in columns of their own are headings the table knows, though not by name.
      const asLaidOut = layout === "tests across" ? 0.9 * shareRead(reading) : 0;
      const doubt =
        lead < 0.05 ? 0.55 : best.table === "Runs" && saysNoRun(name, reading) ? 0.55 : 1;
      const sureness = Math.max(asLaidOut, Math.min(1, best.fit * doubt));
      const found = { tab: name, table: best.table, sureness, understanding };
      if (best.table === "Sets") return [found, ...jumpsAmong(name, cells, options)];
      return best.table === "Diary" ? withJumpsBeside(found, cells, options) : [found];
    }
    const own = ownLayouts(name, wideTables, read);
    if (own.length > 0) return own;
    const [near] = all.filter(({ near }) => near > 0).sort((a, b) => b.near - a.near);
    if (ofOne === undefined && near === undefined) return [];
    if (ofOne === undefined)
      return [
        { tab: name, table: near!.table, sureness: toBeAsked, understanding: read(near!.table) },
      ];
    const understanding = read(ofOne.table);
    const open = understanding.layout === "not recognised";
    const sureness = open ? toBeAsked : 0.9 * ofOne.fit;
    return [{ tab: name, table: ofOne.table, sureness, understanding }];
  });
}

/** Whether most rows of a tab that is not called so hold no kind, length or exertion of a run, as a calendar's do. */
function saysNoRun(tab: string, { records }: Understanding<TableName>["reading"]): boolean {
  const empty = (records as readonly Run[]).filter(
    ({ kind, minutes, km, exertion }) => (kind ?? minutes ?? km ?? exertion) === null,
  );
  return 2 * empty.length > records.length && !/\b(?:runs?|running|lauf)/.test(plainWords(tab));
}

/** The tables of a tab that keeps several side by side; those of the same kind are one. */
function ofAllBeside(
  name: string,
  cells: Cells,
  beside: readonly TableBeside[],
  options: Omit<ReadOptions, "title">,
): FoundTable[] {
  const found = beside.flatMap((one) =>
    findTables([{ name, cells: one.cells }], optionsOf(one, options)),
  );
  return tableNames.flatMap((table) => {
    const same = found.filter((one) => one.table === table);
    if (same.length === 0) return [];
    const sureness = Math.min(...same.map((one) => one.sureness));
    return [
      {
        tab: name,
        table,
        sureness,
        understanding: together(
          cells,
          same.map(({ understanding }) => understanding),
        ),
      },
    ];
  });
}

/** The jumps kept among the sets of a tab. */
export function jumpsAmong(
  tab: string,
  cells: Cells,
  options: Omit<ReadOptions, "title">,
): FoundTable[] {
  return ownLayouts(tab, ["Jumps"], (table) =>
    understandTable<TableName>(table, cells, { ...options, title: tab }),
  );
}

/** A diary with columns of jump tests is both; what is a jump is not asked about. */
function withJumpsBeside(
  found: FoundTable,
  cells: Cells,
  options: Omit<ReadOptions, "title">,
): FoundTable[] {
  const { understanding } = found;
  const questions = understanding.questions.filter(({ heading }) => !isJumpColumn(heading));
  if (questions.length === understanding.questions.length) return [found];
  const jumps = jumpsAmong(found.tab, cells, options);
  const rest = { ...found, understanding: { ...understanding, questions } };
  return jumps.length === 0 ? [found] : [rest, ...jumps];
}

const wideTables: readonly TableName[] = [
  "Availability",
  "Races",
  "Runs",
  "Diary",
  "Sets",
  "Jumps",
];

/** Tables read from a layout without a plain header; as sure as the share of rows read. */
function ownLayouts(
  tab: string,
  tables: readonly TableName[],
  read: (table: TableName) => Understanding<TableName>,
): FoundTable[] {
  const found = tables.flatMap((table) => {
    const understanding = read(table);
    const { records, rowsRead, rowsReported } = understanding.reading;
    const own = understanding.layout !== "plain rows" && understanding.layout !== "not recognised";
    if (!own) return [];
    const useful =
      records.filter((record) => !("heightCm" in record) || hasFigure(record)).length /
      Math.max(records.length, 1);
    const share = 0.9 * useful * shareRead({ rowsRead, rowsReported });
    // Jumps are read from any grid of numbers; the others only where it speaks of them.
    const speaks =
      table !== "Jumps" &&
      understanding.reading.issues.every(({ code }) => code !== "exercise-missing");
    const asks =
      understanding.tabQuestions.length > 0 ||
      // Rows that only lack their day want a date above them, which is said once the tab counts.
      understanding.reading.issues.some(({ code }) => code === "day-missing") ||
      // A column nobody explains is no row waiting for its answer.
      (speaks && understanding.questions.some(({ about }) => about !== "meaning"));
    // An answer may settle every row at once: such a tab is not passed over.
    // So is one that speaks of availability in words or letters nobody explains.
    const sureness = share < 0.3 && (asks || table === "Availability") ? toBeAsked : share;
    return sureness < 0.27 ? [] : [{ tab, table, sureness, understanding }];
  });
  // Under a header of dates stands one table, not several.
  const grids = found.filter(isGrid);
  if (grids.length < 2) return found;
  // Availability, runs and diary are read from a grid only where it speaks of them; a number is a height or a load as well.
  const spoken = grids.find(({ table }) => /^(?:Availability|Races|Runs|Diary)$/.test(table));
  if (spoken !== undefined) return [spoken];
  return [grids.reduce((best, one) => (one.sureness > best.sureness ? one : best))];
}

function shareRead({ rowsRead, rowsReported }: { rowsRead: number; rowsReported: number }): number {
  return rowsRead / Math.max(rowsRead + rowsReported, 1);
}

const isGrid = ({ understanding }: FoundTable) => understanding.layout === "dates across";

function hasFigure(record: {
  readonly heightCm: number | null;
  readonly stackKg: readonly number[];
  readonly contactS: number | null;
  readonly flightS: number | null;
}): boolean {
  return (
    record.heightCm !== null ||
    record.stackKg.length > 0 ||
    record.contactS !== null ||
    record.flightS !== null
  );
}

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
const saysNothing: ReadonlySet<string> = new Set(["minute", "note", "exertion", "kind"]);

/**
 * How well a tab's header fits a table: all needed headings, then the share of headings it knows.
 * `lacking` when it could only be a tab of one athlete or lift, by its further headings. `near`: how
 * many headings it knows of a table whose rows cannot be used for the want of a single one. `bare`
 * when it has the needed headings alone, or with such as any table has.
 */
function headerFit(
  table: TableName,
  tab: string,
  cells: Cells,
  end: number,
): { fit: number; lacking: boolean; near: number; bare?: boolean } {
  const header = findHeader(table, cells, end);
  const named = tabWords[table].test(plainWords(tab)) ? 0.15 : 0;
  if (header === null) return { fit: 0, lacking: false, near: 0 };
  const lacking = header.missing.length > 0;
  // A form asks the diary's questions in sentences.
  const asked =
    table === "Diary" ? header.unknown.filter((at) => asksDiary(header, cells, end, at)) : [];
  const known = Object.keys(header.fields).length + header.repColumns.length + asked.length;
  // Of three columns two are enough to ask, where nothing else stands beside them.
  const enough = table === "Plates" && header.unknown.length === 0 ? 2 : 3;
  if (header.missing.some((field) => !spared[table]?.includes(field)))
    return {
      fit: 0,
      lacking,
      near: header.missing.length === 1 && known >= enough ? known : 0,
    };
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
  const says = Object.keys(header.fields).some(
    (field) => !saysNothing.has(field) && !neededFields[table].includes(field as never),
  );
  return { fit, lacking, near: 0, bare: !says && header.repColumns.length === 0 };
}
