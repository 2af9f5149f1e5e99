import { jStat } from "jstat";
import { linearRegression } from "simple-statistics";
import { itemDays } from "../../../src/coaching/diary/item-days";
import { comparedDays, slopeOf } from "../../../src/coaching/diary/link";
import { findings } from "../../../src/coaching/diary/what-differed";
import { item, nights, percents, performance, tuesday, twoValues } from "./tuesdays";

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
    oddIs: "slow",
    difference: null,
    low: null,
    high: null,
    adjustedP: null,
    itemsLookedAt: 0,
  });
});

test("an interval on both sides of zero names no link; days told are those that have the value", () => {
  const days = itemDays(twoValues, item(nights));
  const whose = { athlete: "a", athletes: 1, writtenAfter: 0 };
  const of = (stream: number) => {
    const slope = slopeOf(days.compared, days.compared.streams[stream]!);
    return findings([{ days, slope, p: 0.001, stream }], whose)[0]!;
  };
  const [together, jump] = [of(0), of(2)];
  expect(together).toMatchObject({ word: "goes together", days: 14 });
  expect(together.low!).toBeGreaterThan(0);
  expect(jump).toMatchObject({ word: "no link seen", days: 7, oddDays: 0, otherDays: 7 });
  expect(jump.low! * jump.high!).toBeLessThan(0);
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

test("a weekday of just four days has its own mean", () => {
  const day = (at: number) => (at < 8 ? tuesday(at) : tuesday(at) + 2);
  const { strata } = comparedDays(
    performance(percents.slice(0, 12), day),
    item(nights.slice(0, 12), day),
  );
  // With two days of another weekday beside them the four stand apart still.
  const other = (at: number) => (at < 12 ? day(at) : tuesday(at) + 4);
  const three = comparedDays(performance(percents, other), item(nights, other)).strata;
  expect([strata, three].map((all) => all.map((places) => places.length))).toEqual([
    [8, 4],
    [8, 4, 2],
  ]);
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
