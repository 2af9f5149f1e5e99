import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { catalogue } from "../../src/catalogue";
import { velocityLossFunction } from "../../src/catalogue/velocity-loss";
import type { Cells } from "../../src/rows/cells";
import {
  checkFunctions,
  figureFunctions,
  issueColumns,
  warehouseFunctions,
} from "../../src/warehouse/warehouse-functions";
import { lift, setRows } from "../bench/formulas/set-rows";
import { jumpRows, jumpTest } from "./jump-rows";
import { grouped, writeSquads } from "./parquet-squads";
import { declarationOf } from "./standard-sql";

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

const rows = { sets: squads, jumps: squads.map((cells) => jumpRows(namesIn(cells), 24)) };
const about = { exercise: lift, test: jumpTest, as_of: asOf };
const inLibrary = (call: string, given: Readonly<Record<string, unknown>>): unknown => {
  Object.assign(realm, given);
  return JSON.parse(runInContext(`JSON.stringify(holdline.${call})`, realm) as string);
};

test.each(warehouseFunctions)(
  "$name over Parquet files of several squads, grouped by our own SQL, answers as the spreadsheet's formula does",
  async ({ name, formula, rows: kind, told, order }) => {
    await writeSquads(folder, kind, rows[kind]);
    const texts = await grouped(folder, kind, name);
    expect(texts.size).toBe(squads.length);
    let refusals = 0;
    let figures = 0;
    for (const [at, [, text]] of [...texts].entries()) {
      const cells = rows[kind][at]!;
      const names = namesIn(cells);
      const given = told.map((one) => JSON.stringify(about[one])).join(", ");
      const answers = inLibrary(`${name}(JSON.parse(text), ${given})`, { text }) as Record<
        string,
        unknown
      >[];
      const matter = told.length === 1 ? "" : about[told[0]!];
      const sheet = catalogue
        .find((one) => one.name === formula.name)
        ?.compute([names.map((one) => [one]), cells, matter, asOf]) as unknown[][];
      expect(answers.map(({ athlete }) => athlete)).toEqual(names);
      for (const [row, answer] of answers.entries()) {
        const cellsOfRow = sheet[row] as unknown[];
        if (answer.refused !== null) {
          refusals++;
          expect(cellsOfRow).toEqual([answer.refused, ...cellsOfRow.slice(1).map(() => "–")]);
        } else {
          figures++;
          expect(order.map((column) => answer[column] ?? "–")).toEqual(cellsOfRow);
        }
      }
    }
    expect(figures).toBeGreaterThan(20);
    // The last squad has somebody with too few rows for it.
    if (name === "setToSet") expect(refusals).toBeGreaterThan(0);
  },
);

test.each([
  ["velocityLoss", [[0.6, 0.57, 0.54, 0.48]], { loss: 0.2 }],
  ["flightHeight", [0.5, null], { height_cm: 30.6 }],
  ["flightHeight", [0.5, 30], { height_cm: 47.5 }],
  ["reactiveStrength", [36, 0.18], { reactive_strength: 2 }],
] as const)(
  "%s of one row (%j) is the figure that the formula's help says",
  (name, given, said) => {
    const call = `${name}(...given)`;
    const answer = inLibrary(call, { given }) as Record<string, number | null>;
    const [[column, figure]] = Object.entries(said) as [[string, number]];
    expect(answer.refused).toBeNull();
    expect(answer[column]).toBeCloseTo(figure, 1);
  },
);

test("loss set by set is the sheet's own figure, or its sentence", () => {
  const sets = squads[0]!.slice(1, 300);
  for (const row of sets) {
    const speeds = row.slice(6, 11).map((one) => (one === "" ? null : one));
    let said: unknown;
    try {
      said = velocityLossFunction.compute([[row.slice(6, 11)]]);
    } catch (error) {
      said = (error as Error).message;
    }
    const { loss, refused } = inLibrary("velocityLoss(speeds)", { speeds }) as Record<
      string,
      unknown
    >;
    expect([loss ?? refused]).toEqual([said].flat(2));
  }
  for (const bad of [null, [], [0.6], [0.6, null, 0.5], [0.6, 40]]) {
    const { loss, refused } = inLibrary("velocityLoss(speeds)", { speeds: bad }) as Record<
      string,
      unknown
    >;
    expect([loss, refused]).toEqual([null, expect.stringMatching(/\.$/)]);
  }
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

test.each([...figureFunctions, ...warehouseFunctions, ...checkFunctions])(
  "the SQL declares $name with what the library takes and answers",
  ({ name, ...one }) => {
    const { parameters, answer, called } = declarationOf(name);
    const given = "given" in one ? one.given : ["squad", ...one.told];
    expect(parameters).toEqual(given);
    expect(called).toBe(`holdline.${name}(${given.join(", ")})`);
    const asSheet = "order" in one ? ["athlete", "refused", ...one.order] : issueColumns;
    expect(answer).toEqual("figure" in one ? ["refused", one.figure] : asSheet);
    expect(runInContext(`typeof holdline.${name}`, realm)).toBe("function");
  },
);

test("the SQL declares nothing else, and the library offers nothing else", () => {
  const all = [...figureFunctions, ...warehouseFunctions, ...checkFunctions];
  const names = all.map(({ name }) => name);
  expect(built("holdline.sql").match(/LANGUAGE js/g)).toHaveLength(names.length);
  expect((runInContext("Object.keys(holdline)", realm) as string[]).slice().sort()).toEqual(
    [...names].sort(),
  );
});
