import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../../src/catalogue";
import { columnsTable, readmeTable, withTables } from "../../src/catalogue/readme-table";

const readme = readFileSync(join(__dirname, "../../README.md"), "utf8");

test("the README lists every formula and every column as it is (npm run readme writes the tables)", () => {
  expect(readme).toBe(withTables(readme));
});

test("the table has one row for each formula, with its parameters", () => {
  expect(readmeTable().split("\n")).toHaveLength(catalogue.length + 2);
  expect(readmeTable()).toContain("| `FLIGHT_HEIGHT(flight_time, [landing_height])` |");
});

test("each formula has an example as it is typed, with ranges where it takes them", () => {
  expect(readmeTable()).toContain("| `=VELOCITY_LOSS(H2:J3)` |");
  expect(readmeTable().split("\n").slice(2).join("\n")).not.toMatch(/\| `[^=`][^`]*` \|$/m);
});

test("each table has its columns, the needed ones marked", () => {
  expect(columnsTable().split("\n")).toHaveLength(9 + 2);
  expect(columnsTable()).toContain("| Plates | ★ mass, ★ thickness, number owned |");
  expect(columnsTable()).toMatch(/\| Sets \| ★ date, time, ★ athlete, ★ exercise, set, /);
});

test("a README without the marks is refused, not overwritten", () => {
  expect(() => withTables("# Holdline\n")).toThrow("<!-- formulas -->");
});
