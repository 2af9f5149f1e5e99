import { inOrder } from "../../../src/coaching/series/in-order";

type Row = { readonly day: number; readonly row: number; readonly minute?: number | null };
const row = (day: number, line: number, minute?: number | null): Row =>
  minute === undefined ? { day, row: line } : { day, row: line, minute };
const ordered = (...rows: Row[]) => inOrder(rows, (one) => one).map(({ row: line }) => line);

test("rows go by day, and on a day as they stand in the sheet", () => {
  expect(ordered(row(2, 5), row(1, 9), row(2, 3), row(1, 7))).toEqual([7, 9, 3, 5]);
  expect(ordered(row(1, 3), row(1, 2))).toEqual([2, 3]);
  expect(ordered()).toEqual([]);
});

test("rows in order already are handed back as they are", () => {
  const rows = [row(1, 2), row(1, 3), row(4, 1)];
  expect(inOrder(rows, (one) => one)).toBe(rows);
  const timed = [row(1, 2, null), row(1, 3, null)];
  expect(inOrder(timed, (one) => one)).toBe(timed);
});

test("the time written decides before the place in the sheet", () => {
  expect(ordered(row(1, 2, 1080), row(1, 3, 540))).toEqual([3, 2]);
  expect(ordered(row(1, 2, 540), row(1, 3, 1080), row(1, 4, 540))).toEqual([2, 4, 3]);
  // Midnight is a time.
  expect(ordered(row(1, 2, 5), row(1, 3, 0))).toEqual([3, 2]);
});

test("a time written once holds for the rows under it on that day, and for no other day", () => {
  expect(ordered(row(1, 2, 1080), row(1, 3, null), row(1, 4, 540), row(1, 5))).toEqual([
    4, 5, 2, 3,
  ]);
  // The morning's row of the next day stands before a time is written there.
  expect(ordered(row(1, 2, 1080), row(2, 3, null), row(2, 4, 540))).toEqual([2, 3, 4]);
  expect(ordered(row(2, 3, 0), row(2, 2, null), row(1, 4, 600))).toEqual([4, 2, 3]);
});

test("sets of two sessions of one day stay apart, whatever their numbers", () => {
  const set = (line: number, minute: number, number: number) => ({
    ...row(1, line, minute),
    set: number,
    kind: "work",
  });
  // The morning's were numbered on from four, the evening's from one.
  expect(ordered(set(2, 540, 5), set(3, 540, 4), set(4, 1080, 2), set(5, 1080, 1))).toEqual([
    3, 2, 5, 4,
  ]);
});
