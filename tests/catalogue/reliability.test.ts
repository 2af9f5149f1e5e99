import fc from "fast-check";
import { catalogue } from "../../src/catalogue";

const call = (name: string, ...args: unknown[]) =>
  catalogue.find((entry) => entry.name === name)!.compute(args) as unknown[][];

test("headings and blank rows are passed over, and figures may be written", () => {
  const plain = [
    [31.2, 31.9],
    [36.4, 35.8],
    [28.9, 29.6],
  ];
  const asKept = [
    ["Trial 1", "Trial 2"],
    ["31,2", 31.9],
    ["", ""],
    [36.4, "35.8"],
    ...plain.slice(2),
  ];
  expect(call("RELIABILITY", asKept)).toEqual(call("RELIABILITY", plain));
  expect(call("AGREEMENT", [["Old"], [1], [2], [4]], [["New"], [1], [3], [4]])).toEqual(
    call("AGREEMENT", [[1], [2], [4]], [[1], [3], [4]]),
  );
});

test.each([
  [
    "a trial missing",
    [
      [31, 32],
      [36, ""],
    ],
    "Trial 2 in row 2 is blank: fill it in, or leave its row",
  ],
  [
    "a name among the trials",
    [
      ["Ana", 32],
      [36, 35],
    ],
    "Trial 1 in row 1 is not a number (Ana)",
  ],
  [
    "a figure below zero as text at the top",
    [
      ["-1", "x"],
      [1, 2],
    ],
    "Trial 2 in row 1 is not a number",
  ],
  ["one athlete", [[31, 32]], "Two athletes with two trials each are the least"],
  ["one trial", [[31], [32]], "(rows: 2, columns: 1)"],
  ["a range with nothing in it", [["", ""]], "trials is blank"],
  [
    "all alike",
    [
      [3, 3],
      [3, 3],
    ],
    "All 4 values are the same",
  ],
  [
    "a copied column",
    [
      [30.1, 30.1],
      [28.4, 28.4],
    ],
    "Every athlete changed by the same from trial to trial",
  ],
  [
    "the same gain for all",
    [
      [30.1, 31.2],
      [28.4, 29.5],
    ],
    "Every athlete changed by the same from trial to trial",
  ],
])("RELIABILITY refuses %s", (_, trials, sentence) => {
  expect(() => call("RELIABILITY", trials)).toThrow(sentence);
});

test.each([
  ["columns of unequal length", [[1], [2]], [[1]], "second has 1 rows and first has 2"],
  ["two columns at once", [[1, 2]], [[1]], "first is more than one column wide"],
  ["a reading without its fellow", [[1], [2]], [[1], [""]], "second, row 2, is blank: fill it in"],
  ["a word among the readings", [[1], ["far"]], [[1], [2]], "first, row 2, is not a number (far)"],
  ["one pair", [[1]], [[2]], "At least 2 values are needed (found: 1)"],
  ["no second device", [[1]], undefined, "second, row 1, is blank"],
])("AGREEMENT refuses %s", (_, first, second, sentence) => {
  expect(() => call("AGREEMENT", first, second)).toThrow(sentence);
});

test("a change from zero or below has no percent, and the other figures stay", () => {
  const rows = call("RELIABILITY", [
    [-1.5, 0.5],
    [0.2, 1.1],
    [2, 1.4],
  ]);
  expect(rows.find(([name]) => name === "typical error (%)")![1]).toBe("–: a value is not above 0");
  expect(rows.find(([name]) => name === "typical error")![1]).toBeGreaterThan(0);
});

const reading = fc.integer({ min: 200, max: 600 }).map((tenths) => tenths / 10);
const trials = fc
  .integer({ min: 2, max: 5 })
  .chain((k) =>
    fc.array(fc.array(reading, { minLength: k, maxLength: k }), { minLength: 2, maxLength: 9 }),
  );

test("every figure is a number between its limits, whatever was read, or there is a sentence", () => {
  fc.assert(
    fc.property(trials, (rows) => {
      let found: unknown[][];
      try {
        found = call("RELIABILITY", rows);
      } catch (error) {
        expect((error as Error).message).toMatch(/^(All|Every athlete)/);
        return;
      }
      for (const [name, value, low, high] of found) {
        const isNone = /^(intraclass|of the mean)/.test(name as string) && value === "–";
        expect([name, isNone || Number.isFinite(value)]).toEqual([name, true]);
        if (low === "" || low === "–") continue;
        expect(low).toBeLessThanOrEqual(value as number);
        expect(high).toBeGreaterThanOrEqual(value as number);
      }
    }),
  );
});

test("athletes alike on average have no correlation without end, and one below 0 no limits", () => {
  const rows = new Map(
    call("RELIABILITY", [
      [1, 2],
      [2, 1],
    ]).map(([name, ...figures]) => [name, figures]),
  );
  expect(rows.get("intraclass correlation, trials a sample: ICC(2,1)")).toEqual(["–", "–", "–"]);
  expect(rows.get("intraclass correlation, trials fixed: ICC(3,1)")).toEqual([-1, -1, -1]);
  expect(rows.get("of the mean of all trials: ICC(3,k)")![0]).toBe("–");
});

test("another unit scales the errors and leaves the correlations and the percent", () => {
  fc.assert(
    fc.property(trials, (rows) => {
      const inMm = rows.map((row) => row.map((value) => 10 * value));
      let cm: unknown[][];
      try {
        cm = call("RELIABILITY", rows);
      } catch {
        return;
      }
      const mm = call("RELIABILITY", inMm);
      cm.forEach(([name, value], at) => {
        const scale = /^(mean change|typical error$|smallest)/.test(name as string) ? 10 : 1;
        const inCm = typeof value === "number" ? scale * value : value;
        const off = typeof inCm === "number" ? Math.abs((mm[at]![1] as number) - inCm) : 0;
        expect(off).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(Number(inCm)) || 0));
        if (typeof inCm !== "number") expect(mm[at]![1]).toBe(inCm);
      });
    }),
  );
});
