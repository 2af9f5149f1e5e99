import fc from "fast-check";
import { isoFromDay } from "../../src/coaching/calendar/day";
import type { LiftingSet } from "../../src/coaching/record/lifting-set";
import { speedSetReader } from "../../src/coaching/series/speed-set";
import { IssueLog } from "../../src/rows/issue-log";
import { withNames } from "../../src/rows/name/name-answers";
import { readTable } from "../../src/rows/read-table";
import { PlainSet } from "../../src/rows/table/plain-set";
import { readSetRows } from "../../src/rows/table/read-sets";
import { viewReaders } from "../../src/rows/table/read-view";
import type { TableView } from "../../src/rows/table-view";

/** Mostly what a coach types plainly, now and then what has to be understood. */
const oneOf = (plain: readonly unknown[], odd: readonly unknown[]) =>
  fc.oneof(
    { weight: 8, arbitrary: fc.constantFrom(...plain) },
    { weight: 1, arbitrary: fc.constantFrom(...odd) },
  );
const day = (of: number) => new Date(2026, 3, of);
const columns: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  date: oneOf(
    [day(7), day(9), day(14)],
    ["2026-04-21", "", '"', new Date(2026, 3, 9, 18, 30), new Date(1926, 3, 9), "2 Jan", 46_000],
  ),
  athlete: oneOf(["Ilka Brandmoor", "Tomas Reyerson"], [" Ilka  Brandmoor", "ditto", "", 7, true]),
  time: oneOf(["", ""], ["17:30"]),
  exercise: oneOf(["back squat"], ["Squat", "hip thrust", "^", ""]),
  set: oneOf([1, 2, 3, ""], [0, "S2", "wu", "marker", 2.5, "2/3"]),
  kind: oneOf(["work", "marker", ""], ["warm-up", "odd word", "ditto", "w"]),
  reps: oneOf([5, 3, ""], [1, "5 reps", 700]),
  "load kg": oneOf([60, 82.5, 100], ["", "82,5", "16/hand", "80?", 900, 0.5, "60 kg easy"]),
  "mean speed m/s": oneOf(["", 0.61], ["0.62 0.60 0.57", 61, "0,6"]),
  "rep 1": oneOf([0.62, 0.7, ""], ["0,62", "miss", 6.2, 0.01, "0.5?"]),
  "rep 2": oneOf([0.6, 0.66, ""], ["–", 60, true]),
  "rep 3": oneOf([0.57, ""], ["0.5", null]),
  "mean or peak": oneOf(["", "mean"], ["peak", "avg", "?"]),
  "bar kg": oneOf([20, 15, ""], ["20 kg", 200, "?"]),
  gym: oneOf(["school", ""], ["ditto", " school"]),
  by: oneOf(["QB", ""], ["QB "]),
  tool: oneOf(["encoder", ""], [" encoder", 12]),
  "moved well": oneOf(["y", "n", ""], [true, "ditto", "perhaps"]),
  "reps in reserve": oneOf([2, ""], ["2-3", "3/10"]),
  rpe: oneOf([8, 7.5, ""], ["7-8", 11, "8/10"]),
  note: oneOf(["", "late", "RPE 8"], ["  two  spaces", 4]),
};

const anySets = fc
  .shuffledSubarray(Object.keys(columns), { minLength: 3 })
  .filter((named) => ["date", "athlete", "exercise"].every((needed) => named.includes(needed)))
  .chain((named) =>
    fc
      .array(fc.tuple(...named.map((name) => columns[name]!)), { minLength: 1, maxLength: 24 })
      .map((rows) => [named, ...rows] as unknown[][]),
  );

/** The table as its reader is given it. */
function viewOfSets(cells: unknown[][]): TableView | null {
  const reader = jest.spyOn(viewReaders as { Sets: typeof viewReaders.Sets }, "Sets");
  readTable("Sets", cells);
  const view = reader.mock.calls[0]?.[0] ?? null;
  reader.mockRestore();
  return view;
}

const read = (view: TableView, plainFrom: number) =>
  readSetRows({ ...view, log: new IssueLog("Sets") }, plainFrom);
const asRecord = (set: LiftingSet) => (set instanceof PlainSet ? set.record() : set);
const always = 0;
const never = Number.POSITIVE_INFINITY;

/** Holds that both readers find the same in a table; how many of its rows were looked up in place. */
function readAlike(cells: unknown[][]): number {
  const view = viewOfSets(cells);
  if (view === null) return 0;
  const quick = read(view, always);
  const careful = read(view, never);
  expect(quick.records.map(asRecord)).toEqual(careful.records);
  expect({ ...quick, records: [] }).toEqual({ ...careful, records: [] });
  const [one, other] = [speedSetReader(), speedSetReader()];
  const spoken = careful.records.map((set) => one(set));
  expect(quick.records.map((set) => other(set))).toEqual(
    spoken.map((set, at) => set && { ...set, set: quick.records[at] }),
  );
  return quick.records.filter((set) => set instanceof PlainSet).length;
}

test("a row looked up in place says what a row read with care says, whatever stands in the table", () => {
  let lookedUp = 0;
  fc.assert(
    fc.property(anySets, (cells) => {
      lookedUp += readAlike(cells);
    }),
    { numRuns: 500 },
  );
  expect(lookedUp).toBeGreaterThan(250);
});

test("whatever unit, order of day and month or meaning of one speed a column is found to have", () => {
  const heading = fc.constantFrom("load", "load kg", "load lb");
  const speeds = fc.constantFrom("rep 1", "rep 1 (m/s)", "speed", "speed cm/s", "rep speeds");
  const days = fc.constantFrom(
    [day(7), day(9), day(14)],
    ["07/04/2026", "14/04/2026", "09/04/2026"],
    ["4/7", "4/14", "4/9"],
    ["2026-04-07", "2026-04-09", "Tue 14 Apr"],
    [new Date(2025, 11, 30), new Date(2026, 3, 9), "2 Jan"],
  );
  const table = fc
    .tuple(heading, speeds, days, fc.constantFrom(1, 1, 2.2), fc.constantFrom(1, 1, 100, 1000))
    .chain(([load, speed, dates, pounds, small]) =>
      fc
        .array(
          fc.tuple(
            fc.constantFrom(...dates),
            fc.constantFrom("Ilka Brandmoor", "Tomas Reyerson"),
            fc.constant("back squat"),
            fc.constantFrom(1, 5, ""),
            fc.constantFrom(60, 80, 100, 102.5).map((kg) => Math.round(pounds * kg)),
            oneOf([0.5 * small, 0.62 * small, 0.7 * small], [0.62, 62, "", "0,62"]),
          ),
          { minLength: 1, maxLength: 16 },
        )
        .map(
          (rows) => [["date", "athlete", "exercise", "reps", load, speed], ...rows] as unknown[][],
        ),
    );
  let lookedUp = 0;
  fc.assert(
    fc.property(table, (cells) => {
      lookedUp += readAlike(cells);
    }),
    { numRuns: 500 },
  );
  expect(lookedUp).toBeGreaterThan(100);
});

test("a row typed twice is found where three speeds or a set's number tell it from a set done twice", () => {
  const heads = ["date", "athlete", "exercise", "set", "load kg", "rep 1", "rep 2", "rep 3"];
  const row = (set: unknown, ...speeds: unknown[]) => [
    ...[day(7), "Ilka Brandmoor", "back squat", set, 80],
    ...speeds,
  ];
  const twice = (one: unknown[]) => {
    const cells = [heads, one, [...one]];
    expect(readAlike(cells)).toBeGreaterThan(0);
    return read(viewOfSets(cells) as TableView, always).issues.map(({ code }) => code);
  };
  expect(twice(row("", 0.62, 0.6, 0.57))).toEqual(["doubled-row"]);
  expect(twice(row("", 0.62, 0.6, ""))).toEqual([]);
  expect(twice(row(2, 0.62, "", ""))).toEqual(["doubled-row"]);
  const unnumbered = [day(7), "Ilka Brandmoor", "back squat", 80, 0.62, 0.6];
  const speeds = ["date", "athlete", "exercise", "load kg", "rep 1", "rep 2"];
  expect(readAlike([speeds, unnumbered, [...unnumbered]])).toBe(2);
  const led = [
    ["set", "date", "athlete", "exercise", "load kg"],
    [2, day(7), "Ilka Brandmoor", "back squat", 80],
  ];
  expect(readAlike([...led, [...led[1]!]])).toBe(1);
  // Rows of a layout have no headings above them: the first row of all is the earlier one.
  const view = viewOfSets([...led, [...led[1]!]]) as TableView;
  const flat = { ...view, cells: view.cells.slice(1), headerRow: -1, first: 0, end: 2 };
  expect(read(flat, always).issues).toMatchObject([
    { code: "doubled-row", row: 2, facts: { earlierRow: 1 } },
  ]);
});

test("a set looked up in its row is still whole when its athlete's name is put right", () => {
  const cells = [
    ["date", "athlete", "exercise", "set", "load kg", "rep 1", "rep 2"],
    [day(7), "I. Brandmoor", "back squat", 1, 80, 0.62, 0.6],
  ];
  const { records } = read(viewOfSets(cells) as TableView, always);
  expect(records[0]).toBeInstanceOf(PlainSet);
  const answers = {
    same: [{ written: "I. Brandmoor", athlete: "Ilka Brandmoor" }],
    different: [],
  };
  expect(withNames(records, answers)).toEqual([
    { ...asRecord(records[0]!), athlete: "Ilka Brandmoor" },
  ]);
});

test("rows of a layout without loads are read with care, however many", () => {
  const cells = [
    ["date", "athlete", "exercise", "set", "load kg", "rep 1"],
    [day(7), "Ilka Brandmoor", "back squat", 1, 80, 0.62],
  ];
  const { fields, ...rest } = viewOfSets(cells) as TableView;
  const { load: _, ...others } = fields;
  const { records } = read({ ...rest, fields: others }, always);
  expect(records).toMatchObject([{ loadKg: null, repSpeeds: [0.62] }]);
});

test("rows under merged names, and rows of one repetition each, lean on the rows above them", () => {
  const squat = [day(7), "Ilka Brandmoor", "back squat"];
  const merged = [
    ["date", "athlete", "exercise", "set", "load kg"],
    [...squat, 1, 80],
    ["", "", "", 2, 82.5],
    [day(7), "Tomas Reyerson", "back squat", 1, 100],
    ["", "", "", 2, 102.5],
  ];
  expect(readAlike(merged)).toBe(0);
  const names = [
    ["date", "athlete", "exercise", "set", "load kg"],
    [...squat, 1, 80],
    [day(7), "", "back squat", 2, 82.5],
    [day(7), "Tomas Reyerson", "back squat", 1, 100],
    [day(7), "", "back squat", 2, 102.5],
  ];
  expect(readAlike(names)).toBe(0);
  const oneARow = [
    ["date", "athlete", "exercise", "set", "rep", "load kg", "speed m/s"],
    [...squat, 1, 1, 80, 0.62],
    [...squat, 1, 2, 80, 0.6],
    [...squat, 1, 3, 80, 0.57],
  ];
  expect(readAlike(oneARow)).toBe(0);
  expect(read(viewOfSets(oneARow) as TableView, always).records).toMatchObject([
    { repSpeeds: [0.62, 0.6, 0.57] },
  ]);
});

test("below a day that cannot be read, a day without a year follows the last that was", () => {
  const row = (date: unknown) => [date, "Ilka Brandmoor", "back squat", 80];
  const cells = [
    ["date", "athlete", "exercise", "load kg"],
    ...[new Date(2025, 11, 30), new Date(1926, 3, 9), "2 Jan"].map(row),
  ];
  expect(readAlike(cells)).toBeGreaterThan(0);
  const { records } = read(viewOfSets(cells) as TableView, always);
  expect(records.map((set) => isoFromDay(set.day))).toEqual(["2025-12-30", "2026-01-02"]);
});

test("a row with its time of day is read with care, the first column being the time as well", () => {
  const timed = [
    ["time", "date", "athlete", "exercise", "load kg"],
    ["17:30", day(7), "Ilka Brandmoor", "back squat", 80],
    ["", day(7), "Ilka Brandmoor", "back squat", 82.5],
  ];
  expect(readAlike(timed)).toBe(1);
  expect(read(viewOfSets(timed) as TableView, always).records[0]!.minute).toBe(1050);
});
