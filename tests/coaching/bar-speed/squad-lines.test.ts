import fc from "fast-check";
import { expectedSpeed } from "../../../src/coaching/bar-speed/expected-speed";
import { type LineRow, lineFit } from "../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings } from "../../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../../src/coaching/bar-speed/load-speed-line";
import { squadLines } from "../../../src/coaching/bar-speed/squad-lines";
import { strengthEstimate } from "../../../src/coaching/bar-speed/strength-estimate";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { inventedSeason, liftingSet, sessionDay } from "../series/invented-season";

const { sets } = inventedSeason("Ilka Brandmoor", 20);
const end = sessionDay(19);
const lineOf = (rows: readonly LiftingSet[], exercise = "squat", asOf = end) =>
  squadLines({ index: squadIndex({ sets: rows }, asOf), exercise })("Ilka Brandmoor");
const prior = { speed: 1.35, sd: 0.35 };

test("every work set of the lift is used, under any of its names, and no warm-up", () => {
  const rows = [...sets, liftingSet({ day: end, kind: "warm-up", loadKg: 20, repSpeeds: [1.4] })];
  const line = lineOf(rows);
  expect(line).toMatchObject({
    ok: true,
    value: { setsUsed: 60, daysUsed: 20, lightestKg: 60, heaviestKg: 65, otherSettingSets: 0 },
  });
});

test("the invented athlete's first sets, 0.71 m/s at 60 kg, are what is expected", () => {
  const line = lineOf(sets);
  if (!line.ok) throw new Error(line.refusal.code);
  const { speed, low, high } = expectedSpeed(line.value, 60);
  expect(speed).toBeCloseTo(1.4 - 0.0115 * 60, 1);
  expect(low).toBeLessThan(0.71);
  expect(high).toBeGreaterThan(0.71);
});

test("a strength estimate needs loads that spread: 60 to 65 kg is refused, 45 to 65 not", () => {
  const narrow = lineOf(sets);
  const wide = lineOf([
    ...sets,
    ...sets
      .filter(({ set }) => set === 1)
      .map((set) => ({
        ...set,
        kind: "marker" as const,
        loadKg: 45,
        repSpeeds: [1.4 - 0.0115 * 45],
      })),
  ]);
  if (!narrow.ok || !wide.ok) throw new Error("no line");
  expect(strengthEstimate(narrow.value, 0.3)).toMatchObject({
    refusal: { code: "strength-loads-alike", facts: { lightestKg: 60, heaviestKg: 65 } },
  });
  const strength = strengthEstimate(wide.value, 0.3);
  if (!strength.ok) throw new Error(strength.refusal.code);
  const truth = (1.4 - 0.3) / 0.0115;
  expect(strength.value.low).toBeLessThan(truth);
  expect(strength.value.high).toBeGreaterThan(truth);
});

test("one day is too little for a strength estimate", () => {
  const rows = [40, 50, 60].map((loadKg, set) =>
    liftingSet({ day: end, set, loadKg, repSpeeds: [1.4 - 0.0115 * loadKg] }),
  );
  const line = lineOf(rows);
  if (!line.ok) throw new Error(line.refusal.code);
  expect(strengthEstimate(line.value, 0.3)).toMatchObject({
    refusal: { code: "strength-few-days", facts: { days: 1 } },
  });
});

test("sets with another tool than the latest are left out and counted", () => {
  const rows = sets.map((set) => (set.day < sessionDay(5) ? { ...set, tool: "old" } : set));
  expect(lineOf(rows)).toMatchObject({ value: { setsUsed: 45, otherSettingSets: 15 } });
});

test("the squad's other athletes steady the line of one with few sets", () => {
  const few = sets.filter(({ day }) => day >= sessionDay(18));
  const others = ["Tomas Reyerson", "Wren Castellow", "Runner 3"].flatMap((athlete) =>
    sets.map((set) => ({ ...set, athlete, repSpeeds: set.repSpeeds.map((v) => v! + 0.3) })),
  );
  const [alone, together] = [few, [...few, ...others]].map((rows) => {
    const line = lineOf(rows);
    if (!line.ok) throw new Error(line.refusal.code);
    return line.value;
  });
  // Theirs cross zero load at 1.7 m/s, not at the usual 1.35.
  expect(together!.intercept).toBeGreaterThan(alone!.intercept + 0.05);
});

test.each([
  ["an athlete without rows", [] as LiftingSet[], "squat", "athlete-not-in-sets"],
  ["another lift", sets, "hip thrust", "no-speed-sets"],
  ["an empty bar of no mass", [liftingSet({ day: end, loadKg: 0 })], "squat", "no-load-on-bar"],
])("%s is refused", (_, rows, exercise, code) => {
  expect(lineOf(rows, exercise)).toMatchObject({ ok: false, refusal: { code } });
  const { refusal } = lineOf(rows, exercise) as { refusal: { facts: object } };
  // Who has no rows at all is told by name, the others by the lift asked for.
  expect(refusal.facts).toMatchObject(
    rows.length === 0 ? { athlete: "Ilka Brandmoor" } : { exercise },
  );
});

test("speed that rises with load is refused", () => {
  const rows = [20, 40, 60, 80].flatMap((loadKg, i) =>
    [0, 1].map((set) =>
      liftingSet({ day: sessionDay(i), set, loadKg, repSpeeds: [1.35 + 0.01 * loadKg] }),
    ),
  );
  expect(lineOf(rows)).toMatchObject({ refusal: { code: "line-not-falling" } });
});

test("doubling every load halves the slope and leaves intercept and speeds", () => {
  const loads = fc.array(fc.integer({ min: 40, max: 90 }), { minLength: 3, maxLength: 12 });
  fc.assert(
    fc.property(loads, (kg) => {
      const rows: LineRow[] = kg.map((loadKg, i) => ({
        day: i >> 1,
        loadKg,
        speed: 1.3 - 0.01 * loadKg + 0.01 * (i % 3),
      }));
      const a = lineFit(rows, 10, prior, usualLineSettings)!;
      const twice = rows.map((row) => ({ ...row, loadKg: 2 * row.loadKg }));
      const b = lineFit(twice, 10, prior, usualLineSettings)!;
      expect(b.slope).toBeCloseTo(a.slope / 2, 9);
      expect(b.intercept).toBeCloseTo(a.intercept, 9);
      expect(b.slopeVariance).toBeCloseTo(a.slopeVariance / 4, 9);
    }),
  );
});

test("without a prior and on single-set days of one age it is ordinary least squares", () => {
  const rows: LineRow[] = [
    { day: 0, loadKg: 40, speed: 0.9 },
    { day: 1, loadKg: 50, speed: 0.82 },
    { day: 2, loadKg: 70, speed: 0.6 },
  ];
  // By hand: means 53.333, 0.773333; Sxx 466.667, Sxy −4.733333.
  const line = lineFit(rows, null, null, usualLineSettings)!;
  expect(line.slope).toBeCloseTo(-4.733333 / 466.6667, 6);
  expect(line.intercept).toBeCloseTo(0.773333 + (53.33333 * 4.733333) / 466.6667, 5);
});

test("more rows never make the line less sure", () => {
  let last = Number.POSITIVE_INFINITY;
  for (let n = 1; n <= 20; n++) {
    const rows = sets
      .filter(({ day }) => day <= sessionDay(n - 1))
      .map(({ day, loadKg, repSpeeds }) => ({ day, loadKg: loadKg!, speed: repSpeeds[0]! }));
    const line = loadSpeedLine(rows, end, prior, usualLineSettings);
    if (!line.ok) throw new Error(line.refusal.code);
    expect(line.value.interceptVariance).toBeLessThanOrEqual(last);
    last = line.value.interceptVariance;
  }
});
