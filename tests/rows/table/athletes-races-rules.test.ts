import { dayFromIso } from "../../../src/coaching/calendar/day";
import { understandTable } from "../../../src/rows/read-table";
import type { RowIssue } from "../../../src/rows/reading";
import type { TableName } from "../../../src/rows/table-name";
import { sayRowIssue } from "../../../src/words/row-issues";
import { problems, today } from "../layouts/short";

const read = <T extends TableName>(
  table: T,
  heads: readonly unknown[],
  ...rows: readonly (readonly unknown[])[]
) => understandTable<T>(table, [heads, ...rows], { today }).reading;

test.each([
  ["U18", null, true],
  ["u-18", null, true],
  ["u 18", null, true],
  ["Under-18", null, true],
  ["under 18", null, true],
  ["< 18", null, true],
  ["<18", null, true],
  [" U18 ", null, true],
  ["minor", null, true],
  ["unter 18", null, true],
  ["no", null, false],
  ["n/a", null, null],
  ["2009", 2009, null],
  [" 2009 ", 2009, null],
  [1920, 1920, null],
  [2030, 2030, null],
  [new Date(2010, 1, 1), 2010, null],
  ["1/2/2010", 2010, null],
  ["born U18", null, "not-a-birth-year"],
  ["U180", null, "not-a-birth-year"],
  [1919, null, "not-a-birth-year"],
  [2031, null, "not-a-birth-year"],
  [1, null, "not-a-birth-year"],
  [2009.5, null, "not-a-birth-year"],
  ["20091", null, "not-a-birth-year"],
  ["+2009", null, "not-a-birth-year"],
  ["2009.0", null, "not-a-birth-year"],
])("a birth year of %p", (cell, birthYear, rest) => {
  const reading = read("Athletes", ["Athlete", "Birth year"], ["Ilka", cell]);
  const told = reading.issues.map(({ code, facts }) => [code, facts.heading]);
  expect(told).toEqual(typeof rest === "string" ? [[rest, "Birth year"]] : []);
  expect(reading.records[0]).toMatchObject({
    birthYear,
    under18: typeof rest === "string" ? null : rest,
  });
});

test.each([
  [1, true],
  [0, false],
  ["yes", true],
  ["U18", true],
  ["n/a", null],
  ["", null],
  ["perhaps", "not-yes-or-no"],
  [2, "not-yes-or-no"],
  [true, true],
])("a mark for under 18 of %p", (cell, under18) => {
  const reading = read("Athletes", ["Athlete", "Under 18"], ["Ilka", cell]);
  const told = typeof under18 === "string";
  expect(reading.issues.map(({ code, facts }) => [code, facts.heading])).toEqual(
    told ? [[under18, "Under 18"]] : [],
  );
  expect(reading.records[0]).toMatchObject({ birthYear: null, under18: told ? null : under18 });
});

test("a row of athletes without a name is told and not counted", () => {
  const reading = read("Athletes", ["Group", "Athlete"], ["A", ""], ["A", "Ilka"]);
  expect(reading.records.map(({ athlete }) => athlete)).toEqual(["Ilka"]);
  expect(reading.issues).toMatchObject([
    { code: "needed-blank", cell: "B2", dropsRow: true, facts: { heading: "Athlete" } },
  ]);
});

test.each([
  ["Age", 15, true],
  ["Age (yrs)", "17 yrs", true],
  ["Alter", "17,9", true],
  ["Alter", 18, false],
  ["Under 18?", 16, true],
  ["Age", "U16", true],
  ["Age", 4, null],
  ["Age", 100, null],
  ["Age", "U20", null],
])("an age under “%s” of %p says who is under 18", (heading, cell, under18) => {
  const reading = read("Athletes", ["Athlete", heading], ["Ilka", cell]);
  expect(reading.records[0]).toMatchObject({ birthYear: null, under18 });
  expect(problems(reading)).toEqual(under18 === null ? [`B2 not-yes-or-no: ${cell}`] : []);
});

test.each(["Jg.", "Jahrg.", "Geb.-Jahr", "Geburtsdatum", "Birthdate", "Year born"])(
  "who is under 18 is read from the birth year under “%s”",
  (heading) => {
    const reading = read("Athletes", ["Name", heading], ["Ilka", 2010]);
    expect(reading.records[0]).toMatchObject({ birthYear: 2010 });
  },
);

test("the own mark counts before the birth year's; an athlete listed twice names the earlier row", () => {
  const reading = read(
    "Athletes",
    ["Athlete", "Birth year", "Under 18"],
    ["Ilka", "U18", "no"],
    ["ILKA", 2001, ""],
    ["Kofi", "U18", ""],
  );
  expect(reading.records.map(({ under18 }) => under18)).toEqual([false, true]);
  expect(reading.issues).toMatchObject([
    { code: "athlete-twice", cell: "A3", found: "ILKA", facts: { earlierRow: 2 }, dropsRow: true },
  ]);
});

test.each([
  ["M. Okel", "M. Okel", null],
  ["M. Okel from 5 May 2026", "M. Okel", "2026-05-05"],
  ["M. Okel, since 2026-05-05", "M. Okel", "2026-05-05"],
  ["M. Okel (seit 13.5.2026)", "M. Okel", "2026-05-13"],
  ["M. Okel ab 5/5/2026", "M. Okel", "2026-05-05"],
  ["M. Okel from 5/13/2026", "M. Okel", "2026-05-13"],
  ["M. Okel\nfrom 5 May 2026", "M. Okel", "2026-05-05"],
  ["M. Okel\n(physio) from 5 May 2026", "M. Okel\n(physio)", "2026-05-05"],
  ["-", "", null],
])("the supervisor “%s”", (cell, supervisor, from) => {
  const reading = read("Athletes", ["Athlete", "Supervisor"], ["Ilka", cell]);
  expect(reading.issues).toEqual([]);
  expect(reading.records[0]).toMatchObject({
    supervisor,
    supervisorFrom: from === null ? null : dayFromIso(from),
  });
});

test.each([
  ["M. Okel from 5/6/2026", { either: "2026-06-05", or: "2026-05-06" }],
  ["M. Okel from 5 May", {}],
  ["M. Okel from 31/31/2026", {}],
  ["M. Okel from soon", {}],
  ["M. Okel (from 5 May 2026), mornings", {}],
  ["M. Okel from 5 May 2026\nmornings", {}],
  [`M. Okel ${"x".repeat(193)}`, {}],
])("the supervisor “%s” does not count until the day is clear", (cell, facts) => {
  const reading = read("Athletes", ["Athlete", "Supervisor"], ["Ilka", cell]);
  expect(reading.issues).toMatchObject([
    { code: "supervisor-day", cell: "B2", facts, dropsRow: false },
  ]);
  expect(Object.keys(reading.issues[0]!.facts)).toEqual(Object.keys(facts));
  expect(reading.records[0]).toMatchObject({ supervisor: "", supervisorFrom: null });
});

test("two hundred signs may name a supervisor, and a year above the table counts", () => {
  const longest = `M. Okel ${"x".repeat(192)}`;
  expect(
    read("Athletes", ["Athlete", "Supervisor"], ["Ilka", longest]).records[0]!.supervisor,
  ).toBe(longest);
  const titled = understandTable("Athletes", [
    ["Squad 2026", ""],
    ["Athlete", "Supervisor"],
    ["Ilka", "M. Okel from 5 May"],
  ]).reading;
  expect(titled.records[0]!.supervisorFrom).toBe(dayFromIso("2026-05-05"));
});

const km = (heading: string, cell: unknown) => {
  const reading = read("Races", ["Date", "Race", heading], ["2026-05-12", "Mile", cell]);
  return reading.issues[0]?.code ?? reading.records[0]!.distanceKm;
};

test("races without a column of distances have none", () => {
  const { records } = read("Races", ["Date", "Race"], ["2026-05-12", "Mile"]);
  expect(records.map(({ distanceKm }) => distanceKm)).toEqual([null]);
});

test("a distance that a formula failed to give leaves its race in, where no column says whom it is for", () => {
  const heads = ["Date", "Distance", "Race"];
  const reading = read("Races", heads, ["2026-05-12", "#REF!", "Mile"]);
  expect(reading.records).toMatchObject([{ race: "Mile", who: "all", distanceKm: null }]);
  expect(problems(reading)).toEqual(["B2 not-a-number: #REF!"]);
});

test.each([
  ["Marathon", 42.195],
  [" Marathon ", 42.195],
  ["half", 21.0975],
  ["HM", 21.0975],
  ["Halbmarathon", 21.0975],
  ["mile", 1.609344],
  ["1 mile", 1.609344],
  [400, 0.4],
  [399, "distance-unsettled"],
  [250, 250],
  [251, "distance-unsettled"],
  [0.05, 0.05],
  [0.04, "implausible"],
  [60, "distance-unsettled"],
  [100, "distance-unsettled"],
  [200, "distance-unsettled"],
  ["10k", 10],
  ["10 km road", 10],
  [" 10 km ", 10],
  ["10 000 m", 10],
  ["5,000 m", 5],
  ["5.000 m", 5],
  ["1.500 metres", 1.5],
  ["800 meters", 0.8],
  ["2 miles", 3.218688],
  ["3000 m sc", 3],
  ["3000m steeplechase", 3],
  ["400 m hurdles", 0.4],
  ["5000 track", 5],
  ["10,5 km", 10.5],
  ["10,500 km", 10.5],
  ["249 km", 249],
  ["251 km", "implausible"],
  ["40 m", "implausible"],
  ["50 m", 0.05],
  ["10 km?", "not-a-number"],
  ["about 10 km", "not-a-number"],
  ["10 km hilly", "not-a-number"],
  ["1..5 km", "not-a-number"],
  [Number.NaN, "not-a-number"],
  [true, "not-a-number"],
  [false, null],
  ["-", null],
  [" ", null],
])("a race of %p is %p km", (cell, distance) => {
  expect(km("Distance", cell)).toBe(distance);
});

test("blanks to the sheet's limit within a distance are one, and end", () => {
  const blanks = " ".repeat(49_000);
  expect(km("Distance", `10${blanks}km`)).toBe(10);
  expect(km("Distance", `10${blanks}hills`)).toBe("not-a-number");
});

test("a race's heading tells kilometres, metres and miles, no other unit", () => {
  expect(km("Distance (km)", 60)).toBe(60);
  expect(km("Distance (m)", "60")).toBe(0.06);
  expect(km("Distance (mi)", 100)).toBe(160.9344);
  expect(km("Distance (cm)", 60)).toBe("distance-unsettled");
  expect(km("Distance (m)", "10 km")).toBe(10);
  expect(km("Distance (m)", 5000)).toBe(5);
  expect(
    read("Races", ["Date", "Race", "Distance"], ["2026-05-12", "Mile", 60]).issues[0]!.facts,
  ).toEqual({ low: 0.05, high: 250, unit: "km", heading: "Distance" });
  expect(
    read("Races", ["Date", "Race", "Distance"], ["2026-05-12", "Mile", "far"]).issues[0]!.facts,
  ).toEqual({ heading: "Distance" });
  expect(km("Distance", new Date(2026, 4, 12))).toBe("not-a-number");
});

test("whom a race is for: everybody in several words, or as written; its own time, or the date's", () => {
  const races = read(
    "Races",
    ["Date", "Race", "Who", "Start", "Surface"],
    ["2026-05-12", "R1", "", "18:00", "track"],
    ["2026-05-12 17:00", "R2", "ALLE", "", ""],
    ["2026-05-12", "R3", "Everyone", "", ""],
    ["2026-05-12", "R4", "everybody", "", ""],
    ["2026-05-12", "R5", "Squad", "", ""],
    ["2026-05-12", "R6", "all juniors", "", ""],
    ["2026-05-12", "R7", "overall", "", ""],
  );
  expect(races.records.map(({ who, startMinute }) => [who, startMinute])).toEqual([
    ["all", 1080],
    ["all", 1020],
    ["all", null],
    ["all", null],
    ["all", null],
    ["all juniors", null],
    ["overall", null],
  ]);
  expect(races.records[0]).toMatchObject({ surface: "track", row: 2 });
});

test("runners on lines of their own in one cell are several, also where a mark repeats them", () => {
  const races = read(
    "Races",
    ["Date", "Race", "Who"],
    ["2026-05-12", "R1", "Ilka  Brandmoor\nKofi Anstruther"],
    ["2026-05-13", "R2", '"'],
    ["2026-05-14", "R3", " Ilka Brandmoor \r\n\r\n Kofi Anstruther\r"],
    ["2026-05-15", "R4", `Ilka Brandmoor${"\n".repeat(50_000)}`],
    ["2026-05-16", "R5", "\n"],
  );
  expect(races.records.map(({ who }) => who)).toEqual([
    "Ilka Brandmoor; Kofi Anstruther",
    "Ilka Brandmoor; Kofi Anstruther",
    "Ilka Brandmoor; Kofi Anstruther",
    "Ilka Brandmoor",
    "all",
  ]);
});

const rule = (name: unknown, value: unknown) => {
  const reading = read("Rules", ["Rule", "Value"], [name, value]);
  return reading.issues[0] ?? reading.records[0]!.value;
};

test.each([
  ["velocityLossCap", "20%", 0.2],
  ["velocityLossCap", "20 %", 0.2],
  ["velocityLossCap", " 20 % ", 0.2],
  ["velocityLossCap", "0,2", 0.2],
  ["racks", "3 racks", 3],
  ["racks", "3racks", 3],
  ["racks", " 3 racks ", 3],
  ["racks", "12 racks", 12],
  ["racks", true, 1],
  ["RACKS", 3, 3],
  ["Step every session, not by the week", "yes", 1],
  ["Step every session, not by the week", "n", 0],
  ["Step every session, not by the week", 1, 1],
  ["Step every session, not by the week", "0", 0],
])("the rule %p set to %p is %p", (name, value, read) => {
  expect(rule(name, value)).toBe(read);
});

test.each([
  ["racks", "3?", "not-a-number"],
  ["racks", "20 % or so", "not-a-number"],
  ["velocityLossCap", "10\n20 %", "not-a-number"],
  ["racks", "about", "not-a-number"],
  ["racks", new Date(2026, 4, 1), "not-a-number"],
  ["racks", "3 racks 4", "not-a-number"],
  ["racks", "3 racks5", "not-a-number"],
  ["racks", "-3 racks", "not-a-number"],
  ["racks", " ", "needed-blank"],
  ["racks", -1, "rule-out-of-bounds"],
])("the rule %p set to %p is no setting: %s", (name, value, code) => {
  expect(rule(name, value)).toMatchObject({ code, dropsRow: true });
});

test.each([
  ["Weeks at a step", "Weeks at a step before the next"],
  ["Racks in the rooom", "Racks in the room"],
  ["No heavy work before an A", "No heavy work before an A race"],
])("a rule named %p may be %p, which is asked", (name, near) => {
  expect(rule(name, 3)).toMatchObject({ code: "rule-unknown", facts: { near } });
});

test("of a rule named like none, or like several, nothing is guessed", () => {
  for (const name of ["Moon phase", "A race"])
    expect(rule(name, 3)).not.toHaveProperty("facts.near");
});

test("a rule of yes and no that says neither tells what it takes", () => {
  const issue = rule("Step every session, not by the week", "perhaps");
  expect(issue).toMatchObject({ code: "not-a-number", facts: { unit: "1 for yes" } });
  expect(sayRowIssue(issue as RowIssue).whatToDo).toBe("Type 1 for yes, 0 for no.");
});

test("what is told of a rule: its bounds, a percent taken for a whole, the earlier row", () => {
  expect(rule("velocityLossCap", 20)).toMatchObject({
    code: "rule-out-of-bounds",
    cell: "B2",
    facts: { rule: "velocityLossCap", unit: "fraction", mend: 0.2 },
  });
  expect(rule("velocityLossCap", 5)).toMatchObject({ facts: { mend: 0.05 } });
  for (const value of [2000, 2, -20])
    expect(rule("velocityLossCap", value)).not.toHaveProperty("facts.mend");
  expect(rule("racks", 1000)).not.toHaveProperty("facts.mend");
  expect(rule("racks", "x")).toMatchObject({ facts: { rule: "racks", heading: "Value" } });
  const twice = read("Rules", ["Rule", "Value"], ["racks", 3], ["Racks in the room", 4]);
  expect(twice.issues).toMatchObject([
    { code: "rule-twice", cell: "A3", facts: { earlierRow: 2 } },
  ]);
  expect(problems(read("Rules", ["Rule", "Value"], ["racks", -1], ["racks", 3]))).toEqual([
    "B2 rule-out-of-bounds: -1",
  ]);
});

test("a baseline without its first day, or with one that cannot be read, leaves its athlete in", () => {
  const reading = read(
    "Athletes",
    ["Athlete", "Baseline from", "Baseline to"],
    ["Ilka", "", "2026-05-12"],
    ["Kofi", "soon", ""],
  );
  expect(reading.records.map(({ athlete, baselineFrom }) => [athlete, baselineFrom])).toEqual([
    ["Ilka", null],
    ["Kofi", null],
  ]);
  expect(problems(reading)).toEqual(["B3 not-a-day: soon"]);
});
