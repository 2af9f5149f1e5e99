import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { loaded, root } from "./loaded.mjs";
import { withoutHelp } from "./without-help.mjs";
import { withoutIdleStatistics } from "./without-idle-statistics.mjs";

/**
 * `dist/warehouse/`: the core as one library without anything of a host, and the SQL that declares its
 * functions in a warehouse that accepts functions in JavaScript.
 */
export default async function warehouse() {
  const out = join(root, "dist/warehouse");
  mkdirSync(out, { recursive: true });
  await build({
    entryPoints: [join(root, "src/warehouse/main.ts")],
    outfile: join(out, "holdline.js"),
    plugins: [withoutHelp, withoutIdleStatistics],
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "holdline",
    target: "es2020",
    lineLimit: 400,
    legalComments: "none",
    logLevel: "error",
  });
  const functions = await loaded("src/warehouse/warehouse-functions.ts");
  writeFileSync(join(out, "holdline.sql"), sql(functions));
}

/** Columns of a row by table: name and type, and how the row of a struct is made of the table's. */
const columns = {
  sets: {
    table: "SETS",
    order: "day, lifted_at",
    fields: [
      ["day", "STRING", "CAST(day AS STRING)"],
      ["exercise", "STRING", "exercise"],
      ["set_number", "FLOAT64", "CAST(set_number AS FLOAT64)"],
      ["kind", "STRING", "kind"],
      ["load_kg", "FLOAT64", "CAST(load_kg AS FLOAT64)"],
      ["rep_speeds", "ARRAY<FLOAT64>", "rep_speeds"],
      ["mean_speed", "FLOAT64", "CAST(mean_speed AS FLOAT64)"],
      ["tool", "STRING", "tool"],
      ["speed_is", "STRING", "speed_is"],
      ["bar_kg", "FLOAT64", "CAST(bar_kg AS FLOAT64)"],
      ["gym", "STRING", "gym"],
    ],
  },
  jumps: {
    table: "JUMPS",
    order: "day, jumped_at",
    fields: [
      ["day", "STRING", "CAST(day AS STRING)"],
      ["test", "STRING", "test"],
      ["height_cm", "FLOAT64", "CAST(height_cm AS FLOAT64)"],
      ["flight_s", "FLOAT64", "CAST(flight_s AS FLOAT64)"],
      ["contact_s", "FLOAT64", "CAST(contact_s AS FLOAT64)"],
      ["landing_cm", "FLOAT64", "CAST(landing_cm AS FLOAT64)"],
      ["cleared", "BOOL", "cleared"],
      ["drop_cm", "FLOAT64", "CAST(drop_cm AS FLOAT64)"],
    ],
  },
};
const typeOf = (rows, column) => columns[rows].fields.find(([name]) => name === column)[1];

function sql({
  figureFunctions: figures,
  warehouseFunctions: squads,
  checkFunctions: checks,
  issueColumns,
}) {
  const issue = issueColumns.map((one) => `${one} ${one === "place" ? "FLOAT64" : "STRING"}`);
  return `-- Holdline in a warehouse. Put holdline.js where the warehouse reads libraries from and that
-- place for LIBRARY_PLACE, the data set for the functions for FUNCTIONS, the table of sets for SETS
-- and that of jumps for JUMPS. Both have a squad, an athlete and the columns named below; lifted_at
-- and jumped_at put their rows in order within a day. What a squad does not record is NULL: of sets
-- speed_is (mean or peak), bar_kg and gym, of jumps cleared and drop_cm among others. height_cm of a
-- jump onto plates is the height of the stack, and cleared says whether it was.
${figures.map(declaredFigure).join("")}${squads.map(declaredSquad).join("")}${checks
  .map((check) => declaredOfSquad(check, `ARRAY<STRUCT<${issue.join(", ")}>>`))
  .join("")}
${figures.map(askedFigure).join("")}${[...squads, ...checks].map(askedSquad).join("")}`;
}

function declaredFigure({ name, given, rows, figure }) {
  const parameters = given.map((one) => `${one} ${typeOf(rows, one)}`);
  return declared(name, parameters, `STRUCT<refused STRING, ${figure} FLOAT64>`, given);
}

function declaredSquad({ order, figures, ...one }) {
  const answer = order.map(
    (column) => `${column} ${figures.includes(column) ? "FLOAT64" : "STRING"}`,
  );
  return declaredOfSquad(
    one,
    `ARRAY<STRUCT<athlete STRING, refused STRING, ${answer.join(", ")}>>`,
  );
}

function declaredOfSquad({ name, rows, told }, answer) {
  const fields = columns[rows].fields.map(([column, type]) => `${column} ${type}`).join(", ");
  const squad = `squad ARRAY<STRUCT<athlete STRING, ${rows} ARRAY<STRUCT<
    ${fields}>>>>`;
  return declared(name, [squad, ...told.map((one) => `${one} STRING`)], answer, ["squad", ...told]);
}

const declared = (name, parameters, answer, given) => `
CREATE OR REPLACE FUNCTION FUNCTIONS.${sqlName(name)}(
  ${parameters.join(", ")})
RETURNS ${answer}
LANGUAGE js
OPTIONS (library = ["LIBRARY_PLACE/holdline.js"])
AS r"""
  return holdline.${name}(${given.join(", ")});
""";
`;

function askedFigure({ name, rows, given }) {
  const { table, order } = columns[rows];
  return `
-- ${name} of every row.
SELECT *, FUNCTIONS.${sqlName(name)}(${given.join(", ")}) AS answer
FROM ${table} ORDER BY squad, athlete, ${order};
`;
}

/** Rows by athlete, athletes by squad: a squad steadies its athletes, so it is answered in one call. */
function askedSquad({ name, rows, told }) {
  const { table, order, fields } = columns[rows];
  const given = { exercise: "'back squat'", test: "'box jump'", as_of: "'2026-05-12'" };
  const made = fields.map(([column, , from]) =>
    from === column ? column : `${from} AS ${column}`,
  );
  return `
-- ${name} of every athlete of every squad.
WITH by_athlete AS (
  SELECT squad, athlete, ARRAY_AGG(STRUCT(
    ${made.join(", ")}
  ) ORDER BY ${order}) AS ${rows}
  FROM ${table} GROUP BY squad, athlete
), by_squad AS (
  SELECT squad, ARRAY_AGG(STRUCT(athlete, ${rows}) ORDER BY athlete) AS athletes
  FROM by_athlete GROUP BY squad
)
SELECT squad, answer.*
FROM by_squad, UNNEST(FUNCTIONS.${sqlName(name)}(${["athletes", ...told.map((one) => given[one])].join(", ")})) AS answer;
`;
}

const sqlName = (name) => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

if (process.argv[1] === fileURLToPath(import.meta.url)) await warehouse();
