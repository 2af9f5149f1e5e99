import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { loaded, root } from "./loaded.mjs";
import { withoutHelp } from "./without-help.mjs";

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
    plugins: [withoutHelp],
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "holdline",
    target: "es2020",
    lineLimit: 400,
    legalComments: "none",
    logLevel: "error",
  });
  const { warehouseFunctions } = await loaded("src/warehouse/warehouse-functions.ts");
  writeFileSync(join(out, "holdline.sql"), sql(warehouseFunctions));
}

const squad = `ARRAY<STRUCT<athlete STRING, sets ARRAY<STRUCT<
    day STRING, exercise STRING, \`set\` FLOAT64, kind STRING, load_kg FLOAT64,
    rep_speeds ARRAY<FLOAT64>, mean_speed FLOAT64, tool STRING>>>>`;

function sql(functions) {
  return `-- Holdline in a warehouse. Put holdline.js where the warehouse reads libraries from and that
-- place for LIBRARY_PLACE, the data set for the functions for FUNCTIONS, the table of sets for SETS.
-- SETS has a squad, an athlete and the columns named below; lifted_at puts the sets in order.
${functions.map(declared).join("")}
${functions.map(asked).join("")}`;
}

function declared({ name, told, order, figures }) {
  const columns = order.map(
    (column) => `${column} ${figures.includes(column) ? "FLOAT64" : "STRING"}`,
  );
  const told_ = told.map((one) => `, ${one} STRING`).join("");
  return `
CREATE OR REPLACE FUNCTION FUNCTIONS.${sqlName(name)}(
  squad ${squad}${told_})
RETURNS ARRAY<STRUCT<athlete STRING, refused STRING, ${columns.join(", ")}>>
LANGUAGE js
OPTIONS (library = ["LIBRARY_PLACE/holdline.js"])
AS r"""
  return holdline.${name}(${["squad", ...told].join(", ")});
""";
`;
}

/** Rows by athlete, athletes by squad: a squad steadies its athletes, so it is answered in one call. */
function asked({ name, told }) {
  const given = { exercise: "'back squat'", as_of: "'2026-05-12'" };
  return `
-- ${name} of every athlete of every squad.
WITH by_athlete AS (
  SELECT squad, athlete, ARRAY_AGG(STRUCT(
    CAST(day AS STRING) AS day, exercise, CAST(\`set\` AS FLOAT64) AS \`set\`, kind,
    CAST(load_kg AS FLOAT64) AS load_kg, rep_speeds, CAST(mean_speed AS FLOAT64) AS mean_speed, tool
  ) ORDER BY day, lifted_at) AS sets
  FROM SETS GROUP BY squad, athlete
), by_squad AS (
  SELECT squad, ARRAY_AGG(STRUCT(athlete, sets) ORDER BY athlete) AS athletes
  FROM by_athlete GROUP BY squad
)
SELECT squad, answer.*
FROM by_squad, UNNEST(FUNCTIONS.${sqlName(name)}(athletes, ${told.map((one) => given[one]).join(", ")})) AS answer;
`;
}

const sqlName = (name) => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

if (process.argv[1] === fileURLToPath(import.meta.url)) await warehouse();
