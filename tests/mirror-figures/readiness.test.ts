import { jStat } from "jstat";
import { againstLine, againstUsual } from "../../src/coaching/readiness/against-usual";
import { pooledSpread } from "../../src/coaching/readiness/past-values";
import {
  moreIsWorse,
  usualReadinessSettings as settings,
  usualSpread,
} from "../../src/coaching/readiness/readiness-settings";
import { type AthleteReadings, squadTies } from "../../src/coaching/readiness/squad-ties";
import { wordOfDay } from "../../src/coaching/readiness/word-of-day";
import { agree, onCases, same } from "./cases";
import { product, transposed } from "./matrix";

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;
const fromPairs = (values: readonly number[]) =>
  sum(values.flatMap((a) => values.map((b) => (a - b) ** 2))) / (2 * values.length);
const cut = (z: number) => Math.max(-3.5, Math.min(3.5, z));

/** A t value as a normal score, from the logarithm of its share of the whole. */
const normalScore = (t: number, freedom: number) =>
  cut(
    Math.sign(t) *
      (1 - 2 / (8 * freedom + 3)) *
      Math.sqrt(-freedom * Math.log(freedom / (freedom + t * t))),
  );

test("a reading against usual: how far it moves the mean it joins; spread from pairs", () => {
  onCases(61, ({ real, whole, list }) => {
    const past = list(whole(1, 20), () => real(30, 50));
    const today = real(25, 55);
    const [squadSd, leastSd] = [real(2, 6), real(0.5, 4)];
    const found = againstUsual(today, { past, squadSd, leastSd }, settings);
    const n = past.length;
    if (n < 4) return same(found, null);
    const freedom = 9 + n - 1;
    const variance = (7 * squadSd ** 2 + fromPairs(past)) / freedom;
    // With today among them the mean moves by one part in n + 1 of the distance.
    const distance = (n + 1) * (mean([...past, today]) - mean(past));
    const t = distance / (Math.max(leastSd, Math.sqrt(variance)) * Math.sqrt((n + 1) / n));
    return agree(found!, normalScore(t, freedom));
  });
});

test("a speed against its line: earlier distances from nothing, the line's own error added", () => {
  onCases(62, ({ real, whole, list }) => {
    const past = list(whole(1, 20), () => real(-9, 9));
    const [today, lineError, squadSd] = [real(-15, 15), real(0, 4), real(2, 6)];
    const found = againstLine(today, lineError, { past, squadSd, leastSd: 1 }, settings);
    const n = past.length;
    if (n < 4) return same(found, null);
    const freedom = 9 + n - 1;
    // Squares about nothing are those about the mean, and the mean's own.
    const squares = fromPairs(past) + n * mean(past) ** 2;
    const variance = Math.max(1, (7 * squadSd ** 2 + squares) / freedom);
    return agree(found!, normalScore(today / Math.hypot(Math.sqrt(variance), lineError), freedom));
  });
});

test("the normal score is the quantile that the t value has (jStat's distributions), to a two-hundredth", () => {
  onCases(63, ({ real, whole, list }) => {
    const past = list(whole(4, 20), () => real(30, 50));
    const today = real(30, 50);
    const found = againstUsual(today, { past, squadSd: 4, leastSd: 1 }, settings)!;
    const freedom = 9 + past.length - 1;
    const sd = Math.sqrt((7 * 16 + fromPairs(past)) / freedom);
    const t = (today - mean(past)) / (sd * Math.sqrt(1 + 1 / past.length));
    const exact = cut(jStat.normal.inv(jStat.studentt.cdf(t, freedom), 0, 1));
    if (Math.abs(found - exact) > 0.005) throw new Error(`${found}, exactly ${exact}`);
  });
});

test("a day's size: the weighed sum over its SD, as quadratic forms of the whole correlation", () => {
  const names = ["sleep", "sleep quality", "soreness", "fatigue", "stress", "mood"] as const;
  onCases(64, ({ real, coin, list }) => {
    const z = () => (coin(0.25) ? null : real(-3, 3));
    const [speed, jump, items] = [z(), z(), list(names.length, z)];
    const tied = {
      ...settings,
      betweenItems: real(0, 0.9),
      speedWithJump: real(0, 0.9),
      withDiary: real(0, 0.4),
    };
    const found = wordOfDay(
      { speed, jump, items: Object.fromEntries(names.map((name, at) => [name, items[at]!])) },
      tied,
    );
    const felt = items.filter((one) => one !== null);
    const alike = felt.map((_, i) => felt.map((__, j) => (i === j ? 1 : tied.betweenItems)));
    const ones = [felt.map(() => 1)];
    const width = felt.length < 2 ? 0 : product(product(ones, alike), transposed(ones))[0]![0]!;
    const diary = felt.length < 2 ? null : sum(felt) / Math.sqrt(width);
    // The share of the sum's variance that the items have in common (Spearman–Brown).
    const common = felt.length ** 2 * tied.betweenItems;
    const all = [
      { z: speed, weight: 0.75 },
      { z: jump, weight: 0.65 },
      { z: diary, weight: width === 0 ? 0 : common / width },
    ];
    const ties = [
      [1, tied.speedWithJump, tied.withDiary],
      [tied.speedWithJump, 1, tied.withDiary],
      [tied.withDiary, tied.withDiary, 1],
    ];
    const weights = [all.map((one) => (one.z === null ? 0 : one.weight))];
    const variance = product(product(weights, ties), transposed(weights))[0]![0]!;
    same(
      found.size === null,
      all.every((one) => one.z === null),
    );
    if (diary === null || found.diary === null) same(found.diary, diary);
    else agree(found.diary, diary, "diary");
    if (found.size === null || variance === 0) return;
    agree(
      found.size,
      sum(all.map((one, i) => (one.z ?? 0) * weights[0]![i]!)) / Math.sqrt(variance),
    );
    const below = [-1.959964, -1.281552, 1.281552].filter((limit) => found.size! > limit).length;
    same(found.word, ["well below usual", "below usual", "as usual", "above usual"][below]);
  });
});

test("the squad's spread between days: squares of all pairs within athletes, a default worth ten", () => {
  onCases(65, ({ real, whole, list }) => {
    const usual = real(0.5, 5);
    const squad = list(whole(0, 6), () => list(whole(0, 8), () => real(20, 40)));
    const known = squad.filter((values) => values.length > 1);
    const squares = 10 * usual ** 2 + sum(known.map(fromPairs));
    const freedom = 10 + sum(known.map((values) => values.length - 1));
    agree(pooledSpread(squad, usual) ** 2, squares / freedom);
  });
});

test("how parts of a day go together: products as a quarter of squares of sum and difference", () => {
  onCases(66, ({ real, whole, list, coin }) => {
    const days = whole(1, 12);
    const readings = (spread: number) =>
      list(days, (day) => ({ day, value: real(-3, 3) * spread })).filter(() => coin(0.8));
    const squad: AthleteReadings[] = list(whole(1, 4), () => ({
      speed: readings(4.5),
      jump: readings(4),
      items: new Map([
        ["sleep", readings(0.9)],
        ["soreness", readings(0.7)],
      ]),
    }));
    const found = squadTies(squad, settings);
    const apart = (one: readonly { day: number; value: number }[], unit: number) => {
      const level = mean(one.map(({ value }) => value));
      return new Map(one.map(({ day, value }) => [day, cut((value - level) / unit)]));
    };
    const tie = (assumed: number, pairs: readonly (readonly (readonly [number, number])[])[]) => {
      const both = pairs.flat();
      const squares = (place: 0 | 1) => sum(both.map((pair) => pair[place] ** 2));
      const power = squares(0) * squares(1);
      if (!(power > 0)) return assumed;
      const products = sum(both.map(([a, b]) => ((a + b) ** 2 - (a - b) ** 2) / 4));
      const freedom = sum(pairs.map((one) => Math.max(0, one.length - 1)));
      const drawn = assumed + (freedom / (40 + freedom)) * (products / Math.sqrt(power) - assumed);
      return Math.max(0, Math.min(0.9, drawn));
    };
    const shared = (one: ReadonlyMap<number, number>, other: ReadonlyMap<number, number>) =>
      list(days, (day) => day)
        .filter((day) => one.has(day) && other.has(day))
        .map((day) => [one.get(day)!, other.get(day)!] as const);
    const laid = squad.map(({ speed, jump, items }) => {
      const [sleep, sore] = (["sleep", "soreness"] as const).map((item) =>
        apart(items.get(item)!, (moreIsWorse.has(item) ? -1 : 1) * usualSpread[item].sd),
      ) as [Map<number, number>, Map<number, number>];
      const felt = new Map(
        list(days, (day) => day)
          .filter((day) => sleep.has(day) && sore.has(day))
          .map((day) => [day, (sleep.get(day)! + sore.get(day)!) / 2]),
      );
      return { speed: apart(speed, 4.5), jump: apart(jump, 4), sleep, sore, felt };
    });
    agree(
      found.betweenItems,
      tie(
        0.35,
        laid.map(({ sleep, sore }) => shared(sleep, sore)),
      ),
      "items",
    );
    agree(
      found.speedWithJump,
      tie(
        0.4,
        laid.map(({ speed, jump }) => shared(speed, jump)),
      ),
      "jump",
    );
    agree(
      found.withDiary,
      tie(
        0.2,
        laid.flatMap(({ speed, jump, felt }) => [shared(speed, felt), shared(jump, felt)]),
      ),
      "diary",
    );
  });
});
