import type { Cells } from "../../../src/rows/cells";

/** Rows of the Sets table as a spreadsheet passes them, and what is asked about them. */
export type SetRows = {
  /** Heading row and below it the rows: date, athlete, exercise, set, kind, load, five speeds, tool. */
  readonly cells: Cells;
  readonly athletes: readonly string[];
  readonly asOf: Date;
};

export const lift = "back squat";
/** Columns of a row, counted from 0. */
export const place = { day: 0, athlete: 1, exercise: 2, set: 3, kind: 4, load: 5, rep: 6 } as const;
export const reps = 5;
const headings = ["date", "athlete", "exercise", "set", "kind", "load kg"];
const dayMs = 86_400_000;
const setsADay = 4;

/** Squads grow as well as seasons: about 20 athletes at 3,000 rows and 400 at a million. */
const squadOf = (rows: number) => Math.max(4, Math.round(0.4 * Math.sqrt(rows)));

/**
 * An invented squad's rows in order of day: a marker and three work sets a session, of three to five
 * repetitions, loads going up and down by session. The same rows for the same number.
 */
export function setRows(rows: number): SetRows {
  const athletes = Array.from({ length: squadOf(rows) }, (_, i) => `Quillbeck Runner ${i + 1}`);
  const chance = randomFrom(rows);
  const cells: unknown[][] = [[...headings, "rep 1", "rep 2", "rep 3", "rep 4", "rep 5", "tool"]];
  let last = 0;
  for (let session = 0; cells.length <= rows; session++) {
    last = Date.UTC(2018, 0, 2) + (3.5 * session - (session % 2) * 0.5) * dayMs;
    for (const [at, athlete] of athletes.entries()) {
      const workKg = 60 + 5 * (at % 9) + 10 * (session % 4);
      const repsDone = 3 + ((session + at) % 3);
      const form = 0.03 * (chance() - 0.5);
      for (let set = 0; set < setsADay && cells.length <= rows; set++) {
        const kg = set === 0 ? 50 + 5 * (at % 9) : workKg;
        const fastest = 1.35 - 0.0075 * kg + form - 0.01 * set + 0.02 * chance();
        const speeds = Array.from({ length: reps }, (_, rep) =>
          rep < repsDone ? Math.round(1000 * (fastest - 0.02 * rep + 0.01 * chance())) / 1000 : "",
        );
        cells.push([
          new Date(last),
          athlete,
          lift,
          set === 0 ? "" : set,
          set === 0 ? "marker" : "work",
          kg,
          ...speeds,
          "encoder",
        ]);
      }
    }
  }
  return { cells, athletes, asOf: new Date(last) };
}

/** Park and Miller 1988: the same chances in every run. */
function randomFrom(seed: number): () => number {
  let state = (seed % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
