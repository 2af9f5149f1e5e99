import { evidenceLimit } from "../../src/coaching/hold/evidence/evidence-limit";
import { seasonLimit } from "../../src/coaching/hold/evidence/season-limit";
import { serialCorrelation } from "../../src/coaching/hold/evidence/serial-correlation";
import { visibleFall } from "../../src/coaching/hold/evidence/visible-fall";
import { usualHoldSettings } from "../../src/coaching/hold/hold-settings";
import { sessionReadings } from "../../src/coaching/hold/measures/session-readings";
import type { AthleteSeason } from "../../src/coaching/hold/squad-seasons";
import { watchedSeason } from "../../src/coaching/hold/watched-season";
import { lastSeasonLevels } from "../../src/coaching/hold/yardsticks/last-season-level";
import type { SpeedSet } from "../../src/coaching/series/speed-set";
import { agree, type Chance, onCases, same } from "./cases";
import { product, transposed } from "./matrix";

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;
const read = (values: readonly number[]) => values.filter((value) => !Number.isNaN(value));
/** Percents of a session each, some missing. */
const series = ({ real, list, coin }: Chance, sessions: number, missing = 0.15) =>
  list(sessions, () => (coin(missing) ? Number.NaN : real(-9, 9)));

test("the loss that would show: six more sessions like those so far against them, both means' variances", () => {
  onCases(71, (chance) => {
    const sessions = chance.whole(7, 16);
    const values = chance.list(chance.whole(1, 3), () => series(chance, sessions));
    const betweenMeasures = chance.real(0, 0.9);
    const season = watchedSeason(
      values.map((one) => ({ values: one, squadError: chance.real(2, 6) })),
      6,
      20,
      { ...usualHoldSettings, betweenMeasures },
    );
    const found = visibleFall(season);
    const { measures } = season;
    if (measures.length === 0) return same(found, null);
    // A session's mean of m values that err together has the variance 1ᵀR1/m².
    const variances = Array.from({ length: sessions }, (_, s) => {
      const m = measures.filter((one) => !Number.isNaN(one.values[s]!)).length;
      if (m === 0) return Number.POSITIVE_INFINITY;
      const ones = [Array<number>(m).fill(1 / m)];
      const errs = ones[0]!.map((_, i) => ones[0]!.map((__, j) => (i === j ? 1 : betweenMeasures)));
      return product(product(ones, errs), transposed(ones))[0]![0]!;
    });
    const taken = variances.filter(Number.isFinite);
    const weight = sum(taken.map((variance) => 1 / variance));
    const error = mean(measures.map(({ errors }) => errors[sessions - 1]!));
    const sixMore = (6 * weight) / taken.length;
    return agree(found!, 3.4 * error * Math.hypot(1 / Math.sqrt(weight), 1 / Math.sqrt(sixMore)));
  });
});

test("the season's limit: in logarithms, by measures, rate and sessions", () => {
  onCases(72, ({ real, whole }) => {
    const [rate, after, measures] = [real(0.02, 0.33), whole(8, 40), whole(1, 3)];
    const [factor, power] = [
      [1.95, 0.85],
      [1.85, 0.9],
      [2.15, 1.09],
    ][measures - 1]!;
    const logs =
      Math.log(factor!) +
      power! * Math.log(0.1 / rate) +
      0.4 * Math.log(after / 18) +
      Math.log(1.95 - 3.5 / after);
    agree(seasonLimit(rate, after, measures), Math.exp(logs));
    agree(evidenceLimit(rate, after), (1.95 - 3.5 / after) * 10 ** (-0.6 * Math.log10(10 * rate)));
  });
});

test("one session's error with the next: half the squared differences one and two apart, shrunk", () => {
  onCases(73, (chance) => {
    const athletes = chance.whole(8, 14);
    // Errors that carry over, so that about half the squads have some to be told.
    const carried = chance.real(0, 0.9);
    const squad = chance.list(athletes, () => {
      let last = 0;
      return chance.list(chance.whole(2, 14), () => {
        last = carried * last + chance.real(-5, 5);
        return chance.coin(0.1) ? Number.NaN : last;
      });
    });
    const found = serialCorrelation(squad, athletes);
    if (athletes < 10) return same(found, 0);
    const apart = (by: number) =>
      squad.map(read).flatMap((one) => one.slice(by).map((value, i) => (value - one[i]!) ** 2));
    const [near, far] = [apart(1), apart(2)];
    if (far.length === 0) return same(found, 0);
    const plain = mean(far) / mean(near) - 1;
    // Positive part: what a variance of 2/n would make of nothing is taken off twice over its share.
    const share = 1 - 4 / far.length / plain ** 2;
    return agree(found, plain <= 0 || share <= 0 ? 0 : Math.min(0.6, share * plain));
  });
});

test("a session's reading: the mean of its sets, each place moved to the first by its mean distance", () => {
  onCases(74, ({ real, whole, list }) => {
    const days = list(whole(1, 8), () => list(whole(1, 5), () => real(-9, 9)));
    const sets = days.flatMap((one, day) =>
      one.map((percent) => ({ day, loadKg: 50 + percent, percent })),
    ) as unknown as (SpeedSet & { readonly percent: number })[];
    const readings = sessionReadings(sets, ({ percent }) => percent);
    same(readings.length, days.length);
    days.forEach((one, day) => {
      const counted = one.flatMap((percent, place) => {
        const same = days.filter((other) => other.length > place);
        if (place > 0 && same.length < 3) return [];
        const first = mean(same.map((other) => other[0]!));
        const here = mean(same.map((other) => other[place]!));
        return [{ percent, moved: percent - here + first }];
      });
      agree(readings[day]!.percent, mean(counted.map(({ moved }) => moved)));
      agree(readings[day]!.loadKg, 50 + mean(counted.map(({ percent }) => percent)));
    });
  });
});

test("last season's level: how far levels move between athletes, from all pairs of movements", () => {
  onCases(75, (chance) => {
    const squad = chance.list(chance.whole(8, 14), () => ({
      baselineSessions: 6,
      measures: [
        {
          kind: "jump height",
          earlier: [chance.list(chance.whole(2, 9), () => chance.real(360, 380))],
        },
      ],
      values: [chance.list(9, () => (chance.coin(0.3) ? Number.NaN : chance.real(360, 380)))],
    })) as unknown as AthleteSeason[];
    const error = chance.real(2, 5);
    const found = lastSeasonLevels(squad, () => error);
    const known = squad.flatMap((season) => {
      const before = season.measures[0]!.earlier[0]!;
      const baseline = read(season.values[0]!.slice(0, 6));
      return before.length < 4 || baseline.length < 3 ? [] : [{ season, before, baseline }];
    });
    const movement = known.map(({ before, baseline }) => mean(baseline) - mean(before));
    const pairs = movement.flatMap((a, i) => movement.slice(i + 1).map((b) => (a - b) ** 2 / 2));
    const chances = known.map(
      ({ before, baseline }) => error ** 2 * (1 / before.length + 1 / baseline.length),
    );
    const spread = known.length < 10 ? 0 : Math.max(4, mean(pairs) - mean(chances));
    for (const season of squad) {
      const [level] = found.get(season)!;
      const at = known.findIndex((one) => one.season === season);
      if (known.length < 10 || at < 0) {
        same(level, null);
        continue;
      }
      const own = known[at]!;
      const variance = spread * (1 + 1 / known.length) + error ** 2 / own.before.length;
      const total = variance + error ** 2 / own.baseline.length;
      const off = Math.abs(movement[at]! - mean(movement)) / Math.sqrt(total);
      // At the very edge the last digits decide.
      if (Math.abs(off - 2) < 1e-9) continue;
      same(level === null, off > 2);
      if (!level) continue;
      agree(level.mean, mean(own.before) + mean(movement), "mean");
      agree(level.variance, variance, "variance");
    }
  });
});
