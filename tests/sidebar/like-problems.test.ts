import type { RowProblem } from "../../src/actions/messages";
import { likeProblems } from "../../src/sidebar/like-problems";
import { rows } from "./views";

const [problem] = rows.problems;
const at = (cell: string, kind = "implausible", tabId = 1): RowProblem => ({
  ...problem!,
  cell,
  kind,
  tabId,
});
const down = (column: string, count: number, kind?: string) =>
  Array.from({ length: count }, (_, row) => at(`${column}${row + 2}`, kind));
const told = (problems: readonly RowProblem[]) =>
  likeProblems(problems).map(({ first, more }) => [first.cell, more.length]);

test("a column filled with one problem is told once, at its first cell", () => {
  expect(told([...down("D", 480), at("A9", "day-questioned")])).toEqual([
    ["D2", 479],
    ["A9", 0],
  ]);
});

test("five of a kind are listed one by one, six are gathered", () => {
  expect(told(down("D", 5))).toHaveLength(5);
  expect(told(down("D", 6))).toEqual([["D2", 5]]);
});

test("other columns, kinds and tabs are not mixed, and all keep their order", () => {
  const five = down("D", 5);
  const mixed = [at("C2"), ...five, at("D9", "not-a-number"), at("D8", "implausible", 2)];
  expect(told(mixed).map(([cell]) => cell)).toEqual(mixed.map(({ cell }) => cell));
  const between = [...down("D", 3), at("AD4"), ...down("D", 9).slice(3)];
  expect(told(between)).toEqual([
    ["D2", 8],
    ["AD4", 0],
  ]);
});

test("many rows typed twice are gathered, and their heading is not doubted as one over wrong figures is", () => {
  const doubts = (problems: readonly RowProblem[]) =>
    likeProblems(problems).map(({ headingInDoubt }) => headingInDoubt);
  for (const kind of ["doubled-row", "words-alone", "state-undated", "lift-near"])
    expect([kind, doubts(down("A", 6, kind))]).toEqual([kind, [false]]);
  expect(doubts(down("D", 6, "not-a-number"))).toEqual([true]);
  expect(doubts([at("D2")])).toEqual([false]);
});
