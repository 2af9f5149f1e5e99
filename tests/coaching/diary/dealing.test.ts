import { comparedDays } from "../../../src/coaching/diary/link";
import { closestStream } from "../../../src/coaching/diary/permutation";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { item, nights, percents, performance, twoValues } from "./tuesdays";

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
  // How large a value's percents are says nothing of how closely it goes.
  const times = (stream: typeof exact, factor: number) => ({
    ...stream,
    beyond: stream.beyond.map((one) => factor * one),
  });
  const turns = { ...exact, beyond: exact.beyond.map((_, at) => (at % 2 === 0 ? 1 : -1)) };
  const [small, large] = [times(exact, 0.01), times(turns, 100)];
  expect(closestStream([{ ...own, streams: [large, small] }], seededChance("a"))).toMatchObject({
    stream: 1,
  });
  expect(
    closestStream(
      [{ ...own, streams: [times(exact, 100), times(turns, 0.01)] }],
      seededChance("a"),
    ),
  ).toMatchObject({ stream: 0 });
  // Of two that go alike the first.
  expect(closestStream([{ ...own, streams: [exact, exact] }], seededChance("a")).stream).toBe(0);
  // Going the other way is as close.
  const against = { ...exact, beyond: exact.beyond.map((one) => -one) };
  expect(closestStream([{ ...own, streams: [against] }], seededChance("a")).p).toBe(1 / 2000);
});

test("dealing stops at the thirtieth as close: where every order is, after thirty", () => {
  const own = comparedDays(performance(percents), item(nights));
  const nothing = { ...own.streams[0]!, beyond: percents.map(() => 0) };
  const chance = jest.fn(seededChance("a"));
  expect(closestStream([{ ...own, streams: [nothing] }], chance).p).toBe(1);
  // One draw for each day but the last, thirty times.
  expect(chance).toHaveBeenCalledTimes(30 * (percents.length - 1));
});

test("1,999 shuffles are dealt at most, and a deal that leaves each in its place changes nothing", () => {
  const own = comparedDays(performance(percents), item(nights));
  const exact = { ...own.streams[0]!, beyond: own.itemCentred };
  const chance = jest.fn(seededChance("a"));
  closestStream([{ ...own, streams: [exact] }], chance);
  expect(chance).toHaveBeenCalledTimes(1999 * (percents.length - 1));
  expect(closestStream([{ ...own, streams: [exact] }], () => 0.9999).p).toBe(1);
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
