import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { catalogue } from "../../src/catalogue";
import type { Cells } from "../../src/rows/cells";
import { warehouseFunctions } from "../../src/warehouse/warehouse-functions";
import { lift, setRows } from "../bench/formulas/set-rows";
import { squadsFromParquet } from "./parquet-squads";

const root = join(__dirname, "../..");
const built = (name: string) => readFileSync(join(root, "dist/warehouse", name), "utf8");
const realm = createContext({});
const asOf = "2019-06-30";
const folder = mkdtempSync(join(tmpdir(), "holdline-warehouse-"));

beforeAll(() => {
  execFileSync(process.execPath, [join(root, "src/bundle/warehouse.mjs")], { cwd: root });
  runInContext(built("holdline.js"), realm);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Squads of different sizes; the last has an athlete with too few rows to be answered. */
const squads: readonly Cells[] = [900, 640, 1210].map((rows, at) => {
  const { cells } = setRows(rows);
  const short = [
    new Date(Date.UTC(2018, 0, 2)),
    "Nell Overdyke",
    lift,
    1,
    "work",
    60,
    0.8,
    0.79,
    "",
    "",
    "",
    "encoder",
  ];
  return at === 2 ? [...cells, short] : cells;
});

const namesIn = (cells: Cells) =>
  [...new Set(cells.slice(1).map((row) => row[1] as string))].sort();

test("from Parquet files of several squads, the library answers as the spreadsheet's formulas do", async () => {
  const texts = await squadsFromParquet(folder, squads);
  expect(texts.size).toBe(squads.length);
  let refusals = 0;
  for (const [at, [, text]] of [...texts].entries()) {
    const cells = squads[at] as Cells;
    const names = namesIn(cells);
    for (const { name, formula, told, order } of warehouseFunctions) {
      const given = told.map((one) => JSON.stringify(one === "exercise" ? lift : asOf)).join(", ");
      Object.assign(realm, { text });
      const answers = JSON.parse(
        runInContext(
          `JSON.stringify(holdline.${name}(JSON.parse(text), ${given}))`,
          realm,
        ) as string,
      ) as Record<string, unknown>[];
      const sheet = catalogue
        .find((one) => one.name === formula.name)
        ?.compute([
          names.map((one) => [one]),
          cells,
          ...(told.includes("exercise") ? [lift] : [""]),
          asOf,
        ]) as unknown[][];
      expect(answers.map(({ athlete }) => athlete)).toEqual(names);
      for (const [row, answer] of answers.entries()) {
        const cellsOfRow = sheet[row] as unknown[];
        if (answer.refused !== null) {
          refusals++;
          expect(cellsOfRow).toEqual([answer.refused, ...cellsOfRow.slice(1).map(() => "–")]);
        } else expect(order.map((column) => answer[column] ?? "–")).toEqual(cellsOfRow);
      }
    }
  }
  expect(refusals).toBeGreaterThan(0);
});

test("a squad of one athlete with too few rows is refused in words, not by an error", () => {
  const said = runInContext(
    `JSON.stringify(holdline.setToSet([{ athlete: "Nell Overdyke", sets: [{ day: "2019-05-02", exercise: "${lift}", rep_speeds: [0.8, null] }] }], "${lift}", "${asOf}"))`,
    realm,
  ) as string;
  expect(JSON.parse(said)).toMatchObject([{ athlete: "Nell Overdyke", last_against_first: null }]);
  expect(said).toMatch(/"refused":"[^"]+"/);
  expect(runInContext(`holdline.setToSet(null, "x", "${asOf}").length`, realm)).toBe(0);
});

test("the library needs nothing of a host and adds one name", () => {
  const names = (code: string) => {
    const fresh = createContext({});
    const before = runInContext("Object.getOwnPropertyNames(globalThis)", fresh) as string[];
    runInContext(code, fresh);
    const after = runInContext("Object.getOwnPropertyNames(globalThis)", fresh) as string[];
    return after.filter((name) => !before.includes(name));
  };
  expect(names(built("holdline.js"))).toEqual(["holdline"]);
  expect(built("holdline.js")).not.toMatch(/SpreadsheetApp|HtmlService|require\(|process\./);
});

test("the SQL declares every function with the columns the library answers", () => {
  const sql = built("holdline.sql");
  for (const { name, order } of warehouseFunctions) {
    expect(sql).toContain(`return holdline.${name}(`);
    for (const column of order) expect(sql).toMatch(new RegExp(`\\b${column} (FLOAT64|STRING)`));
  }
  expect(sql.match(/LANGUAGE js/g)).toHaveLength(warehouseFunctions.length);
});
