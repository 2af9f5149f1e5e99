import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes } from "./short";

const today = dayFromIso("2026-06-10")!;
const dates = ["Athlete", "13 June", "20 June", "27 June"];
const races = ["", "Club night", "State relays", "Nationals"];
const rows = [
  ["Tane Rewiri", "800", "4x4", "A"],
  ["Isla McKeown", "1500m", "", "no"],
  ["Beau Farrant", "-", "", "x"],
];
const racesIn = (cells: readonly (readonly unknown[])[], title = "Racing", said = false) => {
  const { reading, layout, questions } = understandTable("Races", cells, { today, title, said });
  return {
    layout,
    races: reading.records.map(({ day, race, who, distanceKm, matters }) =>
      [isoFromDay(day).slice(5), race, who, distanceKm ?? "", matters ?? ""].join(" ").trim(),
    ),
    issues: reading.issues.map(({ code, cell }) => `${code} ${cell}`),
    questions: questions.map(({ column, heading }) => `${column} ${heading}`),
  };
};
const notesIn = (cells: readonly (readonly unknown[])[]) =>
  notes(understandTable("Races", cells, { today, title: "Racing" }).reading);
const expected = [
  "06-13 Club night Tane Rewiri 0.8",
  "06-20 State relays Tane Rewiri",
  "06-27 Nationals Tane Rewiri  A",
  "06-13 Club night Isla McKeown 1.5",
  "06-27 Nationals Beau Farrant",
];

test("races across and athletes down: a race for each cell that says somebody runs, with what it says", () => {
  const below = racesIn([["Race plan"], dates, races, ...rows]);
  expect(below).toEqual({ layout: "dates across", races: expected, issues: [], questions: [] });
  // The names may stand above the dates, and a heading beside either.
  expect(racesIn([["Race", ...races.slice(1)], dates, ...rows]).races).toEqual(expected);
});

test("such a tab is found by its name or title, and is nothing else", () => {
  const found = (name: string, head: readonly unknown[][]) =>
    findTables([{ name, cells: [...head, dates, races, ...rows] }], { today }).map(
      ({ table, sureness }) => `${table} ${sureness >= 0.6}`,
    );
  expect(found("Racing", [])).toEqual(["Races true"]);
  expect(found("June", [["Meets of the summer"]])).toEqual(["Races true"]);
  expect(found("June", []).filter((one) => one.startsWith("Races"))).toEqual([]);
});

test("without a row of races’ names, or with an athlete beside them, it is no such plan", () => {
  expect(racesIn([dates, ...rows]).races).toEqual([]);
  expect(
    racesIn([dates, ["Tane Rewiri", "800 metres", "relay", "relay"], ...rows.slice(1)]).races,
  ).toEqual([]);
});

test("what is beside the plan is told, a row without an athlete is named, sums and words are no athletes", () => {
  const cells = [
    [...dates, "Bus?"],
    [...races, ""],
    [...rows[0]!, "yes"],
    ["", "800", "", ""],
    ["Total", 2, 1, 1],
    ["All at the club’s own track", "", "", ""],
  ];
  const plan = racesIn(cells);
  expect(plan.races).toEqual(expected.slice(0, 3));
  expect(plan.issues).toEqual(expect.arrayContaining(["needed-blank A4"]));
  expect(plan.questions.concat(plan.issues).join(" ")).toMatch(/Bus\?|E3|E1/);
});

test.each([
  ["two distances", "800, 1500", ["06-13 Club night Tane"], ["B3 Tane: 800, 1500"]],
  ["a heat", "1500m heat", ["06-13 Club night Tane"], ["B3 Tane: 1500m heat"]],
  ["a question alone", "?", [], ["B3 Tane: ?"]],
  ["a place taken", 2, ["06-13 Club night Tane"], ["B3 Tane: 2"]],
  ["a cross", "×", ["06-13 Club night Tane"], []],
  ["a tick", "✓", ["06-13 Club night Tane"], []],
  ["a class", "b", ["06-13 Club night Tane  B"], []],
  ["a distance", "3k sc", ["06-13 Club night Tane 3"], []],
])("what a cell says beside that somebody runs is kept: %s", (_, cell, run, told) => {
  const cells = [dates.slice(0, 3), races.slice(0, 3), ["Tane", cell, ""]];
  expect([racesIn(cells).races, notesIn(cells)]).toEqual([run, told]);
  const { notes: said } = understandTable("Races", cells, { today, title: "Racing" }).reading;
  expect((said ?? []).every(({ span }) => span === "day")).toBe(true);
});

test("a mark beside no athlete is asked about by its heading, and one name over two dates names no races", () => {
  const plan = (second: string, who: string) =>
    understandTable(
      "Races",
      [
        ["Athlete", ...dates.slice(1, 3)],
        ["", "Club night", second],
        [who, "x", "x"],
      ],
      {
        today,
        title: "Racing",
        said: true,
      },
    );
  expect(plan("State relays", "").reading.issues).toMatchObject([
    { code: "needed-blank", cell: "A3", facts: { heading: "athlete" } },
  ]);
  expect(plan("", "Tane").layout).toBe("not recognised");
});

test("a place or a distance of the races is no athlete, and notes stand beside the plan", () => {
  const cells = [
    [...dates.slice(0, 3), ""],
    [...races.slice(0, 3), "Notes"],
    ["Venue", "River park", "", ""],
    ["Distance", "", 800, ""],
    ["Tane", "x", "", "peak here"],
    ["", "", "", "bus at noon"],
  ];
  expect(racesIn(cells)).toMatchObject({
    races: ["06-13 Club night Tane"],
    issues: [],
    questions: [],
  });
  const { reading } = understandTable("Races", cells, { today, title: "Racing" });
  expect(counts(reading)).toEqual([3, 0, 0, 3]);
  expect(notesIn(cells)).toEqual([
    "B3 : Venue: River park",
    "C4 : Distance: 800",
    "D5 Tane: peak here",
    "D6 : bus at noon",
  ]);
});

test.each([
  [
    "dates that may be either way round",
    ["5/6/2026", "6/7/2026"],
    [],
    ["date-order-unsettled B1", "date-order-unsettled C1"],
  ],
  ["a day that no month has", ["31/6/2026", "17/7/2026"], ["07-17 Relays Tane"], ["not-a-day B1"]],
])("%s head no races, and are told", (_, [one, other], run, issues) => {
  const plan = racesIn([
    ["Athlete", one, other],
    ["", "Club night", "Relays"],
    ["Tane", "800", "x"],
  ]);
  expect([plan.races, plan.issues]).toEqual([run, issues]);
});

test("every row of a plan counts once, sums and lone words as headings", () => {
  const { reading } = understandTable(
    "Races",
    [
      dates.slice(0, 3),
      races.slice(0, 3),
      ["Tane", "800", "x"],
      ["", "", ""],
      ["Isla", "-", "no"],
      ["", "x", ""],
      ["Total", 2, 1],
      ["All at home", "", ""],
    ],
    { today, title: "Racing" },
  );
  expect(counts(reading)).toEqual([2, 1, 1, 4]);
});

test.each([
  ["No.", [1, 2, 3], ["1 No."]],
  ["Group", ["A", "B", "B"], ["1 Group"]],
  ["", ["", "", ""], []],
])("a column before the athletes names nobody: “%s”", (heading, before, questions) => {
  const cells = [
    [heading, ...dates],
    ["", ...races],
    ...rows.map((row, at) => [before[at], ...row]),
  ];
  expect(racesIn(cells)).toMatchObject({ races: expected, issues: [], questions });
});

test("the athletes' heading may stand beside the races' names, behind an empty column", () => {
  const cells = [
    ["", "", ...dates.slice(1)],
    ["", "Athlete", ...races.slice(1)],
    ...rows.map((row) => ["", ...row]),
  ];
  expect(racesIn(cells)).toMatchObject({ races: expected, issues: [], questions: [] });
});

test("athletes may stand right of their races, under a heading or none", () => {
  const turned = (row: readonly unknown[]) => [...row.slice(1), row[0]];
  for (const heading of ["Athlete", ""]) {
    const cells = [[heading, ...dates.slice(1)], races, ...rows];
    expect(racesIn(cells.map(turned)).races).toEqual(expected);
  }
});

test("a race with a question mark behind it is run, a question mark alone is not", () => {
  const doubt = [
    ["Tane Rewiri", "mile?", "?", "??"],
    ["Isla McKeown", "", "? if fit", ""],
  ];
  expect(racesIn([["Race plan"], dates, races, ...doubt]).races).toEqual([
    "06-13 Club night Tane Rewiri",
    "06-20 State relays Isla McKeown",
  ]);
});
