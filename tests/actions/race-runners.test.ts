import type { RowCheckView } from "../../src/actions/messages";
import { readWorkbook } from "../../src/actions/read-workbook";
import { serveRequest } from "../../src/actions/requests";
import { rowCheckFunction } from "../../src/catalogue/row-check";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { racesOf } from "../../src/coaching/diary/races-of";
import { memoryWorkbook } from "./memory-workbook";

const today = "2026-06-22";
const athletes = [
  ["Athlete", "Group"],
  ["Ilka Brandmoor", "track"],
  ["Tomas Reyerson", "road"],
  ["Wren Castellow", "track"],
];
const racesFor = (...who: readonly string[]) => [
  ["Date", "Race", "Who", "Matters"],
  ...who.map((whom, at) => [new Date(2026, 5, 27 + at), `R${at + 1}`, whom, "A"]),
];
const book = (...who: readonly string[]) =>
  memoryWorkbook({ Athletes: athletes, Races: racesFor(...who) });
type Book = ReturnType<typeof book>;
const ask = <Answer>(of: Book, name: string, more: object = {}) =>
  serveRequest(of, name, { today, ...more }) as Answer;
const racing = (of: Book) => {
  const { rows } = readWorkbook(of, dayFromIso(today)!);
  return rows.athletes
    .filter((one) => racesOf(rows.races, one.athlete, one).length > 0)
    .map(({ athlete }) => athlete);
};

test("several runners in one cell, a line each too, each have the race", () => {
  expect(racing(book("Ilka Brandmoor; Tomas Reyerson"))).toEqual([
    "Ilka Brandmoor",
    "Tomas Reyerson",
  ]);
  expect(racing(book("Tomas Reyerson\nWren Castellow"))).toEqual([
    "Tomas Reyerson",
    "Wren Castellow",
  ]);
  expect(racing(book("track & Tomas Reyerson"))).toHaveLength(3);
  expect(racing(book("everyone"))).toHaveLength(3);
});

test("a runner nobody knows is asked about, as in every other table, and the answer counts", () => {
  const squad = book("Ilka Brandmoor; Tomas Reyersen", "track, women");
  expect(racing(squad)).toEqual(["Ilka Brandmoor", "Wren Castellow"]);
  const { names } = ask<RowCheckView>(squad, "rowCheck");
  expect(names.map(({ name, cell, near, toDo }) => [name, cell, near, toDo])).toEqual([
    [
      "Tomas Reyersen",
      "C2",
      ["Tomas Reyerson"],
      "Is this Tomas Reyerson? Say so under Rows in the sidebar, or correct the name in its cells.",
    ],
    [
      "women",
      "C3",
      [],
      "Name athletes, a group of the Athletes table, or all; or say here who this is.",
    ],
  ]);
  const said = ask<RowCheckView>(squad, "answerName", {
    written: "Tomas Reyersen",
    athlete: "Tomas Reyerson",
    same: true,
  });
  expect(said.names.map(({ name }) => name)).toEqual(["women"]);
  expect(racing(squad)).toHaveLength(3);
});

test("a cell that was answered as a whole counts as that athlete", () => {
  const squad = book("T & R");
  ask(squad, "answerName", { written: "T & R", athlete: "Tomas Reyerson", same: true });
  expect(racing(squad)).toEqual(["Tomas Reyerson"]);
});

test("the formula lists runners who are neither athlete nor group, where the groups are known", () => {
  const check = (known: unknown) =>
    (
      rowCheckFunction.compute([
        racesFor("Ilka Brandmoor; Pim Dorrant", "road"),
        "Races",
        known,
        today,
      ]) as string[][]
    ).map(([cell, found]) => [cell, found]);
  expect(check(athletes)).toEqual([["C2", "“Pim Dorrant”"]]);
  expect(check([["Ilka Brandmoor"], ["Tomas Reyerson"]])).toEqual([["all rows read", ""]]);
});
