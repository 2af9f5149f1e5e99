import { changeFactor } from "../../src/coaching/hold/evidence/change-factor";
import { changeSince } from "../../src/coaching/hold/evidence/change-since";
import { onsetRange } from "../../src/coaching/hold/evidence/onset-range";
import { runInflation, runsApartVariance } from "../../src/coaching/hold/evidence/serial-variance";
import { stepEvidence } from "../../src/coaching/hold/evidence/step-evidence";
import { usualHoldSettings } from "../../src/coaching/hold/hold-settings";
import { type WatchedMeasure, watchedSeason } from "../../src/coaching/hold/watched-season";
import { betweenMeasures } from "../../src/coaching/hold/yardsticks/between-measures";
import { ownTypicalErrors } from "../../src/coaching/hold/yardsticks/own-typical-error";
import { squadTypicalError } from "../../src/coaching/hold/yardsticks/squad-typical-error";
import { agree, type Chance, onCases, same } from "./cases";
import { product, solved } from "./matrix";

const settings = usualHoldSettings;
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;
const read = (values: readonly number[]) => values.filter((value) => !Number.isNaN(value));
const normal = (x: number, about: number, variance: number) =>
  Math.exp(-((x - about) ** 2) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);

/** Percents of a session each, some missing. */
const series = ({ real, list, coin }: Chance, sessions: number, missing = 0.15) =>
  list(sessions, () => (coin(missing) ? Number.NaN : real(-9, 9)));

test("typical errors: own from successive pairs of all rows so far, the squad's from all pairs", () => {
  onCases(41, (chance) => {
    const values = series(chance, chance.whole(4, 16));
    const squadError = chance.real(2, 6);
    const serial = chance.coin() ? 0 : 0.3;
    const errors = ownTypicalErrors(values, squadError, { ...settings, serial });
    values.forEach((_, s) => {
      const rows = read(values.slice(0, s + 1));
      const steps = rows.slice(1).map((value, i) => value - rows[i]!);
      const freedom = (2 * steps.length) / 3;
      const own = steps.length === 0 ? 0 : mean(steps.map((step) => step ** 2)) / 2 / (1 - serial);
      // A weighted mean of the two variances.
      const variance = (9 * squadError ** 2 + freedom * own) / (9 + freedom);
      agree(errors[s]!, Math.max(0.5, Math.sqrt(variance)), `session ${s + 1}`);
    });

    const baselines = chance.list(chance.whole(0, 5), () => series(chance, chance.whole(1, 6)));
    let squares = 10 * 4.5 ** 2;
    let freedom = 10;
    for (const rows of baselines.map(read)) {
      if (rows.length === 0) continue;
      squares += sum(rows.flatMap((a) => rows.map((b) => (a - b) ** 2))) / (2 * rows.length);
      freedom += rows.length - 1;
    }
    agree(squadTypicalError(baselines, 4.5), Math.sqrt(squares / freedom), "squad");
  });
});

test("Bayes factor of a change: ratios of normal densities", () => {
  const { changeSd, stepShare, stepSize, stepSd, varianceShare } = settings;
  onCases(42, ({ real }) => {
    const change = real(-2, 2);
    const nominal = real(0.2, 1.5);
    const v = varianceShare * nominal;
    const none = normal(change, 0, v);
    const any = normal(change, 0, v + changeSd ** 2) / none;
    const step = normal(Math.abs(change), stepSize, v + stepSd ** 2) / none / 2;
    const whole = stepShare * step + (1 - stepShare) * any;
    agree(changeFactor(change, nominal, settings) / whole, 1, "both kinds");
    agree(changeFactor(change, nominal, { ...settings, stepShare: 0 }) / any, 1, "any size");
  });
});

test("runs of readings that err alike: variances by adding up the whole covariance", () => {
  onCases(43, ({ whole, real }) => {
    const [a, b] = [whole(1, 9), whole(1, 9)];
    const serial = real(0.05, 0.6);
    const covariance = (from: number, rows: number, to: number, columns: number) => {
      let all = 0;
      for (let i = 0; i < rows; i++) {
        for (let j = 0; j < columns; j++) all += serial ** Math.abs(from + i - to - j);
      }
      return all / rows / columns;
    };
    agree(runInflation(a, serial), a * covariance(0, a, 0, a), "one run");
    // Weighing as many as there are readings, the difference is that of two plain means.
    const apart = covariance(0, a, 0, a) + covariance(a, b, a, b) - 2 * covariance(0, a, a, b);
    agree(runsApartVariance([a, b], [a, b], serial), apart, "two runs");
  });
});

test("evidence for a lasting change: every onset reckoned from its rows anew", () => {
  onCases(44, (chance) => {
    const sessions = chance.whole(7, 13);
    const count = chance.whole(1, 3);
    const given = chance.list(count, () => ({
      values: series(chance, sessions),
      squadError: chance.real(3, 6),
      ...(chance.coin(0.3)
        ? { loadError: chance.list(sessions, () => chance.real(-0.6, 0.6)) }
        : {}),
    }));
    const serial = chance.coin(0.3) ? 0.25 : 0;
    const byError = chance.coin(0.8);
    const season = watchedSeason(given, 4, 12, { ...settings, serial, byError });
    const last = sessions - 1;
    const { low, high } = stepEvidence(season, last);
    const found = new Map<string, number>();
    const { measures } = season;
    const streams =
      measures.length > 1
        ? [
            { of: measures, share: settings.togetherShare },
            ...measures.map((one) => ({
              of: [one],
              share: (1 - settings.togetherShare) / measures.length,
            })),
          ]
        : measures.map((one) => ({ of: [one], share: 1 }));
    for (const { of, share } of streams) {
      for (const [onset, side, factor] of mirroredStream(of, last, share, 12, serial, byError)) {
        const key = `${side} ${onset}`;
        found.set(key, (found.get(key) ?? 0) + factor);
      }
    }
    for (let s = 0; s <= last; s++) {
      agree(low.byOnset[s]!, found.get(`low ${s}`) ?? 0, `fall from session ${s + 1}`);
      agree(high.byOnset[s]!, found.get(`high ${s}`) ?? 0, `rise from session ${s + 1}`);
    }
    const total = (side: string) =>
      sum([...found].filter(([key]) => key.startsWith(side)).map(([, factor]) => factor));
    agree(low.total, total("low"), "falls");
    agree(high.total, total("high"), "rises");
  });
});

/** Onset, side and evidence of one stream. */
function mirroredStream(
  measures: readonly WatchedMeasure[],
  last: number,
  share: number,
  planned: number,
  serial: number,
  byError: boolean,
): (readonly [number, "low" | "high", number])[] {
  const r = settings.betweenShare * settings.betweenMeasures;
  const sessions = Array.from({ length: last + 1 }, (_, s) => {
    const present = measures.filter(({ values }) => !Number.isNaN(values[s]!));
    if (present.length === 0) return null;
    const correlations = present.map((_, i) => present.map((__, j) => (i === j ? 1 : r)));
    const inverse = present.map(({ errors }) => [1 / errors[last]!]);
    // Best shares solve R·a = 1/error; none below 0.
    const shares = byError
      ? solved(correlations, inverse).map(([one]) => Math.max(0, one! * (1 - r)))
      : present.map(() => 1);
    const all = sum(shares);
    const spread = product(
      product([shares], correlations),
      shares.map((one) => [one]),
    )[0]![0]!;
    const scores = present.map(({ values, baselineMean, errors }) =>
      Math.max(
        -settings.clip,
        Math.min(settings.clip, (values[s]! - baselineMean) / errors[last]!),
      ),
    );
    const loads = present.map(({ loadError, errors }) =>
      loadError ? loadError[s]! / errors[last]! : 0,
    );
    const average = (of: readonly number[]) => sum(of.map((one, i) => one * shares[i]!)) / all;
    return { s, weight: all ** 2 / spread, score: average(scores), load: average(loads) };
  }).filter((one) => one !== null);
  type Session = (typeof sessions)[number];
  const weigh = (of: readonly Session[]) => sum(of.map(({ weight }) => weight));
  const over = (of: readonly Session[], value: (one: Session) => number) =>
    sum(of.map((one) => one.weight * value(one))) / weigh(of);
  const first = Math.min(...measures.map(({ baselineSessions }) => baselineSessions));
  const baseline = over(
    sessions.filter(({ s }) => s < first),
    ({ score }) => score,
  );
  const terms: (readonly [number, "low" | "high", number])[] = [];
  for (let onset = first; onset <= last; onset++) {
    const before = sessions.filter(({ s }) => s < onset);
    const after = sessions.filter(({ s }) => s >= onset);
    if (after.length < settings.leastRows) continue;
    const now = over(after, ({ score }) => score);
    const change = now - over(before, ({ score }) => score);
    if ((now - baseline) / change < settings.againstBaseline) continue;
    const gap = over(after, ({ load }) => load) - over(before, ({ load }) => load);
    const chance =
      serial > 0
        ? runsApartVariance([after.length, before.length], [weigh(after), weigh(before)], serial)
        : 1 / weigh(after) + 1 / weigh(before);
    const factor = changeFactor(change, chance + gap ** 2, settings);
    terms.push([onset, change < 0 ? "low" : "high", (2 * share * factor) / planned]);
  }
  return terms;
}

test("change since an onset, its error, and the range of onsets", () => {
  onCases(45, (chance) => {
    const sessions = chance.whole(8, 14);
    const values = series(chance, sessions);
    const season = watchedSeason([{ values, squadError: 4 }], 5, 12);
    const onset = chance.whole(5, sessions - 1);
    const watched = season.measures[0];
    if (watched) {
      const from = Math.max(onset, watched.baselineSessions);
      const after = read(values.slice(from));
      const before = read(values.slice(0, watched.baselineSessions));
      const found = changeSince(season, 0, onset);
      same(found.rows, after.length, "rows");
      if (after.length > 0) {
        agree(found.change!, mean(after) - mean(before), "change");
        const part = 1 / after.length + 1 / before.length;
        agree(found.error! ** 2, watched.errors[sessions - 1]! ** 2 * part, "error");
      }
    }
    const weights = chance.list(sessions, () => (chance.coin(0.3) ? 0 : chance.real(0, 5) ** 2));
    const total = sum(weights);
    if (total === 0) return same(onsetRange(Float64Array.from(weights)), null);
    // The tenth and the ninetieth hundredth of the evidence, found place by place.
    const place = (part: number) =>
      weights.findIndex((_, t) => sum(weights.slice(0, t + 1)) >= part * total);
    same(onsetRange(Float64Array.from(weights)), [place(0.1), place(0.9)], "onsets");
  });
});

test("measures of one session: products of differences as a quarter of squares of sum and difference", () => {
  onCases(46, (chance) => {
    const kinds = ["bar speed", "jump height", "reactive strength"] as const;
    const error = { "bar speed": 4, "jump height": 3, "reactive strength": 5, "contact time": 5 };
    const seasons = chance.list(chance.whole(1, 4), () => {
      const sessions = chance.whole(2, 9);
      return {
        measures: kinds.map((kind) => ({ kind })),
        values: kinds.map(() => series(chance, sessions, 0.25)),
      };
    });
    let products = 0;
    let squares = 0;
    for (const { values } of seasons) {
      for (const [a, b] of [
        [0, 1],
        [0, 2],
        [1, 2],
      ] as const) {
        const both = values[a]!.flatMap((x, s) => {
          const y = values[b]![s]!;
          return Number.isNaN(x + y) ? [] : [[x / error[kinds[a]], y / error[kinds[b]]] as const];
        });
        both.slice(1).forEach(([x, y], i) => {
          const [dx, dy] = [x - both[i]![0], y - both[i]![1]];
          products += ((dx + dy) ** 2 - (dx - dy) ** 2) / 4;
          squares += ((dx + dy) ** 2 + (dx - dy) ** 2) / 4;
        });
      }
    }
    // Sixty pairs at the usual correlation of 0.43, two differences each.
    const together = (120 * 0.43 + products) / (120 + squares);
    agree(
      betweenMeasures(seasons, (kind) => error[kind]),
      Math.min(0.9, Math.max(0, together)),
    );
  });
});
