import { tableColumns } from "../../rows/header/columns";
import { fieldHeading } from "../../rows/header/field-heading";
import { tabChoices } from "../../rows/layout/tab-question";
import { tableNames } from "../../rows/table-name";
import { unitsLike } from "../../rows/value/units";
import type { PlacedAnswer } from "../answers/answers";
import type { Choice, ColumnMatter, SetUpAnswer } from "../messages";
import type { ReadTab } from "../read-tab";
import type { ReadWorkbook } from "../read-workbook";
import type { Tab } from "../workbook";
import { fieldChoices, plainChoice } from "./set-up-questions";

/** What the coach has said of tabs and columns, each with what it may be changed to. */
export function answersShown(read: ReadWorkbook): SetUpAnswer[] {
  return allTabs(read).flatMap((tab) => [
    ...read.answers.tabs.said(tab.id).map(({ about, said, answer }) => ({
      tabId: tab.id,
      tab: tab.name,
      about,
      written: said,
      said: answer,
      choices: tabChoices[about].map(plainChoice),
    })),
    ...read.answers.columns
      .said(tab.id, read.cells(tab.id))
      .flatMap((answer) => columnShown(read, tab, answer)),
  ]);
}

/** Every tab once; one may hold two tables. */
function allTabs({ tabs, otherTabs }: ReadWorkbook): Tab[] {
  const all = [...tabs.map(({ tab }) => tab), ...otherTabs];
  return all.filter(({ id }, at) => all.findIndex((one) => one.id === id) === at);
}

/** One line for each part of an answer about a column: its meaning, its unit, how its dates go. */
function columnShown(read: ReadWorkbook, tab: Tab, answer: PlacedAnswer): SetUpAnswer[] {
  const found = read.tabs.find((one) => one.tab.id === tab.id);
  const column = answer.place ?? 0;
  const headings = read.cells(tab.id)[(found?.understanding.headerRow ?? 0) - 1];
  const place = {
    tabId: tab.id,
    tab: tab.name,
    tag: answer.tag ?? null,
    // As it is now: the column may have been given another heading since.
    heading: String(headings?.[column - 1] ?? answer.heading).trim(),
    column,
  };
  const line = (about: ColumnMatter, said: string, choices: readonly Choice[]) => ({
    ...place,
    about,
    said,
    choices,
  });
  const { field, unit, dateOrder } = answer;
  return [
    ...(field === undefined ? [] : [line("meaning", meaning(found, field), meanings(found))]),
    ...(unit === undefined ? [] : [line("unit", unit, unitsLike(unit).map(plainChoice))]),
    ...(dateOrder === undefined
      ? []
      : [line("date order", dateOrder, ["day first", "month first"].map(plainChoice))]),
  ];
}

function meaning(found: ReadTab | undefined, field: string | null): string {
  if (field === null) return "";
  // The tab may have been said to be another table since, or none.
  const tables = found === undefined ? tableNames : [found.table, ...tableNames];
  const headings = tables.map((table) => fieldHeading(table, field));
  return headings.find((heading) => heading !== field) ?? field;
}

function meanings(found: ReadTab | undefined): Choice[] {
  return found === undefined
    ? []
    : fieldChoices(found.table, Object.keys(tableColumns[found.table]));
}
