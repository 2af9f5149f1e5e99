import { catalogue } from "../../src/catalogue";
import { exampleSets } from "../../src/catalogue/example-rows";

const season = catalogue.find(({ name }) => name === "SEASON_WEEKS")!;
const races = [
  ["date", "race", "athlete or group or all", "matters"],
  ["2026-05-23", "R2", "all", "A"],
];
const weeks = (count: unknown) =>
  season.compute(["Ilka Brandmoor", races, "2026-05-06", count]) as string[][];

test("a season is eighteen weeks where nobody says how many, from the Monday of its first day", () => {
  const [signs] = weeks("")[0]!;
  // Three weeks from Monday 4 May: the race of 23 May is in the third.
  expect(signs!.replace(/ /g, "")).toHaveLength(18);
  expect(signs!.replace(/ /g, "").indexOf("A")).toBe(2);
  expect(weeks(52)[0]![0]!.replace(/ /g, "")).toHaveLength(52);
  expect(weeks(1)[0]![0]).not.toContain("A");
});

test.each([0, 53, 2.5, -4])("a season of %p weeks is refused", (count) => {
  expect(() => weeks(count)).toThrow(/^A season of .* weeks is not possible/);
});

test("a race without a year is the one in these weeks, one that cannot be read is told to all", () => {
  const on = (day: string) =>
    season.compute(["Ilka Brandmoor", [races[0]!, [day, "R2", "all", "A"]], "2026-11-30", 12]);
  // Twelve weeks from Monday 30 November 2026: 16 January is of the year after.
  expect(on("16 Jan")).toEqual([["···· ··Aa ····", "R2 (A) 16 Jan"]]);
  expect(on("5 Dec")).toEqual([["Aa·· ···· ····", "R2 (A) 5 Dec"]]);
  expect(on("soon")).toEqual([
    ["···· ···· ····", "no races; 1 row with a cell not used (see ROW_CHECK)"],
  ]);
});

test("a first day that is none is named as the argument it is", () => {
  const from = (day: unknown) => () => season.compute(["Ilka Brandmoor", races, day, 8]);
  expect(from("")).toThrow("first_day is blank: point it at a date cell.");
  expect(from("soon")).toThrow("first_day is not a date (soon)");
  expect(from("4 May")).toThrow("first_day has no year (4 May)");
  expect(from("4/5/2026")).toThrow("first_day could be two days (4/5/2026)");
});

test("the squad table names the next race, and how much it matters only where that is written", () => {
  const table = catalogue.find(({ name }) => name === "SQUAD_TABLE")!;
  const notes = (matters: string) => {
    const next = [races[0]!, ["2026-05-22", "Club mile", "all", matters]];
    const [row] = table.compute([
      "Ilka Brandmoor",
      "",
      exampleSets,
      "",
      "",
      next,
      "2026-05-21",
    ]) as unknown[][];
    return row![11];
  };
  expect(notes("B")).toContain("B race in 1 day: Club mile, 22 May.");
  expect(notes("")).toContain("Race in 1 day: Club mile, 22 May.");
});

test("races for a group are not passed over where names alone were given", () => {
  const all = [
    races[0]!,
    ["2026-05-23", "R2", "all", "A"],
    ["2026-06-13", "R3", "track", "B"],
    ["2026-06-14", "R4", "road; Hamid Sorley", "B"],
    ["2027-06-14", "R5", "marathon", "A"],
  ];
  const said = (athletes: unknown) =>
    (season.compute([athletes, all, "2026-05-04", 8]) as string[][]).map(([, told]) => told);
  expect(said("Tomas Reyerson")).toEqual([
    "R2 (A) 23 May; races for track, road and Hamid Sorley not counted: give the Athletes table with its groups",
  ]);
  expect(said("Hamid Sorley")).toEqual([
    "R2 (A) 23 May, R4 (B) 14 Jun; races for track not counted: give the Athletes table with its groups",
  ]);
  const table = [
    ["athlete", "group"],
    ["Tomas Reyerson", "track"],
  ];
  expect(said(table)).toEqual(["R2 (A) 23 May, R3 (B) 13 Jun"]);
  const squad = catalogue.find(({ name }) => name === "SQUAD_TABLE")!;
  const notes = (athletes: unknown) =>
    String(
      (squad.compute([athletes, "", exampleSets, "", "", all, "2026-05-21"]) as string[][])[0]![11],
    );
  expect(notes([["Ilka Brandmoor"]])).toContain(
    "Races for track, road, Hamid Sorley and marathon not counted: give the Athletes table with its groups.",
  );
  expect(notes(table)).not.toContain("not counted");
});
