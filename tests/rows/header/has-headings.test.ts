import { hasHeadings } from "../../../src/rows/header/has-headings";
import { rowsSearched } from "../../../src/rows/header/rows-searched";

test("all headings in one of the first rows, as written", () => {
  const line = ["Athlete", "Word", "Since"];
  const has = (...cells: unknown[][]) => hasHeadings(cells, ["Athlete", "Since"]);
  expect(has(["Club"], line)).toBe(true);
  expect(has(["Athlete", "Word"], ["Since"])).toBe(false);
  expect(has(["athlete", "since"])).toBe(false);
  expect([has(), has(["Club"])]).toEqual([false, false]);
  const before = Array.from({ length: rowsSearched }, () => [""]);
  expect(has(...before.slice(1), line)).toBe(true);
  expect(has(...before, line)).toBe(false);
});
