import type { HoldWord, SeasonHold } from "../../../../src/coaching/hold/season-hold";
import { mayShare, sharedDates } from "../../../../src/coaching/hold/shared-change/shared-dates";

/** A season's word, its likeliest onset, how many days that may be off, and the value that moved. */
const one = (word: HoldWord, sinceDay: number | null = null, off = 4, kind = "bar speed") =>
  ({
    word,
    sinceDay,
    sinceFrom: sinceDay === null ? null : sinceDay - off,
    sinceTo: sinceDay === null ? null : sinceDay + off,
    value: { kind },
    measures: [],
    sessions: [],
  }) as unknown as SeasonHold;
const squad = (word: HoldWord, ...days: readonly number[]) => days.map((day) => one(word, day));
const calm = (athletes: number) => Array.from({ length: athletes }, () => one("holding"));
const told = (holds: readonly SeasonHold[]) =>
  sharedDates(holds).map(({ facts: { word, day, athletes } }) => [word, day, athletes]);

test("three athletes change from one date that the ranges of all three hold", () => {
  expect(told(squad("slipping", 104, 100, 98))).toEqual([["slipping", 100, 3]]);
  expect(told(squad("slipping", 105, 100, 98))).toEqual([]);
  expect(told(squad("slipping", 100, 104))).toEqual([]);
});

test("who comes once a week meets a new tool late, and says so by a wider range", () => {
  expect(told([...squad("slipping", 100, 102), one("slipping", 109, 4)])).toEqual([]);
  expect(told([...squad("slipping", 100, 102), one("slipping", 109, 9)])).toEqual([
    ["slipping", 100, 3],
  ]);
});

test("falls and rises are dated apart, and so are bars and jumps, which no one tool reads", () => {
  expect(told([...squad("slipping", 100, 101), ...squad("rising", 100, 101)])).toEqual([]);
  const both = [...squad("rising", 90, 91, 92), ...squad("slipping", 100, 101, 102)];
  expect(told(both)).toEqual([
    ["slipping", 100, 3],
    ["rising", 90, 3],
  ]);
  const jumps = (["jump height", "reactive strength", "contact time"] as const).map((kind) =>
    one("slipping", 100, 4, kind),
  );
  expect(told([...squad("slipping", 100, 100), jumps[0]!])).toEqual([]);
  expect(sharedDates(jumps).map(({ facts }) => facts.reading)).toEqual(["jumps"]);
});

test("a date is one from which somebody changes that way, none of who changes the other way", () => {
  const three = squad("slipping", 105, 97, 97);
  expect(told([...three, one("rising", 101)])).toEqual([]);
  expect(told([...three, one("slipping", 101)])).toEqual([["slipping", 101, 4]]);
});

test("a third of those followed must change together; who has too few rows is not followed", () => {
  const three = squad("slipping", 100, 100, 100);
  const waiting = Array.from({ length: 9 }, () => one("too few rows"));
  expect(sharedDates([...three, ...calm(6), ...waiting])).toEqual([
    {
      code: "one-date",
      facts: {
        word: "slipping",
        followed: 9,
        day: 100,
        athletes: 3,
        reading: "bar speed",
        how: "at once",
      },
    },
  ]);
  expect(told([...three, ...calm(7)])).toEqual([]);
});

test("of two dates the one of more athletes is told, of equals the first", () => {
  expect(told(squad("slipping", 100, 100, 100, 150, 150, 150))).toEqual([["slipping", 100, 3]]);
  expect(told(squad("slipping", 100, 100, 100, 150, 150, 150, 150))).toEqual([
    ["slipping", 150, 4],
  ]);
});

test("a date is told of those whose own change may have begun on it, in what its tool reads", () => {
  const facts = { word: "slipping", day: 100, reading: "bar speed" };
  expect([96, 104].map((day) => mayShare(one("slipping", day), facts))).toEqual([true, true]);
  expect([95, 105].map((day) => mayShare(one("slipping", day), facts))).toEqual([false, false]);
  expect(mayShare(one("rising", 100), facts)).toBe(false);
  expect(mayShare(one("slipping", 100, 4, "jump height"), facts)).toBe(false);
});
