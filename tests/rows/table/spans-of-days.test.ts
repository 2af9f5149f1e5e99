import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { readTable } from "../../../src/rows/read-table";

const today = dayFromIso("2026-06-10")!;
const spells = (...rows: readonly unknown[][]) =>
  readTable(
    "Availability",
    [["Who", "Status", "When", "Until"], ...rows.map((row) => ["Jo", ...row])],
    {
      today,
    },
  );
const told = ({ records, issues }: ReturnType<typeof spells>) => [
  records.map(({ from, until }) => [isoFromDay(from), until === null ? null : isoFromDay(until)]),
  issues.map(({ code, cell }) => `${code} ${cell}`),
];

test("a spell written as a span of days begins and ends with it; a column of its own says the end first", () => {
  expect(told(spells(["ill", "12–14 June 2026"]))).toEqual([[["2026-06-12", "2026-06-14"]], []]);
  expect(told(spells(["ill", "from 1 June 2026"]))).toEqual([[["2026-06-01", null]], []]);
  expect(told(spells(["ill", "12–14 June 2026", "2026-06-20"]))).toEqual([
    [["2026-06-12", "2026-06-20"]],
    [],
  ]);
  // The span of one row is not the next one's.
  expect(told(spells(["ill", "1–5 June 2026"], ["ill", "2026-06-09"]))).toEqual([
    [
      ["2026-06-01", "2026-06-05"],
      ["2026-06-09", null],
    ],
    [],
  ]);
});

test("a span that ends before it begins is no day", () => {
  expect(told(spells(["ill", "14–12 June 2026"]))).toEqual([[], ["not-a-day C2"]]);
});

test("spells without a year are of the year that brings them near today, and asked about where none does", () => {
  expect(told(spells(["ill", "8–21 June"]))).toEqual([[["2026-06-08", "2026-06-21"]], []]);
  expect(told(spells(["ill", "20 December"]))).toEqual([[], ["year-missing C2"]]);
  const untold = readTable("Availability", [
    ["Who", "Status", "When"],
    ["Jo", "ill", "8–21 June"],
  ]);
  expect(untold.issues.map(({ code }) => code)).toEqual(["year-missing"]);
});

test("a diary’s day is one day: a span there is asked about", () => {
  const { issues } = readTable("Diary", [
    ["Date", "Athlete", "Soreness"],
    ["12–14 June 2026", "Jo", 3],
  ]);
  expect(issues.map(({ code }) => code)).toEqual(["not-a-day"]);
});

test("every day of a meeting is a race day, the first alone with its start; ten days are the most", () => {
  const races = (when: string) =>
    readTable("Races", [
      ["Date", "Start", "Race", "Who"],
      [when, "14:30", "Regional champs", "track"],
      ["2026-07-04", "", "Mill ten", "road"],
    ]);
  const { records, rowsRead } = races("Sat 27–Sun 28 June 2026");
  expect(
    records.map(({ day, startMinute, who, row }) => [isoFromDay(day), startMinute, who, row]),
  ).toEqual([
    ["2026-06-27", 870, "track", 2],
    ["2026-06-28", null, "track", 2],
    ["2026-07-04", null, "road", 3],
  ]);
  expect(rowsRead).toBe(2);
  expect(races("1–10 June 2026").records).toHaveLength(11);
  const long = races("1–11 June 2026");
  expect([long.records.length, long.issues.map(({ code, cell }) => `${code} ${cell}`)]).toEqual([
    1,
    ["not-a-day A2"],
  ]);
});

test("whoever stands in a tab of absences is out, whatever the reason, once it is said to be Availability", () => {
  const cells = [
    ["Name", "Dates", "Reason"],
    ["Tane", "12–14 June 2026", "wedding"],
  ];
  const of = (title: string) => readTable("Availability", cells, { title, said: true });
  expect(of("Absences").records).toMatchObject([
    { athlete: "Tane", mayDo: "out", note: "wedding", from: dayFromIso("2026-06-12") },
  ]);
  expect(of("June").issues.map(({ code }) => code)).toEqual(["column-missing"]);
});
