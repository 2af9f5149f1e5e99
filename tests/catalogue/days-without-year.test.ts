import { catalogue } from "../../src/catalogue";

const call = (name: string, ...args: unknown[]) =>
  catalogue.find((entry) => entry.name === name)!.compute(args) as unknown[][];

/** One tab of jumps, a test day a column, dates as "26 May" without a year. */
const jumps = (...days: readonly string[]): unknown[][] => [
  ["1) box jump", ...days],
  ["Ilka Brandmoor", ...days.map((_, at) => 42 + (at % 2))],
  ["Tomas Reyerson", ...days.map((_, at) => 50 - (at % 2))],
];
const titled = (rows: readonly unknown[][], title: string) => [[title], ...rows];
const weeks = [
  "7 Apr",
  "14 Apr",
  "21 Apr",
  "28 Apr",
  "5 May",
  "12 May",
  "19 May",
  "26 May",
  "2 June",
  "9 June",
  "16 June",
  "23 June",
];

test.each(["2026-05-20", "2026-06-28"])(
  "as of %s a formula reads days without a year as the same days with one",
  (asOf) => {
    const dated = jumps(...weeks.map((day) => `${day} 2026`));
    const trend = (rows: unknown[][]) =>
      call("JUMP_TREND", [["Ilka Brandmoor"]], titled(rows, "Jump tests"), "box jump", asOf);
    const given = trend(jumps(...weeks));
    expect(given).toEqual(trend(dated));
    expect(String(given[0]![0])).not.toMatch(/No row/);
  },
);
