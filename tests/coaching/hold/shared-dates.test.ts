import type { HoldWord, SeasonHold } from "../../../src/coaching/hold/season-hold";
import { sharedDates } from "../../../src/coaching/hold/shared-dates";

const one = (word: HoldWord, sinceDay: number | null = null) =>
  ({ word, sinceDay }) as unknown as SeasonHold;
const squad = (word: HoldWord, ...days: readonly number[]) => days.map((day) => one(word, day));
const calm = (athletes: number) => Array.from({ length: athletes }, () => one("holding"));
const told = (holds: readonly SeasonHold[]) =>
  sharedDates(holds).map(({ facts: { word, day, athletes } }) => [word, day, athletes]);

test("three athletes within four days of one another change from one date, the middle one", () => {
  expect(told(squad("slipping", 104, 100, 102))).toEqual([["slipping", 102, 3]]);
  expect(told(squad("slipping", 105, 100, 102))).toEqual([]);
  expect(told(squad("slipping", 100, 104))).toEqual([]);
});

test("falls and rises are dated apart", () => {
  expect(told([...squad("slipping", 100, 101), ...squad("rising", 100, 101)])).toEqual([]);
  const both = [...squad("rising", 90, 91, 92), ...squad("slipping", 100, 101, 102)];
  expect(told(both)).toEqual([
    ["slipping", 101, 3],
    ["rising", 91, 3],
  ]);
});

test("a third of those followed must change together; who has too few rows is not followed", () => {
  const three = squad("slipping", 100, 100, 100);
  const waiting = Array.from({ length: 9 }, () => one("too few rows"));
  expect(sharedDates([...three, ...calm(6), ...waiting])).toEqual([
    { code: "one-date", facts: { word: "slipping", followed: 9, day: 100, athletes: 3 } },
  ]);
  expect(told([...three, ...calm(7)])).toEqual([]);
});

test("of two dates the one of more athletes is told, of equals the first", () => {
  expect(told(squad("slipping", 100, 100, 100, 150, 150, 150))).toEqual([["slipping", 100, 3]]);
  expect(told(squad("slipping", 100, 100, 100, 150, 150, 150, 150))).toEqual([
    ["slipping", 150, 4],
  ]);
});
