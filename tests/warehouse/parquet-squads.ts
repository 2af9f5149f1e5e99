import { DuckDBInstance } from "@duckdb/node-api";
import type { Cells } from "../../src/rows/cells";
import { place, reps } from "../bench/formulas/set-rows";
import { groupingOf } from "./standard-sql";

const text = (cell: unknown) => `'${String(cell).replaceAll("'", "''")}'`;
const number = (cell: unknown) => (typeof cell === "number" ? String(cell) : "NULL");
const dayOf = (cell: unknown) => (cell as Date).toISOString().slice(0, 10);

/** Table of the warehouse by kind of rows: its columns, and a row of the spreadsheet as one of its own. */
const kinds = {
  sets: {
    columns:
      "lifted_at INTEGER, day DATE, athlete VARCHAR, exercise VARCHAR, set_number DOUBLE, kind VARCHAR, load_kg DOUBLE, rep_speeds DOUBLE[], mean_speed DOUBLE, tool VARCHAR, speed_is VARCHAR, bar_kg DOUBLE, gym VARCHAR",
    values: (row: readonly unknown[]) => {
      const speeds = Array.from({ length: reps }, (_, rep) => number(row[place.rep + rep]));
      return `DATE '${dayOf(row[place.day])}', ${text(row[place.athlete])}, ${text(row[place.exercise])}, ${number(row[place.set])}, ${text(row[place.kind])}, ${number(row[place.load])}, [${speeds.join(", ")}], NULL, ${text(row[place.rep + reps])}, NULL, NULL, NULL`;
    },
  },
  jumps: {
    columns:
      "jumped_at INTEGER, day DATE, athlete VARCHAR, test VARCHAR, height_cm DOUBLE, flight_s DOUBLE, contact_s DOUBLE, landing_cm DOUBLE, cleared BOOLEAN, drop_cm DOUBLE",
    values: ([day, athlete, test, ...figures]: readonly unknown[]) =>
      `DATE '${dayOf(day)}', ${text(athlete)}, ${text(test)}, ${figures.map(number).join(", ")}, NULL, NULL`,
  },
} as const;
export type Kind = keyof typeof kinds;

/** Squads written to Parquet files, one each: rows of the spreadsheet's table, its heading row first. */
export async function writeSquads(
  folder: string,
  kind: Kind,
  squads: readonly Cells[],
): Promise<void> {
  const { columns, values } = kinds[kind];
  const instance = await DuckDBInstance.create(":memory:");
  const connection = await instance.connect();
  for (const [at, cells] of squads.entries()) {
    await connection.run(`CREATE OR REPLACE TABLE one (squad VARCHAR, ${columns})`);
    const rows = cells.slice(1).map((row, line) => `('squad ${at + 1}', ${line}, ${values(row)})`);
    for (let from = 0; from < rows.length; from += 1000) {
      await connection.run(`INSERT INTO one VALUES ${rows.slice(from, from + 1000).join(", ")}`);
    }
    await connection.run(`COPY one TO '${folder}/${kind}-${at + 1}.parquet' (FORMAT parquet)`);
  }
  connection.closeSync();
}

/**
 * Every squad of a folder of Parquet files, its rows by athlete, as the text handed to the library:
 * grouped by the very SELECT that `dist/warehouse/holdline.sql` holds for a function.
 *
 * @param name the function, as the library names it
 * @param fileIsSquad each file is a squad of its own, whatever it says inside
 */
export async function grouped(
  folder: string,
  kind: Kind,
  name: string,
  fileIsSquad = false,
): Promise<ReadonlyMap<string, string>> {
  const instance = await DuckDBInstance.create(":memory:");
  const connection = await instance.connect();
  const squad = fileIsSquad ? "filename" : "squad";
  await connection.run(
    `CREATE VIEW ${kind.toUpperCase()} AS SELECT * REPLACE (${squad} AS squad) FROM read_parquet('${folder}/${kind}-*.parquet', filename = true)`,
  );
  const reader = await connection.runAndReadAll(
    `${groupingOf(name)} SELECT squad, to_json(athletes) FROM by_squad ORDER BY squad`,
  );
  const texts = reader.getRows().map(([of, rows]) => [String(of), String(rows)] as const);
  connection.closeSync();
  return new Map(texts);
}
