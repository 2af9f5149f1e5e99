import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet, today } from "./short";

// Days of which the tab's name or a title gives the week or the month; all invented.

const head = ["Day", "Athlete", "Lift", "kg"];
const set = (day: unknown) => [day, "Ilka", "Squat", 80];
const read = (title: string, ...cells: unknown[][]) =>
  understandTable("Sets", cells, { today, title }).reading;
const days = (title: string, ...cells: unknown[][]) =>
  read(title, ...cells).records.map((one) => shortSet(one).slice(0, 5));

test.each([
  ["Week 19 (4-10 May 2026)", "Gym"],
  ["4–10 May", "Gym"],
  ["w/c 4 May", "Gym"],
  ["Week of Monday 4 May 2026", "Gym"],
  ["Gym", "Week 19 (2026-05-04)"],
  ["Gym", "4 May – 10 May 2026"],
])("weekdays are days of the week in the tab's name or a title: %s, %s", (title, line) => {
  expect(days(title, [line, "", "", ""], head, set("Tue"), set("Thu"), set("Sunday"))).toEqual([
    "05-05",
    "05-07",
    "05-10",
  ]);
});

test("a week that is said to begin on a Sunday runs on from it", () => {
  // 3 May 2026 is a Sunday.
  expect(days("w/c 3 May", head, set("Sun"), set("Mon"), set("Sat"))).toEqual([
    "05-03",
    "05-04",
    "05-09",
  ]);
});

test("one week below another, each under its title, which is no row of sets", () => {
  const cells = [
    ["Gym", "Week of 4 May", "", ""],
    head,
    set(" Tue "),
    ["", "", "", ""],
    ["Week of 11 May", "", "", "in the hall"],
    head,
    set("Tue"),
  ];
  expect(days("Gym", ...cells)).toEqual(["05-05", "05-12"]);
  expect(problems(read("Gym", ...cells))).toEqual([]);
});

test("numbers are days of the month in the tab's name, as far as it has them", () => {
  for (const title of ["May 2026", "Mai 2026", "may"]) {
    const reading = read(title, head, set(5), set("12"), set(32));
    expect(reading.records.map((one) => shortSet(one).slice(0, 5))).toEqual(["05-05", "05-12"]);
    expect(problems(reading)).toEqual(["A4 not-a-day: 32"]);
  }
  expect(problems(read("May 2026", head, set(5), set(5.5), set(0), set(-2), set(12)))).toEqual([
    "A3 not-a-day: 5.5",
    "A4 not-a-day: 0",
    "A5 not-a-day: -2",
  ]);
  // The last day of the month is one, and a span in a row of sets no title.
  expect(days("May 2026", head, set(31))).toEqual(["05-31"]);
  const span = read("May 2026", head, set(5), set("6–8 May"), set(12));
  expect([span.records.length, problems(span)]).toEqual([2, ["A3 not-a-day: 6–8 May"]]);
  // One, two and three under "Day" may be sessions of a plan, under "Date" they are no such.
  expect(problems(read("May 2026", head, set(1), set(2)))).toEqual([
    "A2 not-a-day: 1",
    "A3 not-a-day: 2",
  ]);
  expect(days("May 2026", ["Date", ...head.slice(1)], set(1), set(2))).toEqual(["05-01", "05-02"]);
  expect(problems(read("February 2026", head, set(28), set(30)))).toEqual(["A3 not-a-day: 30"]);
});

test("without a week or a month they stay what they are, and so do whole dates", () => {
  expect(problems(read("Gym", head, set("Tue")))).toEqual(["A2 not-a-day: Tue"]);
  // The fourth of May is a Monday, the fifth of April a Sunday: both begin weeks.
  expect(problems(read("Week 19 (4/5/26)", head, set("Tue")))).toEqual(["A2 not-a-day: Tue"]);
  expect(problems(read("Week 19", head, set("Tue")))).toEqual(["A2 not-a-day: Tue"]);
  expect(days("w/c 4 May", head, set("2026-06-02"), set("2026-06-04"))).toEqual(["06-02", "06-04"]);
});

test("beside dates a column called Day is the weekday, left or right of them, and not asked about", () => {
  for (const cells of [
    [
      ["Day", "Date", "Athlete", "Lift", "kg"],
      ["Tue", new Date(2026, 4, 5), "Ilka", "Squat", 80],
    ],
    [
      ["Date", "Day", "Athlete", "Lift", "kg"],
      [new Date(2026, 4, 5), "Tue", "Ilka", "Squat", 80],
    ],
  ]) {
    const { reading, questions } = understandTable("Sets", cells, { today });
    expect([reading.records.map(shortSet), questions]).toEqual([["05-05 Ilka work 80x?"], []]);
  }
});

test("lifts side by side in weeks without a day are asked about, not passed over", () => {
  const cells = [
    ["Week of 4 May 2026", "", "", "", ""],
    ["", "Squat", "", "Deadlift", ""],
    ["Athlete", "kg", "m/s", "kg", "m/s"],
    ["Ilka", 80, 0.62, 100, 0.5],
  ];
  const [found] = findTables([{ name: "Gym", cells }], { today });
  expect([found!.table, found!.sureness]).toEqual(["Sets", 0.5]);
  expect(problems(found!.understanding.reading)).toEqual(["A4 day-missing: Ilka"]);
});

test("days from one weekday to the next begin with the first", () => {
  // 6 May 2026 is a Wednesday.
  expect(days("6 to 12 May", head, set("Wed"), set("Mon"), set("Tue"))).toEqual([
    "05-06",
    "05-11",
    "05-12",
  ]);
});

test("a note of some days among the rows is no title of those below it", () => {
  const reading = read(
    "May 2026",
    [...head, "Note"],
    [...set(14), ""],
    ["", "", "", "", "rest week 8-10 May"],
    [...set(16), ""],
  );
  expect(reading.records.map((one) => shortSet(one).slice(0, 5))).toEqual(["05-14", "05-16"]);
  expect(problems(reading)).toEqual(["E3 words-alone: rest week 8-10 May"]);
});

test("a number under the title of a week is no weekday, and is told", () => {
  const dated = ["Date", ...head.slice(1)];
  const reading = read("w/c 4 May", dated, set("Tue"), set(6), set("Thu"));
  expect(reading.records.map((one) => shortSet(one).slice(0, 5))).toEqual(["05-05", "05-07"]);
  expect(problems(reading)).toEqual(["A3 not-a-day: 6"]);
});
