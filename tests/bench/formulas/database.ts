import {
  DOUBLE,
  type DuckDBConnection,
  DuckDBDataChunk,
  DuckDBInstance,
  INTEGER,
  VARCHAR,
} from "@duckdb/node-api";
import { baselineSessions, type Figures, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

const types = [
  INTEGER,
  INTEGER,
  VARCHAR,
  INTEGER,
  VARCHAR,
  DOUBLE,
  DOUBLE,
  DOUBLE,
  DOUBLE,
  DOUBLE,
  DOUBLE,
];
const chunkRows = 2048;
const repNames = Array.from({ length: reps }, (_, rep) => `r${rep + 1}`);
const fastest = `greatest(${repNames.join(", ")})`;
const lastRep = `coalesce(${[...repNames].reverse().join(", ")})`;
const bothSum = (of: string) =>
  repNames
    .map((rep) => `CASE WHEN f.${rep} IS NULL OR l.${rep} IS NULL THEN 0 ELSE ${of}.${rep} END`)
    .join(" + ");

/** The same figures asked of an analytical database in its own language. */
export class Database {
  private constructor(private readonly connection: DuckDBConnection) {}

  static async open(): Promise<Database> {
    const instance = await DuckDBInstance.create(":memory:");
    return new Database(await instance.connect());
  }

  /** Takes the rows over, a column at a time in chunks, which is its quickest way in. */
  async load({ cells, athletes }: SetRows): Promise<void> {
    await this.connection.run(`CREATE OR REPLACE TABLE asked (place INTEGER, athlete VARCHAR)`);
    await this.connection.run(
      `CREATE OR REPLACE TABLE sets (place INTEGER, day INTEGER, athlete VARCHAR, number INTEGER, kind VARCHAR, kg DOUBLE, ${repNames.map((rep) => `${rep} DOUBLE`).join(", ")})`,
    );
    const sets = await this.connection.createAppender("sets");
    for (let from = 1; from < cells.length; from += chunkRows) {
      const rows = cells.slice(from, from + chunkRows);
      const number = (index: number) =>
        rows.map((row) => (typeof row[index] === "number" ? (row[index] as number) : null));
      const chunk = DuckDBDataChunk.create(types, rows.length);
      chunk.setColumns([
        rows.map((_, at) => from + at),
        rows.map((row) => Math.floor((row[place.day] as Date).getTime() / 86_400_000)),
        rows.map((row) => row[place.athlete] as string),
        number(place.set),
        rows.map((row) => row[place.kind] as string),
        number(place.load),
        ...repNames.map((_, rep) => number(place.rep + rep)),
      ]);
      sets.appendDataChunk(chunk);
    }
    sets.closeSync();
    const asked = await this.connection.createAppender("asked");
    for (const [at, athlete] of athletes.entries()) {
      asked.appendInteger(at);
      asked.appendVarchar(athlete);
      asked.endRow();
    }
    asked.closeSync();
  }

  async figures(): Promise<Figures> {
    return {
      loss: await this.column(
        `SELECT (${fastest} - ${lastRep}) / ${fastest} AS figure FROM sets ORDER BY place`,
      ),
      setToSet: await this.column(`
        WITH work AS (SELECT * FROM sets WHERE kind = 'work'),
        latest AS (SELECT athlete, max(day) AS day FROM work GROUP BY athlete),
        session AS (SELECT work.* FROM work JOIN latest USING (athlete, day)),
        first_set AS (SELECT * FROM session QUALIFY row_number() OVER (PARTITION BY athlete ORDER BY number, place) = 1),
        alike AS (SELECT session.* FROM session JOIN first_set USING (athlete) WHERE session.kg = first_set.kg),
        last_set AS (SELECT * FROM alike QUALIFY row_number() OVER (PARTITION BY athlete ORDER BY number DESC, place DESC) = 1)
        SELECT (${bothSum("l")}) / (${bothSum("f")}) - 1 AS figure
        FROM asked JOIN first_set f USING (athlete) JOIN last_set l USING (athlete) ORDER BY asked.place`),
      line: await this.column(`
        SELECT regr_slope(${fastest}, kg) AS figure FROM asked JOIN sets USING (athlete)
        GROUP BY athlete, asked.place ORDER BY asked.place`),
      hold: await this.column(`
        WITH markers AS (
          SELECT athlete, ${fastest} AS speed,
            row_number() OVER (PARTITION BY athlete ORDER BY day, place) AS nth,
            row_number() OVER (PARTITION BY athlete ORDER BY day DESC, place DESC) AS nth_last
          FROM sets WHERE kind = 'marker')
        SELECT avg(speed) FILTER (nth_last <= ${recentSessions}) / avg(speed) FILTER (nth <= ${baselineSessions}) - 1 AS figure
        FROM asked JOIN markers USING (athlete) GROUP BY athlete, asked.place ORDER BY asked.place`),
    };
  }

  private async column(query: string): Promise<number[]> {
    const reader = await this.connection.runAndReadAll(query);
    return (reader.getColumns()[0] ?? []) as number[];
  }

  close(): void {
    this.connection.closeSync();
  }
}
