import { readTable, understandTable } from "../../src/rows/read-table";

const runs = (heads: readonly string[], ...rows: readonly unknown[][]) =>
  readTable("Runs", [
    ["Date", "Name", ...heads],
    ...rows.map((row) => ["2026-06-08", "Abel", ...row]),
  ]);

test.each([
  ["10k easy", "easy"],
  ["long run 30k", "long"],
  ["8x1k", "interval"],
  ["6 × 400, track", "interval"],
  ["AM easy / PM easy", "easy"],
  ["10k e", "easy"],
  ["e", "easy"],
])("“%s” names its kind: %s", (text, kind) => {
  const { records, issues } = runs(["Run"], [text]);
  expect([records[0]!.kind, issues]).toEqual([kind, []]);
});

test("what a kind's cell says besides is read too, or told: figures without a column of their own, words as a note", () => {
  const { records, issues, notes } = runs(
    ["Run", "km"],
    ["10k easy, hilly", ""],
    ["12 km long 1:05:00 rpe 4", 13],
    ["Tempo 30", ""],
    ["8x1k", ""],
  );
  expect(records.map(({ kind, minutes, km, exertion }) => [kind, minutes, km, exertion])).toEqual([
    ["easy", null, 10, null],
    ["long", 65, 13, 4],
    ["race pace", null, null, null],
    ["interval", null, null, null],
  ]);
  expect(notes!.map(({ cell, words }) => `${cell} ${words}`)).toEqual([
    "C2 hilly",
    "C3 12 km",
    "C5 8x1k",
  ]);
  expect(issues.map(({ cell, code }) => `${cell} ${code}`)).toEqual(["C4 run-figure-beside"]);
});

test("under dates a kind's cell is read the same way", () => {
  const { reading } = understandTable(
    "Runs",
    [
      ["Runs", "", "", "", ""],
      ["", "12.5.2026", "", "19.5.2026", ""],
      ["Athlete", "kind", "min", "kind", "min"],
      ["Abel", "easy flat", 45, "45 easy zq", 40],
    ],
    { today: 20_600 },
  );
  expect(reading.records.map(({ kind, minutes }) => [kind, minutes])).toEqual([
    ["easy", 45],
    ["easy", 40],
  ]);
  expect(reading.notes!.map(({ cell, athlete, words }) => `${cell} ${athlete}: ${words}`)).toEqual([
    "B4 Abel: flat",
    "D4 Abel: zq",
  ]);
  expect(reading.issues.map(({ cell, code }) => `${cell} ${code}`)).toEqual([
    "D4 run-figure-beside",
  ]);
});

test.each(["easy, then tempo", "the usual", "the usual 45", "easy bike"])(
  "“%s” names no kind alone",
  (text) => {
    const { records, issues } = runs(["Run"], [text]);
    expect([records[0]!.kind, issues.map(({ code }) => code)]).toEqual([null, ["word-unknown"]]);
  },
);

test("the time of runs is how long they took where it says so, and when they began where it does not", () => {
  const read = (heads: readonly string[], ...times: readonly unknown[]) =>
    runs(heads, ...times.map((time) => [time, ""])).records.map(({ minute, minutes }) => [
      minute,
      minutes,
    ]);
  expect(read(["Time", "Effort"], "45:00", "1:10:00", "30 min", 55)).toEqual([
    [null, 45],
    [null, 70],
    [null, 30],
    [null, 55],
  ]);
  expect(read(["Time", "Effort"], "07:00", "18:30")).toEqual([
    [420, null],
    [1110, null],
  ]);
  // Words about an hour are no lengths, though a figure stands in them.
  for (const about of [
    ["before 8", "after 6"],
    ["@8", "@6"],
  ]) {
    const { records } = runs(["Time", "Effort"], ...[...about, "07:00"].map((time) => [time, ""]));
    expect(records[2]!.minute).toBe(420);
  }
  // Half of them is not most; a column of minutes beside it settles it.
  expect(read(["Time", "Effort"], "07:00", "45:00")[0]).toEqual([420, null]);
  expect(read(["Time", "Minutes"], "1:10", "2:20")[0]).toEqual([70, null]);
});

test("what the coach said of the column stands", () => {
  const cells = [
    ["Date", "Name", "Time"],
    ["2026-06-08", "Abel", "1:10"],
  ];
  const answers = { columns: [{ column: 3, field: "minute" }] };
  const { reading } = understandTable("Runs", cells, { answers } as never);
  expect(reading.records[0]!.minute).toBe(70);
});

test("four figures in a column of times are a time, and what stands in brackets behind it is not", () => {
  const starts = (...cells: readonly unknown[]) => {
    const { records, issues } = readTable("Races", [
      ["Date", "Race", "Start"],
      ...cells.map((cell, at) => [`2026-06-1${at}`, "mile", cell]),
    ]);
    return [records.map(({ startMinute }) => startMinute), issues.map(({ cell }) => cell)];
  };
  expect(starts("0930", 930, "1840 h", "18:40 (local)")).toEqual([[570, 570, 1120, 1120], []]);
  expect(starts("2460", 19.3, "early")).toEqual([
    [null, null, null],
    ["C2", "C3", "C4"],
  ]);
});
