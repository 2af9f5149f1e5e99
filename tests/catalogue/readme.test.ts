import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../../src/catalogue";
import { readmeTable, withTable } from "../../src/catalogue/readme-table";

const readme = readFileSync(join(__dirname, "../../README.md"), "utf8");

test("the README lists every formula as it is (npm run readme writes the table)", () => {
  expect(readme).toBe(withTable(readme));
});

test("the table has one row for each formula, with its parameters", () => {
  expect(readmeTable().split("\n")).toHaveLength(catalogue.length + 2);
  expect(readmeTable()).toContain("| `FLIGHT_HEIGHT(flight_time, [landing_height])` |");
});

test("a README without the marks is refused, not overwritten", () => {
  expect(() => withTable("# Holdline\n")).toThrow("<!-- formulas -->");
});
