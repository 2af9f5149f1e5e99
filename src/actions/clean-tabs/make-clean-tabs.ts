import type { Day } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import type { TableName } from "../../rows/table-name";
import { columnName } from "../../rows/value/cell-address";
import { cleanTabWords } from "../../words/set-up";
import type { Done } from "../messages";
import { missingTables, type ReadWorkbook, readWorkbook } from "../read-workbook";
import type { Workbook } from "../workbook";
import { tabPlans, usualExercises } from "./tab-plans";
import { rememberTab, type TabMade, tabsMade } from "./tabs-made";

/**
 * Makes a clean tab for every table that no tab was taken for, and brings the drop-downs of the tabs
 * made earlier up to date. A tab of the coach's is never touched. After a failure the next call goes
 * on where it stopped: a tab begun is finished, none is made twice.
 */
export function makeCleanTabs(workbook: Workbook, today: Day): Done {
  return workbook.alone(() => {
    const read = readWorkbook(workbook, today);
    const before = tabsMade(workbook);
    const missing = missingTables(read).filter(
      (table) => !before.some((one) => one.table === table && stands(workbook, one)),
    );
    const unfinished = before.filter((one) => !one.done && !missing.includes(one.table));
    const lists = offered(read);
    const made = missing.map((table) => begin(workbook, table, before));
    for (const one of [...unfinished, ...made]) finish(workbook, one, lists);
    for (const one of before) {
      if (one.done && stands(workbook, one)) offerAgain(workbook, one, lists);
    }
    return { said: cleanTabWords.made([...unfinished, ...made].map(({ name }) => name)) };
  });
}

type Lists = Readonly<Record<"athletes" | "exercises", readonly string[]>>;

function offered({ rows }: ReadWorkbook): Lists {
  const written = new Map(rows.sets.map(({ exercise }) => [nameKey(exercise), exercise]));
  return {
    athletes: rows.athletes.map(({ athlete }) => athlete),
    exercises: written.size > 0 ? [...written.values()].sort() : usualExercises,
  };
}

/** A begun tab stands when it is there; one whose adding failed does not. */
function stands(workbook: Workbook, { tabId, name }: TabMade): boolean {
  return workbook.tabs().some((tab) => (tabId === null ? tab.name === name : tab.id === tabId));
}

function begin(workbook: Workbook, table: TableName, before: readonly TabMade[]): TabMade {
  const taken = new Set(workbook.tabs().map(({ name }) => nameKey(name)));
  let name: string = before.find((one) => one.table === table)?.name ?? table;
  for (let count = 2; taken.has(nameKey(name)); count++) name = `${table} ${count}`;
  const begun: TabMade = { table, name, tabId: null, done: false };
  rememberTab(workbook, begun);
  workbook.addTab(name);
  return begun;
}

function finish(workbook: Workbook, begun: TabMade, lists: Lists): void {
  const { table } = begun;
  const tab = workbook
    .tabs()
    .find(({ id, name }) => (begun.tabId === null ? name === begun.name : id === begun.tabId));
  // Deleted by the coach between two calls: it was not wanted.
  if (!tab) {
    rememberTab(workbook, { ...begun, done: true });
    return;
  }
  rememberTab(workbook, { ...begun, tabId: tab.id });
  const columns = tabPlans[table];
  const cells = workbook.values(tab.id);
  if (cells.every((row) => row.every((cell) => cell === "" || cell === null))) {
    workbook.write(tab.id, { row: 1, column: 1, values: [columns.map(({ heading }) => heading)] });
  }
  columns.forEach(({ format, left }, at) => {
    const letters = columnName(at + 1);
    const range = `${letters}2:${letters}`;
    if (format) workbook.format(tab.id, range, format);
    if (left) workbook.alignLeft(tab.id, range);
  });
  workbook.dress(
    tab.id,
    1,
    columns.map(({ heading }) => (heading === "Note" || heading === "Notes" ? 240 : 110)),
  );
  workbook.warn(tab.id, `A1:${columnName(columns.length)}1`, cleanTabWords.headings);
  offerAgain(workbook, { ...begun, tabId: tab.id }, lists);
  rememberTab(workbook, { ...begun, tabId: tab.id, done: true });
}

/** Drop-downs under the headings as they stand now; a column that was renamed is the coach's. */
function offerAgain(workbook: Workbook, { table, tabId }: TabMade, lists: Lists): void {
  if (tabId === null) return;
  const [headings = []] = workbook.values(tabId);
  for (const { heading, offer } of tabPlans[table]) {
    const at = headings.indexOf(heading);
    const values = typeof offer === "string" ? lists[offer] : offer;
    if (at < 0 || values === undefined || values.length === 0) continue;
    const letters = columnName(at + 1);
    workbook.offer(tabId, `${letters}2:${letters}`, values);
  }
}
