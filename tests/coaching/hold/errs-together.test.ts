import { serialCorrelation } from "../../../src/coaching/hold/evidence/serial-correlation";
import { runInflation } from "../../../src/coaching/hold/evidence/serial-variance";
import type { AthleteSeason } from "../../../src/coaching/hold/squad-seasons";
import { betweenMeasures } from "../../../src/coaching/hold/yardsticks/between-measures";
import { squadTypicalError } from "../../../src/coaching/hold/yardsticks/squad-typical-error";
import { squadYardsticks } from "../../../src/coaching/hold/yardsticks/squad-yardsticks";
import { chance } from "../../bench/seasons/chance";

const missing = Number.NaN;

/** Squads of twenty, eighteen sessions, errors as told; `shift` from the ninth session on. */
function squad({ serial = 0, shared = 0, shift = 0, athletes = 20 }) {
  const random = chance(4242);
  return Array.from({ length: athletes }, () => {
    let last = random.normal();
    const values: [number[], number[]] = [[], []];
    for (let s = 0; s < 18; s++) {
      const fresh = random.normal();
      last = s === 0 ? last : serial * last + Math.sqrt(1 - serial ** 2) * fresh;
      const level = s >= 9 ? shift : 0;
      const other = Math.sqrt(shared) * last + Math.sqrt(1 - shared) * random.normal();
      values[0].push(level + 4 * last);
      values[1].push(level + 4 * other);
    }
    return { measures: [{ kind: "bar speed" }, { kind: "jump height" }] as const, values };
  });
}
const between = (seasons: ReturnType<typeof squad>) => betweenMeasures(seasons, () => 4);
const serialOf = (seasons: ReturnType<typeof squad>) =>
  serialCorrelation(
    seasons.map(({ values }) => values[0]),
    seasons.length,
  );

test("measures that err apart and measures that err together are told from one another", () => {
  expect(between(squad({ shared: 0 }))).toBeLessThan(0.2);
  expect(between(squad({ shared: 0.64 }))).toBeGreaterThan(0.65);
  expect(between(squad({ shared: 0.64 }))).toBeLessThan(0.85);
});

test("a fall of all athletes, half a season long, is hardly taken for errors in common", () => {
  expect(between(squad({ shared: 0, shift: -5 }))).toBeLessThan(0.25);
  expect(serialOf(squad({ shift: -5 }))).toBeLessThan(0.1);
});

test("without rows the usual correlation stands", () => {
  expect(betweenMeasures([], () => 4)).toBeCloseTo(0.43, 9);
  const alone = { measures: [{ kind: "bar speed" }] as const, values: [[1, 2, missing]] };
  expect(betweenMeasures([alone], () => 4)).toBeCloseTo(0.43, 9);
});

test("errors that resemble the last ones are seen, independent ones are not", () => {
  expect(serialOf(squad({ serial: 0.5 }))).toBeGreaterThan(0.35);
  expect(serialOf(squad({ serial: 0.5 }))).toBeLessThan(0.6);
  expect(serialOf(squad({}))).toBeLessThan(0.1);
});

test("fewer than ten athletes, or too few readings, are not asked", () => {
  expect(serialOf(squad({ serial: 0.5, athletes: 9 }))).toBe(0);
  expect(serialOf(squad({ serial: 0.5, athletes: 10 }))).toBeGreaterThan(0.2);
  expect(serialCorrelation([[1, missing, 2]], 12)).toBe(0);
  expect(serialCorrelation([[3, 3, 3]], 12)).toBe(0);
});

test("an athlete without a reading in the baseline does not make nine athletes ten", () => {
  const yardsticks = (athletes: number) =>
    squadYardsticks(
      squad({ serial: 0.5, athletes }).map(({ measures, values }, a) => ({
        measures: measures.map((measure) => ({ ...measure, earlier: [] })),
        baselineSessions: 6,
        values: a < 9 ? values : values.map((own) => own.map((v, s) => (s < 6 ? missing : v))),
      })) as unknown as AthleteSeason[],
    );
  expect(yardsticks(10).serial).toBe(0);
  expect(yardsticks(9).serial).toBe(0);
});

test("the wobble is reckoned from every reading of every baseline, and widened by what neighbours hide", () => {
  // Some athletes missed a session, one was there once and one twice.
  const baselines = squad({ serial: 0.6, athletes: 14 }).map(({ values: [speeds] }, a) =>
    speeds.slice(0, 6).map((v, s) => (s === a % 9 || (a === 3 && s > 0) || s > a ? missing : v)),
  );
  const seasons = baselines.map((baseline, a) => ({
    measures: [{ kind: "bar speed", earlier: [] }],
    baselineSessions: 6,
    values: [[...baseline, ...squad({ serial: 0.6, athletes: 14 })[a]!.values[0].slice(6)]],
  }));
  const { serial, errorOf } = squadYardsticks(seasons as unknown as AthleteSeason[]);
  expect(serial).toBeGreaterThan(0.2);
  const counts = baselines.map((own) => own.filter((v) => !Number.isNaN(v)).length);
  expect(counts).toContain(0);
  expect(counts).toContain(1);
  expect(counts).toContain(2);
  const read = counts.filter((count) => count >= 2);
  const n = read.reduce((sum, count) => sum + count, 0) / read.length;
  expect(errorOf("bar speed")).toBeCloseTo(
    squadTypicalError(baselines, 4.5) / Math.sqrt((n - runInflation(n, serial)) / (n - 1)),
    9,
  );
});
