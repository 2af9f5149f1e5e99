import { catalogue } from "../../src/catalogue";
import { exampleJumps, exampleSets } from "../../src/catalogue/example-rows";

const call = (name: string, ...args: unknown[]) =>
  catalogue.find((entry) => entry.name === name)!.compute(args) as unknown[][];
const asOf = "2026-05-21";
const head = ["date", "athlete", "exercise", "set", "load kg", "mean speed m/s"];
const wren = (set: number, loadKg: number, speed: unknown, day = "2026-05-19") => [
  day,
  "Wren Castellow",
  "back squat",
  set,
  loadKg,
  speed,
];
const oneSet = [...exampleSets, wren(1, 60, 0.7)];

test.each([
  ["SET_TO_SET", []],
  ["LOAD_SPEED_LINE", []],
  ["EXPECTED_SPEED", [60]],
  ["STRENGTH_ESTIMATE", []],
])("%s of a lift the athlete has not done says so, alone and in a column", (name, loads) => {
  const rest = [...loads, oneSet, "bench press", asOf];
  const sentence = "Too few rows: no bench press set with a speed and a load up to that day.";
  expect(() => call(name, "Wren Castellow", ...rest)).toThrow(sentence);
  const [row] = call(name, [["Wren Castellow"], ["Ilka Brandmoor"]], ...rest);
  expect([row![0], new Set(row!.slice(1))]).toEqual([sentence, new Set(["–"])]);
});

test("one set is no session to compare, and one day no estimate of strength", () => {
  expect(() => call("SET_TO_SET", "Wren Castellow", oneSet, "back squat", asOf)).toThrow(
    "Only one work set with a speed on 19 May: two are needed to compare.",
  );
  expect(() => call("STRENGTH_ESTIMATE", "Wren Castellow", oneSet, "back squat", asOf)).toThrow(
    "Too few rows: 1 recent day of back squat; two at different loads are needed.",
  );
});

test("a year after the last set no speed is expected: the interval would reach down to no speed at all", () => {
  const ask = (day: string) =>
    call("EXPECTED_SPEED", "Wren Castellow", 60, oneSet, "back squat", day);
  const [[speed, low]] = ask("2026-06-19") as [[number, number]];
  expect(low).toBeGreaterThan(0);
  expect(low).toBeLessThan(speed);
  expect(() => ask("2027-05-19")).toThrow(
    /^The rows leave the speed at 60 kg too wide \(0 to [\d.]+ m\/s\): recent sets near that load would narrow it\.$/,
  );
});

test("loads that do not tell the slope from the wobble leave the strength too wide", () => {
  // Two days at 60 and 70 kg fix the line's slope by two points alone.
  const days = [wren(1, 60, 0.7, "2026-05-12"), wren(1, 70, 0.69), wren(2, 60, 0.66)];
  expect(() =>
    call("STRENGTH_ESTIMATE", "Wren Castellow", [head, ...days], "back squat", asOf),
  ).toThrow(/^The rows leave the strength estimate too wide/);
});

test("a second set at another load is not compared: the third speaks for the last", () => {
  const session = [head, wren(1, 60, 0.7), wren(2, 65, 0.6), wren(3, 60, 0.665)];
  const [row] = call("SET_TO_SET", "Wren Castellow", session, "back squat", asOf);
  // 0.665 / 0.70 = 0.95; nothing is usual before there are earlier sessions.
  expect(row![0]).toBe("–");
  expect(row![1]).toBeCloseTo(-0.05, 9);
  expect(row!.slice(2, 4)).toEqual(["–", "–"]);
  expect(row![4]).toMatch(/^too few rows .*1 set at another load or setting not compared$/);
});

test("a session whose sets all differ in load cannot be compared", () => {
  const session = [head, wren(1, 60, 0.7), wren(2, 65, 0.6)];
  expect(() => call("SET_TO_SET", "Wren Castellow", session, "back squat", asOf)).toThrow(
    "No later set on 19 May has the first set's load and setting, so nothing can be compared.",
  );
});

test("a test the athlete has not done is named as the coach wrote it", () => {
  expect(() => call("JUMP_TREND", "Ilka Brandmoor", exampleJumps, "drop jump", asOf)).toThrow(
    "No jump of Ilka Brandmoor in a test called “drop jump”",
  );
});

test("a trend shows the baseline as soon as there is one, and counts down to its word", () => {
  const trend = (days: number) =>
    call("JUMP_TREND", "Tomas Reyerson", exampleJumps.slice(0, 1 + days), "box jump", asOf)[0]!;
  // His first heights: 44.4, 43.6, 44, 44.8, 44, 43.6, then 44 and 42.4 cm. Six make the baseline,
  // two after it a word: eight in all.
  expect(trend(1)).toEqual([
    44.4,
    "–",
    "–",
    "–",
    ...Array(2).fill("too few rows (7 more test days)"),
  ]);
  expect(trend(6)[0]).toBeCloseTo(264.4 / 6, 9);
  expect(trend(6).slice(1, 5)).toEqual(["–", "–", "–", "too few rows (2 more test days)"]);
  expect(trend(7)[4]).toBe("too few rows (1 more test day)");
  expect(trend(7)[2]).toBeCloseTo(44 / (264.4 / 6) - 1, 9);
  expect(trend(8)[1]).toBeCloseTo((44 + 42.4) / 2, 9);
  expect(trend(8)[4]).toBe("holding");
});

test("a baseline the coach dated where no test was taken leaves nothing to compare with", () => {
  const table = [
    ["Athlete", "Baseline from", "Baseline to"],
    ["Tomas Reyerson", "2026-04-10", "2026-04-13"],
  ];
  const [row] = call("JUMP_TREND", table, exampleJumps, "box jump", asOf);
  expect([row![0], row![2], row![3]]).toEqual(["–", "–", "–"]);
  expect(row![4]).toMatch(/^too few rows/);
});

test("a season names its value once the baseline is there, and its change once a session follows", () => {
  const season = (rows: readonly unknown[]) =>
    call("SEASON_HOLD", "Tomas Reyerson", rows, "", asOf)[0]!.slice(0, 4);
  // Two work sets a session: six sessions of baseline are twelve rows.
  expect(season(exampleSets.slice(0, 13))).toEqual([
    "too few rows (2 more back squat sessions)",
    "–",
    "back squat speed",
    "–",
  ]);
  const [word, , value, change] = season(exampleSets.slice(0, 15));
  expect([word, value]).toEqual(["too few rows (1 more back squat session)", "back squat speed"]);
  expect(Math.abs(Number(change))).toBeLessThan(0.02);
});

test("sets written without a speed leave the season nothing to follow, and say so", () => {
  const unmeasured = [head, wren(1, 60, ""), wren(2, 60, "")];
  const [row] = call("SEASON_HOLD", "Wren Castellow", unmeasured, "", asOf);
  const words = "too few rows (no value recorded that can be followed)";
  expect(row).toEqual([words, "–", "–", "–", words]);
});

test("a first day has no usual to be held against", () => {
  const first = (day: string) =>
    call("READINESS", "Wren Castellow", [head, wren(1, 60, 0.7, day)], "", "", asOf)[0]!;
  expect(first(asOf).slice(0, 2)).toEqual(["too few rows (4 more days of back squat speed)", "–"]);
  expect(first("2026-05-19")[0]).toBe("too few rows (no value recorded on 21 May)");
});
