import type { Day } from "../coaching/calendar/day";
import { nameKey } from "../coaching/record/name-key";
import type { Cells } from "../rows/cells";
import { findTables } from "../rows/find-tables";
import type { FoundTable } from "../rows/finding/found-table";
import { withJumpsAmong } from "../rows/finding/jumps-among";
import { hasHeadings } from "../rows/header/has-headings";
import { understandTable } from "../rows/read-table";
import type { TableName } from "../rows/table-name";
import { squadColumns } from "../words/squad-columns";
import { ownTabNames } from "../words/tabs";
import type { Answers } from "./answers/answers";
import type { Tab } from "./workbook";

/** One tab as it was read; a tab may be two tables, sets with the jumps kept among them. */
export type ReadTab = Omit<FoundTable, "tab"> & { readonly tab: Tab };

const own = new Set(Object.values(ownTabNames).map(nameKey));
/** Named as a tab that the add-on writes. */
export const isOwnTab = (name: string): boolean => own.has(nameKey(name));

/** A list of athletes that is called Squad, as the tab of the squad table may be, where no other is one. */
export function athletesAsSquad(
  all: readonly { readonly tab: Tab; readonly cells: Cells }[],
  today: Day,
  answers: Answers,
): ReadTab[] {
  const squad = all.filter(
    ({ tab, cells }) =>
      nameKey(tab.name) === nameKey(ownTabNames.squad) &&
      !answers.tables.has(tab.id) &&
      !isSquadTable(cells),
  );
  return squad
    .flatMap(({ tab, cells }) => foundIn(tab, cells, today, answers))
    .filter(({ table }) => table === "Athletes");
}

/** The squad table itself, whose athletes are those it was made of. */
const isSquadTable = (cells: Cells): boolean =>
  hasHeadings(cells, [squadColumns[0], squadColumns[2]]);

export function readTab(tab: Tab, cells: Cells, today: Day, answers: Answers): ReadTab[] {
  const said = answers.tables.get(tab.id);
  if (said === null || (said === undefined && isOwnTab(tab.name))) return [];
  if (said !== undefined) {
    const given = givenOf(tab, cells, today, answers);
    const understanding = understandTable<TableName>(said, cells, {
      title: tab.name,
      said: true,
      ...given,
    });
    const found = [{ tab: tab.name, table: said, sureness: 1, understanding }];
    const all = said === "Sets" ? withJumpsAmong(found, tab.name, cells, given) : found;
    return all.map((one) => ({ ...one, tab }));
  }
  return foundIn(tab, cells, today, answers);
}

function foundIn(tab: Tab, cells: Cells, today: Day, answers: Answers): ReadTab[] {
  const given = givenOf(tab, cells, today, answers);
  return findTables([{ name: tab.name, cells }], given).map((found) => ({ ...found, tab }));
}

/** What is known of a tab before it is read. */
const givenOf = (tab: Tab, cells: Cells, today: Day, { columns, tabs }: Answers) => ({
  today,
  answers: columns.of(tab.id, cells),
  tab: tabs.of(tab.id),
});
