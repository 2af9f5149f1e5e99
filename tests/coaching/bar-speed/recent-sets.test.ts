import { expectedSpeed } from "../../../src/coaching/bar-speed/expected-speed";
import type { LineFit, LineRow } from "../../../src/coaching/bar-speed/line-fit";
import { lineFit } from "../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings as usual } from "../../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../../src/coaching/bar-speed/load-speed-line";
import { squadLift } from "../../../src/coaching/bar-speed/squad-lift";
import { squadSetToSet } from "../../../src/coaching/bar-speed/squad-set-to-set";
import {
  allLines,
  squadZeroLoad,
  sureLines,
} from "../../../src/coaching/bar-speed/squad-zero-load";
import { strengthEstimate } from "../../../src/coaching/bar-speed/strength-estimate";
import { velocityLoss } from "../../../src/coaching/bar-speed/velocity-loss";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { refuse } from "../../../src/outcome";
import { firstDay, liftingSet } from "../series/invented-season";

const now = firstDay;
const prior = { speed: 1.35, sd: 0.35 };
/** A first set so many days ago, on the line 1.4 − 0.0115·load and a little off it. */
const first = (daysAgo: number, loadKg: number, off = 0): LineRow => ({
  day: now - daysAgo,
  loadKg,
  speed: 1.4 - 0.0115 * loadKg + off,
  leads: "work",
});
const lineOf = (rows: readonly LineRow[], squad?: Parameters<typeof loadSpeedLine>[4]) => {
  const line = loadSpeedLine(rows, now, prior, usual, squad);
  if (!line.ok) throw new Error(line.refusal.code);
  return line.value;
};

test("sets count as recent while they keep a tenth of their weight: 139 days at a half-life of 42", () => {
  // 42·log2(10) = 139.5.
  const line = lineOf([first(200, 40), first(140, 50), first(139, 60), first(1, 70)]);
  expect(line).toMatchObject({
    daysUsed: 4,
    lightestKg: 40,
    heaviestKg: 70,
    recent: { days: 2, lightestKg: 60, heaviestKg: 70 },
  });
});

test("who has no recent first set is given the squad's as it is; who has some steadies it", () => {
  const squad = { offset: 0.02, sd: 0.05, freedom: 30 };
  expect(lineOf([first(200, 40), first(190, 60)], squad).firstSet).toEqual(squad);
  const own = lineOf([first(9, 60, 0.02), first(2, 70, 0.02)], squad).firstSet;
  expect(own.offset).toBe(squad.offset);
  // Two sets near the squad's own place make the spread smaller, not larger.
  expect(own.sd).toBeLessThan(squad.sd);
});

test("an athlete's own first sets are held against the squad's place for them", () => {
  const squad = { offset: 0.02, sd: 0.03, freedom: 9 };
  const rows = [first(20, 50, 0.05), first(14, 60, -0.01), first(9, 70, 0.03), first(2, 80, 0.02)];
  const { intercept, slope, firstSet } = lineOf(rows, squad);
  const squares = rows.reduce(
    (sum, { speed, loadKg }) => sum + (speed - intercept - slope * loadKg - squad.offset) ** 2,
    0,
  );
  // The squad's spread counts nine, each of the four sets one.
  expect(firstSet.sd).toBeCloseTo(Math.sqrt((9 * squad.sd ** 2 + squares) / 13), 12);
  expect(firstSet.freedom).toBe(13);
});

test("why there is no line is told with the sets that were read", () => {
  const asked = (rows: readonly LineRow[]) => loadSpeedLine(rows, now, prior, usual);
  expect(asked([])).toEqual(refuse("no-speed-sets"));
  expect(asked([first(3, 0), first(1, 0)])).toEqual(refuse("no-load-on-bar", { sets: 2 }));
  const rising = [40, 60, 80].map((loadKg, at) => ({
    ...first(9 - at, loadKg),
    speed: loadKg / 50,
  }));
  expect(asked(rising)).toEqual(refuse("line-not-falling", { sets: 3 }));
});

const season = (off: number, from = 1) =>
  [0, 7, 14, 21, 28].map((ago, at) => first(from + 28 - ago, 50 + 5 * at, off));

test("rows of last year say nothing about the squad now", () => {
  const two = [season(0), season(0.05)];
  const old = season(0.3, 150);
  expect(squadLift([...two, old], now, usual).prior).toEqual(squadLift(two, now, usual).prior);
  // Two athletes say nothing about a squad: the usual speed at zero load, and how far it may be out.
  expect(squadLift(two, now, usual).prior).toEqual({
    speed: usual.zeroLoadSpeed,
    sd: usual.zeroLoadDoubt,
  });
  const three = squadLift([...two, season(0.1)], now, usual).prior;
  expect(three.speed).toBeGreaterThan(1.4);
  expect(three.sd).toBeLessThan(usual.zeroLoadDoubt);
});

const line = (intercept: number, slope: number, interceptVariance = 0.01): LineFit => ({
  intercept,
  slope,
  interceptVariance,
  covariance: 0,
  slopeVariance: 1e-6,
});

test("lines that stand alone leave out the rising and the unsure; a season's lines take the rising in", () => {
  const falling = [1.3, 1.4, 1.5].map((speed) => line(speed, -0.01));
  const rising = line(0.3, 0.01);
  // A standard error of 0.5 m/s is past the 0.4 of a sure line.
  const unsure = line(3, -0.01, 0.25);
  const alone = squadZeroLoad(falling, usual, sureLines);
  expect(squadZeroLoad([...falling, rising, unsure, null], usual, sureLines)).toEqual(alone);
  expect(squadZeroLoad([...falling, rising], usual, allLines).speed).toBeLessThan(
    squadZeroLoad(falling, usual, allLines).speed,
  );
  // Three athletes at 1.4 on the mean, the usual 1.35 steadying them a little.
  expect(alone.speed).toBeGreaterThan(1.35);
  expect(alone.speed).toBeLessThan(1.4);
});

test("how far a season's lines may differ is weighed by how well the squad says it", () => {
  // Intercepts 1.2, 1.4 and 1.6 of standard error 0.1: heterogeneity 8, information 300 − 3·100²/300 = 200,
  // between athletes (8 − 2)/200 = 0.03. Its own variance 2·2/200² = 0.0001 against the doubt's 0.0004.
  const spread = 0.8 * 0.03 + 0.2 * usual.zeroLoadSpread ** 2;
  const pooled = squadZeroLoad(
    [1.2, 1.4, 1.6].map((speed) => line(speed, -0.01)),
    usual,
    allLines,
  );
  const [own, before] = [3 / (0.01 + spread), 1 / usual.zeroLoadDoubt ** 2];
  expect(pooled.speed).toBeCloseTo((own * 1.4 + before * usual.zeroLoadSpeed) / (own + before), 12);
  expect(pooled.sd).toBeCloseTo(Math.sqrt(spread + 1 / (own + before)), 12);
});

test("loads all alike give no line without a prior, whatever the load and however often", () => {
  for (const loadKg of [42.5, 61.3, 72.7, 103.1]) {
    for (const sets of [3, 7, 40]) {
      const rows = Array.from({ length: sets }, (_, at) => ({
        day: now - (at >> 1) * 3,
        loadKg,
        speed: 0.7 + 0.01 * (at % 3),
      }));
      expect(lineFit(rows, now, null, usual)).toBeNull();
    }
  }
});

test("a first set is expected on the line and as much over it as first sets are", () => {
  const own = lineOf([first(9, 60), first(2, 70)], { offset: 0.02, sd: 0.05, freedom: 30 });
  const { speed, low, high } = expectedSpeed(own, 65);
  expect(speed).toBeCloseTo(own.intercept + own.slope * 65 + 0.02, 12);
  expect((low + high) / 2).toBeCloseTo(speed, 12);
});

test("marker sets lead by themselves: how they lie around the lines is read from them alone", () => {
  const rows = season(0).flatMap((set, at) => [
    set,
    { ...set, loadKg: 40, speed: 1.4 - 0.0115 * 40 + 0.02 * (at % 2), leads: "marker" as const },
  ]);
  const { marker, work } = squadLift([rows], now, usual).leads;
  expect(marker.sd).not.toBe(work.sd);
  expect(marker.offset).not.toBe(work.offset);
  expect(marker.offset).toBeGreaterThan(0);
});

test("loads that spread by just a tenth of the heaviest are enough to estimate strength", () => {
  const code = (lightest: number) => {
    const rows = Array.from({ length: 20 }, (_, at) => first(at + 1, at % 2 ? 100 : lightest));
    const strength = strengthEstimate(lineOf(rows), 0.3);
    return strength.ok ? "" : strength.refusal.code;
  };
  expect(code(91)).toBe("strength-loads-alike");
  expect(code(90)).not.toBe("strength-loads-alike");
});

test("loads too near one another for their wobble leave no limits of strength", () => {
  const flat = [first(8, 60), { ...first(1, 70), speed: 0.7 }, { ...first(1, 60), speed: 0.69 }];
  expect(strengthEstimate(lineOf(flat), 0.3)).toMatchObject({
    ok: false,
    refusal: { code: "strength-too-wide", facts: { sets: 3 } },
  });
});

test("a repetition that cannot be is named by its number, an athlete without sets by name", () => {
  expect(velocityLoss([0.7, 0.65, 0])).toEqual(
    refuse("loss-speed-impossible", { rep: 3, speed: 0 }),
  );
  const index = squadIndex({ sets: [liftingSet({ day: now })] }, now);
  expect(squadSetToSet({ index, exercise: "back squat" })("Wren Castellow")).toEqual(
    refuse("athlete-not-in-sets", { athlete: "Wren Castellow" }),
  );
});
