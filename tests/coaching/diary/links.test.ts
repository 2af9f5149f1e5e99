import { jStat } from "jstat";
import { linearRegression } from "simple-statistics";
import { itemDays } from "../../../src/coaching/diary/item-days";
import { comparedDays, slopeOf } from "../../../src/coaching/diary/link";
import type { PerformanceDay } from "../../../src/coaching/diary/performance-day";
import { closestStream } from "../../../src/coaching/diary/permutation";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { findings } from "../../../src/coaching/diary/what-differed";
import { gymDay } from "./constructed";

/** Tuesdays only, so that all days are of one weekday. */
const tuesday = (week: number) => gymDay(2 * week);
const item = (values: readonly number[], day = tuesday) =>
  ({
    key: "sleep",
    kind: "amount",
    step: 1,
    unit: "h",
    values: new Map(values.map((value, at) => [day(at), value])),
  }) as const;
const performance = (percents: readonly number[], day = tuesday): PerformanceDay[] =>
  percents.map((percent, at) => ({ day: day(at), percent, size: percent / 3, values: [] }));
const nights = [7, 6, 8, 7, 5, 7, 9, 7, 6, 8, 7, 7, 5, 8];
const percents = [1, -2, 3, 0, -4, 1, 2, 0, -3, 2, 1, -1, -5, 4];

test("the slope is that of a straight line through what lies beyond the level, less the weekday's mean", () => {
  const compared = comparedDays(performance(percents), item(nights));
  expect(compared.days).toHaveLength(nights.length);
  expect(compared.item).toEqual(nights);
  const [stream] = compared.streams;
  const slope = slopeOf(compared, stream!)!;
  const pairs = compared.itemBeyond.map((x, at) => [x, stream!.beyond[at]!]);
  const { m, b } = linearRegression(pairs);
  expect(slope.perUnit).toBeCloseTo(m, 9);
  expect(b).toBeCloseTo(0, 9);
  // One weekday's mean and the slope are taken from the days.
  expect(slope.freedom).toBe(nights.length - 2);
  const rest = pairs.reduce((sum, [x, y]) => sum + (y! - m * x!) ** 2, 0);
  const squares = pairs.reduce((sum, [x]) => sum + x! ** 2, 0);
  expect(slope.error).toBeCloseTo(Math.sqrt(rest / (nights.length - 2) / squares), 9);
});

test("a finding's interval is Student's at 95 %, by the step a coach thinks in", () => {
  const days = itemDays(performance(percents), { ...item(nights), step: 2 });
  const slope = slopeOf(days.compared, days.compared.streams[0]!)!;
  const of = (p: number | null) =>
    findings([{ days, slope: p === null ? null : slope, p, stream: 0 }], {
      athlete: "a",
      athletes: 1,
      writtenAfter: 3,
    })[0]!;
  const half = 2 * slope.error * jStat.studentt.inv(0.975, slope.freedom);
  const found = of(0.03);
  expect(found.difference).toBeCloseTo(2 * slope.perUnit, 12);
  expect(found.low).toBeCloseTo(2 * slope.perUnit - half, 6);
  expect(found.high).toBeCloseTo(2 * slope.perUnit + half, 6);
  expect(found).toMatchObject({ p: 0.03, adjustedP: 0.03, itemsLookedAt: 1, writtenAfter: 3 });
  expect([of(0.04), of(0.041)].map(({ word }) => word)).toEqual(["goes together", "no link seen"]);
  expect(of(null)).toMatchObject({
    word: "always the same",
    difference: null,
    low: null,
    high: null,
    adjustedP: null,
    itemsLookedAt: 0,
  });
});

test("which days are odd follows from the side: more sleep and faster is slow days after short nights", () => {
  const found = (key: string, sign: number) => {
    const days = itemDays(performance(percents.map((percent) => sign * percent)), {
      ...item(nights),
      key,
    });
    const slope = slopeOf(days.compared, days.compared.streams[0]!);
    return findings([{ days, slope, p: 0.5, stream: 0 }], {
      athlete: "a",
      athletes: 1,
      writtenAfter: 0,
    })[0]!.oddIs;
  };
  expect([found("sleep", 1), found("sleep", -1)]).toEqual(["slow", "good"]);
  expect([found("soreness", 1), found("soreness", -1)]).toEqual(["good", "slow"]);
});

test("weekdays with four days or more lose their own mean, the others one together", () => {
  // Eight Tuesdays, three Thursdays and two Saturdays.
  const day = (at: number) => (at < 8 ? tuesday(at) : at < 11 ? tuesday(at) + 2 : tuesday(at) + 4);
  const { strata, itemCentred, itemBeyond, streams } = comparedDays(
    performance(percents.slice(0, 13), day),
    item(nights.slice(0, 13), day),
  );
  expect(strata.map((places) => [...places])).toEqual([
    [0, 1, 2, 3, 4, 5, 6, 7],
    [8, 9, 10, 11, 12],
  ]);
  for (const places of strata) {
    for (const values of [itemCentred, itemBeyond, streams[0]!.beyond]) {
      expect(places.reduce((sum, at) => sum + values[at]!, 0)).toBeCloseTo(0, 9);
    }
  }
});

test("days without the item are not compared, nor days with too few around them", () => {
  const some = item(nights);
  const values = new Map([...some.values].filter(([day]) => day !== tuesday(4)));
  expect(comparedDays(performance(percents), { ...some, values }).days).not.toContain(tuesday(4));
  expect(comparedDays(performance(percents.slice(0, 3)), some)).toMatchObject({
    days: [],
    strata: [],
  });
});

const twoValues = percents.map(
  (percent, at): PerformanceDay => ({
    day: tuesday(at),
    percent,
    size: percent / 3,
    values: [
      { kind: "bar speed", of: "back squat", percent: 2 * percent, size: percent },
      ...(at % 2 === 0
        ? [{ kind: "jump height", of: "box jump", percent: 0.1 * at, size: 0.1 } as const]
        : []),
    ],
  }),
);

test("several values of the days are read together and each alone, missing ones left out", () => {
  const compared = comparedDays(twoValues, item(nights));
  expect(compared.streams.map(({ value }) => value)).toEqual([
    null,
    { kind: "bar speed", of: "back squat" },
    { kind: "jump height", of: "box jump" },
  ]);
  const [together, speed, jump] = compared.streams;
  expect(jump!.sizes.map((size) => size !== null)).toEqual(percents.map((_, at) => at % 2 === 0));
  jump!.sizes.forEach((size, at) => {
    if (size === null) expect(jump!.beyond[at]).toBe(0);
  });
  expect(jump!.beyond.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 9);
  // Seven jumps, one weekday, one slope; days without a jump are neither in the slope nor its error.
  const own = compared.itemBeyond.flatMap((x, at) =>
    jump!.sizes[at] === null ? [] : [[x, jump!.beyond[at]!] as const],
  );
  const squares = own.reduce((sum, [x]) => sum + x * x, 0);
  const perUnit = own.reduce((sum, [x, y]) => sum + x * y, 0) / squares;
  const rest = own.reduce((sum, [x, y]) => sum + (y - perUnit * x) ** 2, 0);
  expect(slopeOf(compared, jump!)).toEqual({
    perUnit: expect.closeTo(perUnit, 12),
    error: expect.closeTo(Math.sqrt(rest / 5 / squares), 12),
    freedom: 5,
  });
  expect(slopeOf(compared, speed!)!.perUnit).toBeCloseTo(
    2 * slopeOf(compared, together!)!.perUnit,
    9,
  );
});

test("an item that never differs on the days of a value has no slope, nor have two days", () => {
  const flat = comparedDays(performance(percents), item(nights.map(() => 7)));
  expect(slopeOf(flat, flat.streams[0]!)).toBeNull();
  const sizes = percents.map((_, at) => (at < 2 ? 1 : null));
  const compared = comparedDays(performance(percents), item(nights));
  expect(slopeOf(compared, { ...compared.streams[0]!, sizes })).toBeNull();
  const three = percents.map((_, at) => (at < 3 ? 1 : null));
  expect(slopeOf(compared, { ...compared.streams[0]!, sizes: three })!.freedom).toBe(1);
});

test("the way of reading that goes most closely is told, and a perfect link is one order in 2,000", () => {
  const own = comparedDays(twoValues, item(nights));
  const [together, , jump] = own.streams;
  const exact = { ...together!, beyond: own.itemCentred };
  expect(closestStream([{ ...own, streams: [jump!, exact] }], seededChance("a"))).toEqual({
    stream: 1,
    p: 1 / 2000,
  });
  expect(closestStream([{ ...own, streams: [exact, jump!] }], seededChance("a"))).toMatchObject({
    stream: 0,
  });
  // Going the other way is as close.
  const against = { ...exact, beyond: exact.beyond.map((one) => -one) };
  expect(closestStream([{ ...own, streams: [against] }], seededChance("a")).p).toBe(1 / 2000);
});

test("dealing stops at the thirtieth as close: where every order is, after thirty", () => {
  const own = comparedDays(performance(percents), item(nights));
  const nothing = { ...own.streams[0]!, beyond: percents.map(() => 0) };
  expect(closestStream([{ ...own, streams: [nothing] }], seededChance("a")).p).toBe(1);
});

test("values change places within their weekday and athlete only", () => {
  // Each athlete's item is one of two values, each stratum all of one: no order differs.
  const own = comparedDays(performance(percents), item(nights));
  const half = own.days.length / 2;
  const parted = {
    ...own,
    itemCentred: own.days.map((_, at) => (at < half ? 1 : -1)),
    streams: [{ ...own.streams[0]!, beyond: own.days.map((_, at) => (at < half ? 1 : -1)) }],
    strata: [
      own.days.map((_, at) => at).filter((at) => at < half),
      own.days.map((_, at) => at).filter((at) => at >= half),
    ],
  };
  expect(closestStream([parted], seededChance("a")).p).toBe(1);
  const one = { ...parted, strata: [own.days.map((_, at) => at)] };
  expect(closestStream([one], seededChance("a")).p).toBeLessThan(0.01);
});

test("the same text deals alike, another otherwise, all between 0 and 1 and evenly", () => {
  const draws = (text: string) => {
    const chance = seededChance(text);
    return Array.from({ length: 2000 }, chance);
  };
  expect(draws("Priya 20600")).toEqual(draws("Priya 20600"));
  expect(draws("Priya 20600")[0]).not.toBe(draws("Priya 20601")[0]);
  const all = draws("evenly");
  expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...all)).toBeLessThan(1);
  // Each tenth holds 200 of 2,000, give or take four binomial SDs of 13.4.
  for (let tenth = 0; tenth < 10; tenth++) {
    const count = all.filter((one) => Math.floor(10 * one) === tenth).length;
    expect(Math.abs(count - 200)).toBeLessThan(54);
  }
});
