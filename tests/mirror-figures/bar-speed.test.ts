import { jStat } from "jstat";
import { expectedSpeed } from "../../src/coaching/bar-speed/expected-speed";
import { lineFit } from "../../src/coaching/bar-speed/line-fit";
import { lineFitWithDrift } from "../../src/coaching/bar-speed/line-fit-with-drift";
import { usualLineSettings } from "../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../src/coaching/bar-speed/load-speed-line";
import { sessionPattern } from "../../src/coaching/bar-speed/set-to-set";
import { squadZeroLoad, sureLines } from "../../src/coaching/bar-speed/squad-zero-load";
import { strengthEstimate } from "../../src/coaching/bar-speed/strength-estimate";
import { squadHabitSpread, usualRange } from "../../src/coaching/bar-speed/usual-range";
import { velocityLoss } from "../../src/coaching/bar-speed/velocity-loss";
import { speedSetReader } from "../../src/coaching/series/speed-set";
import { liftingSet } from "../coaching/series/invented-season";
import { figureOf } from "../published/figure-of";
import { agree, type Chance, onCases, same } from "./cases";
import { leastSquares, root } from "./matrix";

/** Student t of a 90 % interval at twelve degrees of freedom: the general-purpose library's own. */
const nineInTen = jStat.studentt.inv(0.95, 12);

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

test("velocity loss: one less the last repetition as a share of the first in order of speed", () => {
  onCases(11, ({ whole, real, list }) => {
    const speeds = list(whole(2, 10), () => real(0.1, 2));
    const [fastest] = [...speeds].sort((a, b) => b - a);
    agree(figureOf(velocityLoss(speeds)), 1 - speeds.at(-1)! / fastest!);
  });
});

test("set to set: the ratio of mean speeds over the repetitions both sets have", () => {
  const read = speedSetReader();
  onCases(12, ({ whole, real, list, coin }) => {
    const reps = list(whole(2, 5), () =>
      list(whole(2, 6), (i) => (i > 0 && coin(0.1) ? null : real(0.3, 0.9))),
    );
    const sets = reps.map((repSpeeds, i) => read(liftingSet({ day: 1, set: i + 1, repSpeeds }))!);
    const pattern = sessionPattern(sets)!;
    reps.slice(1).forEach((later, i) => {
      const both = later.flatMap((b, r) => {
        const a = reps[0]![r];
        return a == null || b === null ? [] : [[a, b] as const];
      });
      const mean = (side: 0 | 1) => sum(both.map((pair) => pair[side])) / both.length;
      const change = (mean(1) - mean(0)) / mean(0);
      agree(pattern.later[i]!.logChange, 100 * Math.log1p(change), `set ${i + 2}`);
    });
  });
});

test("usual range: the share every set stays inside with, all of them nine in ten; spread from pairs", () => {
  onCases(13, ({ whole, real, list }) => {
    const past = list(whole(4, 12), () => real(-9, 4));
    const spread = real(1, 5);
    const sets = whole(1, 12);
    const n = past.length;
    const found = usualRange(past, spread, sets)!;
    const freedom = 9 + n - 1;
    const pairs = sum(past.flatMap((a) => past.map((b) => (a - b) ** 2))) / (2 * n);
    const sd = Math.sqrt((9 * spread ** 2 + pairs) / freedom);
    const t = jStat.studentt.inv(0.5 + Math.exp(Math.log(0.9) / sets) / 2, freedom);
    agree(found.middle, sum(past) / n, "middle");
    agree(found.high, sum(past) / n + t * sd * Math.sqrt((n + 1) / n), "high");
    agree(found.low, sum(past) / n - t * sd * Math.sqrt((n + 1) / n), "low");
  });
});

test("a squad's habit: squares of all pairs within athlete and set, steadied by 3 % worth ten", () => {
  onCases(14, ({ whole, real, list }) => {
    const squad = list(whole(0, 4), () =>
      list(whole(1, 5), (day) => ({
        day,
        workSets: 3,
        notCompared: 0,
        later: list(whole(0, 3), (i) => ({ set: i + 2, logChange: real(-9, 4) })),
      })),
    );
    let squares = 90;
    let freedom = 10;
    for (const sessions of squad) {
      for (const set of [2, 3, 4]) {
        const values = sessions.flatMap(({ later }) =>
          later.filter((one) => one.set === set).map((one) => one.logChange),
        );
        if (values.length === 0) continue;
        squares +=
          sum(values.flatMap((a) => values.map((b) => (a - b) ** 2))) / (2 * values.length);
        freedom += values.length - 1;
      }
    }
    agree(squadHabitSpread(squad), Math.sqrt(squares / freedom));
  });
});

/** Sets of a few days with falling speeds, in order of day. */
function someRows({ whole, real, list, coin }: Chance, leastDays = 2) {
  return list(whole(leastDays, leastDays + 3), (d) => ({
    day: 100 + 6 * d + whole(0, 4),
    base: real(-0.06, 0.06),
  }))
    .flatMap(({ day, base }) =>
      list(whole(1, 4), () => {
        const loadKg = whole(8, 40) * 2.5;
        return { day, loadKg, speed: 1.4 - 0.008 * loadKg + base + real(-0.03, 0.03) };
      }),
    )
    .map((row) => (coin(0.2) ? { ...row, leads: "work" as const } : row));
}

/** The whole covariance of the sets' errors: a day's sets share the day's, the old weigh less. */
function covarianceOf(rows: ReturnType<typeof someRows>, now: number | null) {
  const { daySd, setSd, halfLifeDays } = usualLineSettings;
  return rows.map((a, i) =>
    rows.map((b, j) => {
      if (a.day !== b.day) return 0;
      const older = now === null ? 1 : Math.exp((Math.LN2 * (now - a.day)) / halfLifeDays);
      return older * (daySd ** 2 + (i === j ? setSd ** 2 : 0));
    }),
  );
}

/** The same line by generalised least squares, the prior one more observation at zero load. */
function mirroredLine(
  rows: ReturnType<typeof someRows>,
  now: number | null,
  prior: { speed: number; sd: number } | null,
) {
  const errors = covarianceOf(rows, now);
  const x = rows.map(({ loadKg }) => [1, loadKg]);
  const y = rows.map(({ speed }) => speed);
  if (prior) {
    for (const row of errors) row.push(0);
    errors.push([...rows.map(() => 0), prior.sd ** 2]);
    x.push([1, 0]);
    y.push(prior.speed);
  }
  return leastSquares(x, y, errors);
}

test("load–speed line: generalised least squares with the whole covariance, with and without prior", () => {
  onCases(15, (chance) => {
    const rows = someRows(chance);
    const now = chance.coin(0.7) ? 140 : null;
    const prior = chance.coin(0.7)
      ? { speed: chance.real(1.1, 1.7), sd: chance.real(0.1, 0.4) }
      : null;
    const fit = lineFit(rows, now, prior, usualLineSettings);
    const loads = new Set(rows.map(({ loadKg }) => loadKg));
    if (loads.size === 1 && !prior) return same(fit, null);
    if (!fit) throw new Error("no line");
    const { coefficients, covariance } = mirroredLine(rows, now, prior);
    agree(fit.intercept, coefficients[0]!, "intercept");
    agree(fit.slope, coefficients[1]!, "slope");
    agree(fit.interceptVariance, covariance[0]![0]!, "variance");
    agree(1000 * fit.covariance, 1000 * covariance[0]![1]!, "covariance");
    agree(1e6 * fit.slopeVariance, 1e6 * covariance[1]![1]!, "slope variance");
  });
});

test("line with a drift: least squares with time as a column, drifts of a usual size as a row of none", () => {
  onCases(18, (chance) => {
    const rows = someRows(chance, 5);
    const driftSd = chance.coin(0.5) ? chance.real(0.0001, 0.002) : null;
    const fit = lineFitWithDrift(rows, usualLineSettings, driftSd ?? undefined)!;
    const errors = covarianceOf(rows, null);
    // The season's middle is where a level alone, without load, would stand in time.
    const days = rows.map(({ day }) => day);
    const middle = leastSquares(
      rows.map(() => [1]),
      days,
      errors,
    ).coefficients[0]!;
    const x = rows.map(({ day, loadKg }) => [1, day - middle, loadKg]);
    const y = rows.map(({ speed }) => speed);
    if (driftSd !== null) {
      for (const row of errors) row.push(0);
      errors.push([...rows.map(() => 0), driftSd ** 2]);
      x.push([0, 1, 0]);
      y.push(0);
    }
    const { coefficients, covariance } = leastSquares(x, y, errors);
    agree(fit.intercept, coefficients[0]!, "intercept");
    agree(fit.slope, coefficients[2]!, "slope");
    agree(fit.interceptVariance, covariance[0]![0]!, "variance");
    agree(1000 * fit.covariance, 1000 * covariance[0]![2]!, "covariance");
    agree(1e6 * fit.slopeVariance, 1e6 * covariance[2]![2]!, "slope variance");
  });
});

test("pooled speed at zero load: heterogeneity from all pairs of athletes, mean by least squares", () => {
  const { zeroLoadSpeed, zeroLoadSpread, zeroLoadDoubt } = usualLineSettings;
  onCases(16, ({ whole, real, list }) => {
    const lines = list(whole(3, 8), () => ({
      intercept: real(1.1, 1.7),
      slope: -0.008,
      interceptVariance: real(0.001, 0.1),
      covariance: 0,
      slopeVariance: 1e-6,
    }));
    const weights = lines.map(({ interceptVariance }) => 1 / interceptVariance);
    let apart = 0;
    let information = 0;
    lines.forEach((a, i) => {
      lines.forEach((b, j) => {
        const both = weights[i]! * weights[j]!;
        apart += (both * (a.intercept - b.intercept) ** 2) / 2;
        if (i !== j) information += both;
      });
    });
    const total = sum(weights);
    const others = lines.length - 1;
    const between = Math.max(0, (apart / total - others) / (information / total));
    // The usual spread counts like three athletes.
    const spread = (3 * zeroLoadSpread ** 2 + others * between) / (3 + others);
    const errors = lines.map((a, i) =>
      lines.map((_, j) => (i === j ? a.interceptVariance + spread : 0)),
    );
    for (const row of errors) row.push(0);
    errors.push([...lines.map(() => 0), zeroLoadDoubt ** 2]);
    const { coefficients, covariance } = leastSquares(
      errors.map(() => [1]),
      [...lines.map(({ intercept }) => intercept), zeroLoadSpeed],
      errors,
    );
    const prior = squadZeroLoad(lines, usualLineSettings, sureLines);
    agree(prior.speed, coefficients[0]!, "speed");
    agree(prior.sd ** 2, spread + covariance[0]![0]!, "spread");
  });
});

test("expected speed: the prediction of one more set, its variance as a quadratic form", () => {
  onCases(17, (chance) => {
    const rows = someRows(chance);
    const prior = { speed: 1.35, sd: 0.2 };
    const made = loadSpeedLine(rows, 140, prior, usualLineSettings);
    const { coefficients, covariance } = mirroredLine(rows, 140, prior);
    if (!made.ok) return same(coefficients[1]! >= 0, true, made.refusal.code);
    const load = chance.real(20, 110);
    const { daySd, setSd } = usualLineSettings;
    const variance =
      covariance[0]![0]! +
      load * (covariance[0]![1]! + covariance[1]![0]!) +
      load ** 2 * covariance[1]![1]! +
      daySd ** 2 +
      setSd ** 2;
    const found = expectedSpeed(made.value, load);
    agree(found.speed, coefficients[0]! + load * coefficients[1]!, "speed");
    agree(found.high - found.low, 2 * nineInTen * Math.sqrt(variance), "interval");
    agree((found.high + found.low) / 2, found.speed, "middle");
    const squares = sum(
      rows.map(({ loadKg, speed }) => (speed - coefficients[0]! - coefficients[1]! * loadKg) ** 2),
    );
    const worth = 10 + Math.max(0, rows.length - 2);
    agree(made.value.residualSd, Math.sqrt((10 * (daySd ** 2 + setSd ** 2) + squares) / worth));
  });
});

test("strength: limits are where the line, so many of its own errors off, meets the minimum speed", () => {
  let given = 0;
  onCases(18, (chance) => {
    const rows = someRows(chance);
    const prior = { speed: 1.4, sd: 0.1 };
    const made = loadSpeedLine(rows, 140, prior, usualLineSettings);
    if (!made.ok) return;
    const strength = strengthEstimate(made.value, 0.3);
    if (!strength.ok) return;
    given++;
    const { coefficients, covariance } = mirroredLine(rows, 140, prior);
    const above = (load: number) => coefficients[0]! + load * coefficients[1]! - 0.3;
    const error = (load: number) =>
      Math.sqrt(
        covariance[0]![0]! + 2 * load * covariance[0]![1]! + load ** 2 * covariance[1]![1]!,
      );
    const t = nineInTen;
    const { kg, low, high } = strength.value;
    agree(kg, root(above, 1, 2000), "kg");
    agree(
      low,
      root((load) => above(load) - t * error(load), 1, kg),
      "low",
    );
    agree(
      high,
      root((load) => above(load) + t * error(load), kg, 3 * kg),
      "high",
    );
  });
  expect(given).toBeGreaterThan(10);
});
