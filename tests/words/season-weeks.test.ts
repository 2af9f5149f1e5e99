import { seasonWeeksFunction } from "../../src/catalogue/season-weeks";

const races = [
  ["date", "race", "who", "matters"],
  ["2026-04-26", "Marathon", "Hamid Sorley", "A"],
  ["2026-05-02", "Relay", "all", "C"],
];
const weeks = (...args: unknown[]) => seasonWeeksFunction.compute(args);

test("a race in the week after an A race shows its own sign; groups of four", () => {
  expect(weeks("Hamid Sorley", races, "2026-04-20", 5)).toEqual([
    ["AC·· ·", "Marathon (A) 26 Apr, Relay (C) 2 May"],
  ]);
  expect(weeks([["Ilka Brandmoor"], [""], ["Hamid Sorley"]], races, "2026-04-20", 2)).toEqual([
    ["·C", "Relay (C) 2 May"],
    ["", ""],
    ["AC", "Marathon (A) 26 Apr, Relay (C) 2 May"],
  ]);
});

test("eighteen weeks when left out; impossible ones are refused in words", () => {
  expect(weeks("Wren Castellow", races, "2026-06-01")).toEqual([
    ["···· ···· ···· ···· ··", "no races"],
  ]);
  expect(() => weeks("Wren Castellow", races, "2026-06-01", 0)).toThrow("from 1 to 52");
});
