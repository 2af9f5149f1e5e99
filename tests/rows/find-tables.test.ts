import { dayFromIso } from "../../src/coaching/calendar/day";
import { findTables } from "../../src/rows/find-tables";
import { samples } from "../fuzz/tables";

const today = dayFromIso("2026-06-16") as number;
/** The plain tables among the samples, after four layouts of coaches' own. */
const plainTables = [
  "Sets",
  "Jumps",
  "Diary",
  "Athletes",
  "Availability",
  "Runs",
  "Races",
  "Plates",
  "Rules",
];

test("every sample tab is found as the table it is, and the sets log also gives its jumps", () => {
  const names = ["Gym", "Kofi Anstruther", "Log", "Tests", ...plainTables];
  const tabs = samples.map((cells, at) => ({ name: names[at] ?? "", cells }));
  const found = findTables(tabs, { today }).map(({ tab, table, sureness }) => [
    tab,
    table,
    sureness >= 0.6,
  ]);
  expect(found).toEqual([
    ["Gym", "Sets", true],
    ["Kofi Anstruther", "Sets", true],
    ["Kofi Anstruther", "Jumps", true],
    ["Log", "Sets", true],
    ["Log", "Jumps", true],
    ["Tests", "Jumps", true],
    ...plainTables.map((name) => [name, name, true]),
  ]);
});

test("without telling tab names the tables are still told apart", () => {
  const tabs = samples.slice(4).map((cells, at) => ({ name: `Sheet${at + 1}`, cells }));
  expect(findTables(tabs, { today }).map(({ table }) => table)).toEqual(plainTables);
});

test("a shopping list is no table", () => {
  expect(
    findTables([
      {
        name: "Sheet9",
        cells: [
          ["Item", "Price"],
          ["chalk", 4],
          ["tape", 3.5],
        ],
      },
    ]),
  ).toEqual([]);
});
