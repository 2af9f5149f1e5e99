import { expectedSpeed, speedOnLine } from "../../../src/coaching/bar-speed/expected-speed";
import { type LineRow, lineFit } from "../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings } from "../../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../../src/coaching/bar-speed/load-speed-line";
import { squadZeroLoad } from "../../../src/coaching/bar-speed/squad-zero-load";
import { strengthEstimate } from "../../../src/coaching/bar-speed/strength-estimate";
import { studentLimit } from "../../../src/statistics/limits";
import { expectWithin, figureOf } from "../../published/figure-of";
import worked from "../worked-cases.json";

/** Our own worked cases: see the note in the file. */
/** The cases' Student t stops at the third power of its series, 1.782266; the library's is 1.782287. */
const ofWidth = 1.3e-5;
const digits = 5e-7;
type Row = { day: number; load: number; v: number };
type Line = {
  id: number;
  name: string;
  input: {
    squad: Row[][];
    athlete: number;
    now: number;
    load: number;
  };
  output: {
    pooled: { V0: number; tau: number };
    a: number;
    b: number;
    Vaa: number;
    Vab: number;
    Vbb: number;
    expected: { v: number; se: number };
    interval90: { v: number; lo: number; hi: number };
    t: number;
    strength: { estimate: number; lo: number | null; hi: number | null };
    refused: string | null;
  };
};
const lines = worked.cases.filter(({ kind }) => kind === "load-speed line") as unknown as Line[];
const rowsOf = (rows: Row[]): LineRow[] =>
  rows.map(({ day, load, v }) => ({ day, loadKg: load, speed: v }));

describe.each(lines)("worked line $id: $name", ({ input, output }) => {
  const prior = squadZeroLoad(
    input.squad.map((rows) => lineFit(rowsOf(rows), input.now, null, usualLineSettings)),
    usualLineSettings,
  );
  const rows = rowsOf(input.squad[input.athlete]!);
  const outcome = loadSpeedLine(rows, input.now, prior, usualLineSettings);
  if (!outcome.ok) throw new Error(outcome.refusal.code);
  const line = outcome.value;

  test("speed at zero load pooled over the squad", () => {
    expect(prior.speed).toBeCloseTo(output.pooled.V0, 6);
    expect(prior.sd).toBeCloseTo(output.pooled.tau, 6);
  });

  test("intercept, slope and their uncertainty", () => {
    expect(line.intercept).toBeCloseTo(output.a, 6);
    expect(line.slope).toBeCloseTo(output.b, 6);
    expect(line.interceptVariance).toBeCloseTo(output.Vaa, 6);
    expect(line.covariance).toBeCloseTo(output.Vab, 6);
    expect(line.slopeVariance).toBeCloseTo(output.Vbb, 6);
  });

  test("expected speed with its interval", () => {
    expectWithin(studentLimit(90, 12), output.t, ofWidth * output.t);
    expect(speedOnLine(line, input.load).error).toBeCloseTo(output.expected.se, 6);
    const expected = expectedSpeed(line, input.load);
    expect(expected.speed).toBeCloseTo(output.expected.v, 6);
    const width = output.interval90.hi - output.interval90.lo;
    expectWithin(expected.low, output.interval90.lo, digits + ofWidth * width);
    expectWithin(expected.high, output.interval90.hi, digits + ofWidth * width);
  });

  test("strength estimate, or why there is none", () => {
    const strength = strengthEstimate(line, 0.3);
    if (output.refused === null) {
      const { kg, low, high } = figureOf(strength);
      const { estimate, lo, hi } = output.strength;
      expect(kg).toBeCloseTo(estimate, 6);
      expectWithin(low, lo!, digits + ofWidth * (hi! - lo!));
      expectWithin(high, hi!, digits + ofWidth * (hi! - lo!));
    } else {
      expect(output.refused).toBe("loads spread less than 10 % of the heaviest");
      expect(strength).toMatchObject({ ok: false, refusal: { code: "strength-loads-alike" } });
    }
  });
});
