import { DuckDBInstance } from "@duckdb/node-api";
import type { Cells } from "../../src/rows/cells";
import { place, reps } from "../bench/formulas/set-rows";

/**
 * Squads written to Parquet files, one each, and read back grouped by athlete and squad as the
 * warehouse's SQL groups them: the text handed to the library for each squad.
 */
export async function squadsFromParquet(
  folder: string,
  squads: readonly Cells[],
): Promise<ReadonlyMap<string, string>> {
  const instance = await DuckDBInstance.create(":memory:");
  const connection = await instance.connect();
  for (const [at, cells] of squads.entries()) {
    await connection.run(
      "CREATE OR REPLACE TABLE one (squad VARCHAR, lifted_at INTEGER, day DATE, athlete VARCHAR, exercise VARCHAR, number DOUBLE, kind VARCHAR, load_kg DOUBLE, rep_speeds DOUBLE[], tool VARCHAR)",
    );
    const rows = cells.slice(1).map((row, line) => {
      const text = (index: number) => `'${String(row[index]).replaceAll("'", "''")}'`;
      const number = (index: number) =>
        typeof row[index] === "number" ? String(row[index]) : "NULL";
      const speeds = Array.from({ length: reps }, (_, rep) => number(place.rep + rep));
      const day = (row[place.day] as Date).toISOString().slice(0, 10);
      return `('squad ${at + 1}', ${line}, DATE '${day}', ${text(place.athlete)}, ${text(place.exercise)}, ${number(place.set)}, ${text(place.kind)}, ${number(place.load)}, [${speeds.join(", ")}], ${text(place.rep + reps)})`;
    });
    for (let from = 0; from < rows.length; from += 1000) {
      await connection.run(`INSERT INTO one VALUES ${rows.slice(from, from + 1000).join(", ")}`);
    }
    await connection.run(`COPY one TO '${folder}/squad-${at + 1}.parquet' (FORMAT parquet)`);
  }
  connection.closeSync();
  return grouped(folder);
}

/** Every squad of a folder of Parquet files, its rows by athlete, as text. */
export async function grouped(
  folder: string,
  fileIsSquad = false,
): Promise<ReadonlyMap<string, string>> {
  const instance = await DuckDBInstance.create(":memory:");
  const connection = await instance.connect();
  const squad = fileIsSquad ? "filename" : "squad";
  const reader = await connection.runAndReadAll(`
    WITH by_athlete AS (
      SELECT ${squad} AS squad, athlete, list(struct_pack(
        day := CAST(day AS VARCHAR), exercise := exercise, "set" := number, kind := kind,
        load_kg := load_kg, rep_speeds := rep_speeds, tool := tool) ORDER BY day, lifted_at) AS sets
      FROM read_parquet('${folder}/*.parquet', filename = true) GROUP BY ALL)
    SELECT squad, to_json(list(struct_pack(athlete := athlete, sets := sets) ORDER BY athlete))
    FROM by_athlete GROUP BY squad ORDER BY squad`);
  const texts = reader.getRows().map(([squad, text]) => [String(squad), String(text)] as const);
  connection.closeSync();
  return new Map(texts);
}
