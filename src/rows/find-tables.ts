import type { Run } from "../coaching/record/run";
import type { Cells } from "./cells";
import { unitsBeside } from "./column/units-beside";
import { type FoundTable, type Tab, toBeAsked } from "./finding/found-table";
import { type HeaderFit, headerFit, isCalledSo } from "./finding/header-fit";
import { withJumpsAmong, withJumpsBeside } from "./finding/jumps-among";
import { isGrid, ownLayouts, shareRead, wideTables } from "./finding/own-layouts";
import { hasHeadedGroups } from "./layout/across/headed-groups";
import { type TableBeside, tablesBeside } from "./layout/tables-beside";
import { joinedNames } from "./name/joined-names";
import { type Understanding, understandTable } from "./read-table";
import { endOfRows } from "./table/trim-padding";
import { type TableName, tableNames } from "./table-name";
import { optionsOf, together } from "./understanding/of-all-beside";
import type { ReadOptions } from "./understanding/read-options";

type Options = Omit<ReadOptions, "title">;
/** A tab that holds one table at the most, or sets with jumps among them. */
type OneTab = {
  readonly name: string;
  readonly cells: Cells;
  readonly options: Options;
  /** The tab read as one of the tables. */
  readonly read: (table: TableName) => Understanding<TableName>;
};
/** How its headings fit each table, the best first. */
type Fits = readonly ({ readonly table: TableName } & HeaderFit)[];

/**
 * Looks through the tabs for the tables the add-on knows. A tab is the table whose needed headings
 * it has and whose further headings it shares most; its name counts as evidence. Sets, jumps, runs
 * and diary are also looked for in coaches' own layouts, and tabs of one athlete by their further headings.
 */
export function findTables(tabs: readonly Tab[], options: Options = {}): FoundTable[] {
  return tabs.flatMap((tab) => tablesOf(tab, options));
}

function tablesOf({ name, cells: written }: Tab, options: Options): readonly FoundTable[] {
  const cells = unitsBeside(joinedNames(written, options.answers));
  const end = endOfRows(cells);
  if (end === 0) return [];
  const beside = tablesBeside(cells);
  if (beside.length > 0) return ofAllBeside(name, cells, beside, options);
  const read = (table: TableName) =>
    understandTable<TableName>(table, cells, { ...options, title: name });
  const tab = { name, cells, options, read };
  const across = hasHeadedGroups(cells, end) ? ownLayouts(name, ["Sets"], read) : [];
  if (across.length > 0) return withJumpsAmong(across, name, cells, options);
  const fits = tableNames
    .map((table) => ({ table, ...headerFit(table, name, cells, end) }))
    .sort((a, b) => b.fit - a.fit);
  return (
    plainGrid(tab, fits) ??
    setsUnderNamesOfTests(tab, fits) ??
    byItsHeadings(tab, fits) ??
    ownLayout(tab) ??
    tableToAskAbout(tab, fits)
  );
}

const bestOf = (fits: Fits) => fits.filter(({ lacking }) => !lacking);
/** The table that lacks one needed heading, where it shares enough of the others. */
const lackingOne = (fits: Fits) => fits.find(({ lacking, fit }) => lacking && fit >= 0.5);

/**
 * A grid of dates has an athletes' column too, also one to be asked about, and a row of tests has days
 * besides; they tell more.
 */
function plainGrid({ name, read }: OneTab, fits: Fits): readonly FoundTable[] | null {
  const [best] = bestOf(fits);
  const bare = best?.bare === true && (best.table === "Diary" || best.table === "Runs");
  if (!bare && best?.table !== "Athletes") return null;
  const grid = ownLayouts(name, wideTables, read);
  return grid.some((one) => one.sureness >= 0.6 || isGrid(one)) ? grid : null;
}

/** Dates, names and exercises are of a log of sets where sets stand beside them. */
function setsUnderNamesOfTests(tab: OneTab, fits: Fits): readonly FoundTable[] | null {
  const { name, cells, options, read } = tab;
  const [best] = bestOf(fits);
  if (best?.table !== "Jumps" || best.bare !== true) return null;
  const sets = read("Sets");
  if (sets.layout !== "rows of several sets" || sets.reading.rowsRead === 0) return null;
  const found = { tab: name, table: "Sets" as const, understanding: sets };
  const sureness = 0.9 * shareRead(sets.reading);
  return withJumpsAmong([{ ...found, sureness }], name, cells, options);
}

/** The table whose needed headings all stand there. */
function byItsHeadings(tab: OneTab, fits: Fits): readonly FoundTable[] | null {
  const { name, cells, options, read } = tab;
  const [best, second] = bestOf(fits);
  if (best === undefined || best.fit < 0.5) return null;
  // "Name: …" above the rows of one athlete is no table of athletes.
  if (best.table === "Athletes" && (lackingOne(fits)?.fit ?? 0) > best.fit) return null;
  // Day, name and what it was would do for runs as well.
  const called = (["Availability", "Races"] as const).find((table) => isCalledSo(table, name));
  if (best.table === "Runs" && called !== undefined && !isCalledSo("Runs", name))
    return [{ tab: name, table: called, sureness: toBeAsked, understanding: read(called) }];
  const lead = best.fit - (second?.fit ?? 0);
  const understanding = read(best.table);
  const { layout, reading } = understanding;
  // Tries in columns of their own are headings the table knows, though not by name.
  const asLaidOut = layout === "tests across" ? 0.9 * shareRead(reading) : 0;
  const inDoubt = lead < 0.05 || (best.table === "Runs" && saysNoRun(name, reading));
  const sureness = Math.max(asLaidOut, Math.min(1, best.fit * (inDoubt ? 0.55 : 1)));
  const found = { tab: name, table: best.table, sureness, understanding };
  if (best.table === "Sets") return withJumpsAmong([found], name, cells, options);
  return best.table === "Diary" ? withJumpsBeside(found, cells, options) : [found];
}

function ownLayout({ name, read }: OneTab): readonly FoundTable[] | null {
  const own = ownLayouts(name, wideTables, read);
  return own.length > 0 ? own : null;
}

/** The table that lacks one needed heading, or whose headings come near, to be asked about. */
function tableToAskAbout({ name, read }: OneTab, fits: Fits): readonly FoundTable[] {
  const ofOne = lackingOne(fits);
  const [near] = fits.filter((one) => one.near > 0).sort((a, b) => b.near - a.near);
  const table = ofOne?.table ?? near?.table;
  if (table === undefined) return [];
  const understanding = read(table);
  const isOpen = ofOne === undefined || understanding.layout === "not recognised";
  return [{ tab: name, table, sureness: isOpen ? toBeAsked : 0.9 * ofOne.fit, understanding }];
}

/** Whether most rows of a tab that is not called so hold no kind, length or exertion of a run, as a calendar's do. */
function saysNoRun(tab: string, { records }: Understanding<TableName>["reading"]): boolean {
  const empty = (records as readonly Run[]).filter(
    ({ kind, minutes, km, exertion }) => (kind ?? minutes ?? km ?? exertion) === null,
  );
  return 2 * empty.length > records.length && !isCalledSo("Runs", tab);
}

/** The tables of a tab that keeps several side by side; those of the same kind are one. */
function ofAllBeside(
  name: string,
  cells: Cells,
  beside: readonly TableBeside[],
  options: Options,
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
