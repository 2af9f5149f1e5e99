import { dayFromIso } from "../../../src/coaching/calendar/day";
import { readOnce } from "../../../src/rows/read-once";
import { readTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";

const none = { today: null };
const day = (iso: string) => dayFromIso(iso);
const codes = (reading: { issues: readonly { cell: string; code: string }[] }) =>
  reading.issues.map(({ cell, code }) => `${cell} ${code}`);
const squat = (date: unknown, set: unknown, load: unknown) => [
  date,
  "Ilka Brandmoor",
  "back squat",
  set,
  load,
];
const head = ["date", "athlete", "exercise", "set", "load kg"];
const sets = (...rows: readonly unknown[][]) => readTable("Sets", [head, ...rows], none);

test("a mark for the cell above with nothing ever above it is a blank, not a figure and not a fault", () => {
  const marks = Array<string>(8).fill('"');
  const reading = readTable(
    "Sets",
    [
      [
        ...head.slice(0, 4),
        "kind",
        "reps",
        "load kg",
        "mean speed m/s",
        "moved well",
        "bar",
        "tool",
        "note",
      ],
      ["2026-05-05", "Ilka Brandmoor", "back squat", 1, ...marks],
      ["2026-05-05", '"', '"', 2, ...marks],
    ],
    none,
  );
  expect(reading.issues).toEqual([]);
  for (const record of reading.records)
    expect(record).toMatchObject({
      kind: "work",
      reps: null,
      loadKg: null,
      setSpeed: null,
      movedWell: null,
      barKg: null,
      tool: "",
      note: "",
    });
});

test("a date that repeats nothing is reported, the rows under a real one are read", () => {
  const reading = sets(squat('"', 1, 60), squat("2026-05-05", 1, 60), squat('"', 2, 62.5));
  expect(codes(reading)).toEqual(["A2 needed-blank"]);
  expect(reading.records.map((set) => [set.day, set.loadKg])).toEqual([
    [day("2026-05-05"), 60],
    [day("2026-05-05"), 62.5],
  ]);
});

test("a dash is no day where a day is needed", () => {
  expect(codes(sets(squat("-", 1, 60), squat("2026-05-05", 1, 60)))).toEqual(["A2 not-a-day"]);
});

test("a year that stands nowhere in the column is asked for", () => {
  expect(codes(sets(squat("12 May", 1, 60)))).toEqual(["A2 year-missing"]);
});

test("a weekday beside the figures says which is the month, in its own year or the column's", () => {
  // 12 May 2026 is a Tuesday, 5 December 2026 a Saturday.
  const monthFirst = [day("2026-05-12"), day("2026-05-06")];
  const own = sets(squat("Tue 5/12/2026", 1, 60), squat("5/6/2026", 1, 60));
  expect(own.records.map((set) => set.day)).toEqual(monthFirst);
  const beside = sets(squat("Tue 5/12", 1, 60), squat("5/6/2026", 1, 60));
  expect(beside.records.map((set) => set.day)).toEqual(monthFirst);
  const dayFirst = sets(squat("Sat 5/12/2026", 1, 60), squat("5/6/2026", 1, 60));
  expect(dayFirst.records.map((set) => set.day)).toEqual([day("2026-12-05"), day("2026-06-05")]);
});

test("days with points between are day first where nothing speaks against it", () => {
  const points = sets(squat("5.6.2026", 1, 60), squat("7.6.2026", 1, 60));
  expect(points.records.map((set) => set.day)).toEqual([day("2026-06-05"), day("2026-06-07")]);
  const slashes = sets(squat("5/6/2026", 1, 60), squat("7/6/2026", 1, 60));
  expect(codes(slashes)).toEqual(["A2 date-order-unsettled", "A3 date-order-unsettled"]);
});

const runs = (...metres: readonly unknown[]) =>
  readTable(
    "Runs",
    [
      ["date", "athlete", "minutes", "distance (m)"],
      ...metres.map((cell, at) => [`2026-05-0${at + 1}`, "Ilka Brandmoor", 60, cell]),
    ],
    none,
  );

test("a comma before three figures groups thousands where only that can have been run", () => {
  // 1.25 m is no run and 1,250 m is one.
  expect(runs("1,250").records[0]!.km).toBeCloseTo(1.25, 9);
  const flights = readTable(
    "Jumps",
    [
      ["date", "athlete", "test", "flight (ms)"],
      ["2026-05-05", "Ilka Brandmoor", "jump and reach", "1,000"],
      ["2026-05-06", "Ilka Brandmoor", "jump and reach", 550],
    ],
    none,
  );
  expect(flights.records.map(({ flightS }) => flightS)).toEqual([1, 0.55]);
});

test("a comma in a load of which only the smaller figure can be lifted is a decimal comma", () => {
  expect(sets(squat("2026-05-05", 1, "82,500")).records[0]!.loadKg).toBe(82.5);
});

test("a table read twice is the same reading, per day only where days have no year of their own", () => {
  const once = <T extends TableName>(table: T, cells: unknown[][], today: string) =>
    readOnce(table, cells, day(today));
  const dated = [head, squat("2026-05-05", 1, 60)];
  expect(once("Sets", dated, "2026-05-20")).toBe(once("Sets", dated, "2026-05-21"));
  const undated = [
    ["Jump tests"],
    ["1) box jump", "28 Apr", "5 May", "12 May"],
    ["Ilka Brandmoor", 42, 43, 42],
    ["Tomas Reyerson", 50, 49, 50],
  ];
  const first = once("Jumps", undated, "2026-05-20");
  expect(once("Jumps", undated, "2026-05-20")).toBe(first);
  const later = once("Jumps", undated, "2027-05-20");
  expect(later).not.toBe(first);
  expect([first, later].map(({ records }) => records[0]!.day)).toEqual([
    day("2026-04-28"),
    day("2027-04-28"),
  ]);
  // Another table of the very same cells is a reading of its own.
  expect(once("Plates", dated, "2026-05-20")).not.toBe(once("Sets", dated, "2026-05-20"));
});
