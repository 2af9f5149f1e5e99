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
  ["Tempo 30", "race pace"],
  ["e", "easy"],
])("“%s” names its kind: %s", (text, kind) => {
  const { records, issues } = runs(["Run"], [text]);
  expect([records[0]!.kind, issues]).toEqual([kind, []]);
});

test.each(["easy, then tempo", "the usual", "10k e"])("“%s” names no kind alone", (text) => {
  const { records, issues } = runs(["Run"], [text]);
  expect([records[0]!.kind, issues.map(({ code }) => code)]).toEqual([null, ["word-unknown"]]);
});

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
