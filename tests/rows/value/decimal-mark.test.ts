import { decimalMarkIn } from "../../../src/rows/value/decimal-mark";

test("the mark that more typed cells carry tells", () => {
  expect(decimalMarkIn([[["0,62 0,60"], ["0,58"], ["0.61"]]])).toBe(",");
  expect(decimalMarkIn([[["0.62, 0.60"]], [["0,58"], [".61"]]])).toBe(".");
});

test("numbers, whole figures, words and equal counts tell nothing", () => {
  expect(decimalMarkIn([[[62.5, "60", "back squat, easy", ""], ["0,62"], ["0.62"]]])).toBeNull();
  expect(decimalMarkIn([])).toBeNull();
});

test("only the latest two thousand rows of a table count", () => {
  const rows = [...Array(10).fill(["0.62"]), ["0,62"], ...Array(1999).fill([""])];
  expect(decimalMarkIn([rows])).toBe(",");
});
