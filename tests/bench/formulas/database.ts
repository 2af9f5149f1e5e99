import {
  DOUBLE,
  type DuckDBConnection,
  DuckDBDataChunk,
  DuckDBInstance,
  type DuckDBValue,
  INTEGER,
  VARCHAR,
} from "@duckdb/node-api";
import { baselineSessions, type FigureName, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

type Row = readonly unknown[];

const chunkRows = 2048;
const repNames = Array.from({ length: reps }, (_, rep) => `r${rep + 1}`);
const number = (index: number) => (row: Row) =>
  typeof row[index] === "number" ? (row[index] as number) : null;
const text = (index: number) => (row: Row) => row[index] as string;

/** Columns of the database's table and where they come from; the place of the row stands before them. */
const columns = {
  day: {
    type: INTEGER,
    of: (row: Row) => Math.floor((row[place.day] as Date).getTime() / 86_400_000),
  },
  athlete: { type: VARCHAR, of: text(place.athlete) },
  number: { type: INTEGER, of: number(place.set) },
  kind: { type: VARCHAR, of: text(place.kind) },
  kg: { type: DOUBLE, of: number(place.load) },
} as const;
const repColumns = repNames.map((name, rep) => ({
  name,
  type: DOUBLE,
  of: number(place.rep + rep) as (row: Row) => DuckDBValue,
}));

const fastest = `greatest(${repNames.join(", ")})`;
const lastRep = `coalesce(${[...repNames].reverse().join(", ")})`;
const bothSum = (of: string) =>
  repNames
    .map((rep) => `CASE WHEN f.${rep} IS NULL OR l.${rep} IS NULL THEN 0 ELSE ${of}.${rep} END`)
    .join(" + ");

/** What is asked for each figure, and the columns it needs beside the speeds. */
const questions: Readonly<
  Record<FigureName, { readonly needs: readonly (keyof typeof columns)[]; readonly sql: string }>
> = {
  loss: {
    needs: [],
    sql: `SELECT (${fastest} - ${lastRep}) / ${fastest} AS figure FROM sets ORDER BY place`,
  },
  setToSet: {
    needs: ["day", "athlete", "number", "kind", "kg"],
    sql: `
      WITH work AS (SELECT * FROM sets WHERE kind = 'work'),
      latest AS (SELECT athlete, max(day) AS day FROM work GROUP BY athlete),
      session AS (SELECT work.* FROM work JOIN latest USING (athlete, day)),
      first_set AS (SELECT * FROM session QUALIFY row_number() OVER (PARTITION BY athlete ORDER BY number, place) = 1),
      alike AS (SELECT session.* FROM session JOIN first_set USING (athlete) WHERE session.kg = first_set.kg),
      last_set AS (SELECT * FROM alike QUALIFY row_number() OVER (PARTITION BY athlete ORDER BY number DESC, place DESC) = 1)
      SELECT (${bothSum("l")}) / (${bothSum("f")}) - 1 AS figure
      FROM asked JOIN first_set f USING (athlete) JOIN last_set l USING (athlete) ORDER BY asked.place`,
  },
  line: {
    needs: ["athlete", "kg"],
    sql: `
      SELECT regr_slope(${fastest}, kg) AS figure FROM asked JOIN sets USING (athlete)
      GROUP BY athlete, asked.place ORDER BY asked.place`,
  },
  hold: {
    needs: ["day", "athlete", "kind"],
    sql: `
      WITH markers AS (
        SELECT athlete, ${fastest} AS speed,
          row_number() OVER (PARTITION BY athlete ORDER BY day, place) AS nth,
          row_number() OVER (PARTITION BY athlete ORDER BY day DESC, place DESC) AS nth_last
        FROM sets WHERE kind = 'marker')
      SELECT avg(speed) FILTER (nth_last <= ${recentSessions}) / avg(speed) FILTER (nth <= ${baselineSessions}) - 1 AS figure
      FROM asked JOIN markers USING (athlete) GROUP BY athlete, asked.place ORDER BY asked.place`,
  },
};

/** The plain figures asked of an analytical database in its own language. */
export class Database {
  private constructor(private readonly connection: DuckDBConnection) {}

  static async open(): Promise<Database> {
    const instance = await DuckDBInstance.create(":memory:");
    return new Database(await instance.connect());
  }

  /** Takes over the columns a figure needs, one at a time in chunks, which is its quickest way in. */
  async load({ cells, athletes }: SetRows, figure: FigureName): Promise<void> {
    const taken = [
      ...questions[figure].needs.map((name) => ({ name, ...columns[name] })),
      ...repColumns,
    ];
    await this.connection.run(`CREATE OR REPLACE TABLE asked (place INTEGER, athlete VARCHAR)`);
    await this.connection.run(
      `CREATE OR REPLACE TABLE sets (place INTEGER, ${taken.map(({ name, type }) => `${name} ${type}`).join(", ")})`,
    );
    const types = [INTEGER, ...taken.map(({ type }) => type)];
    const sets = await this.connection.createAppender("sets");
    for (let from = 1; from < cells.length; from += chunkRows) {
      const rows = cells.slice(from, from + chunkRows);
      const chunk = DuckDBDataChunk.create(types, rows.length);
      chunk.setColumns([rows.map((_, at) => from + at), ...taken.map(({ of }) => rows.map(of))]);
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

  async figures(figure: FigureName): Promise<ArrayLike<number>> {
    const reader = await this.connection.runAndReadAll(questions[figure].sql);
    return (reader.getColumns()[0] ?? []) as number[];
  }
}
