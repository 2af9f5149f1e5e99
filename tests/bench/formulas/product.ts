import { catalogue } from "../../../src/catalogue";
import type { Cells } from "../../../src/rows/cells";
import { changesAsPrinted, slopesAsPrinted } from "./bare/as-printed";
import { plain } from "./bare/plain";
import { type FigureName, recentSessions } from "./figures";
import { lift, place, reps, type SetRows } from "./set-rows";

type Printed = readonly (readonly unknown[])[];

const compute = (name: string, args: readonly unknown[]) =>
  catalogue.find((one) => one.name === name)?.compute(args) as Printed;

const column = (names: readonly string[]) => names.map((name) => [name]);

/** One formula as a coach types it, once for the whole squad. */
export type Formula = {
  readonly name: string;
  /** What it is handed of the rows, made before the clock starts as the spreadsheet does. */
  readonly handed: (rows: SetRows) => Cells;
  readonly run: (cells: Cells, rows: SetRows) => Printed;
  /** The cells it prints its figure in. */
  readonly figures: (printed: Printed) => readonly number[];
};

const numbers = (at: number) => (printed: Printed) => printed.map((row) => row[at] as number);

/** A formula asked once for the whole squad, over the rows as they stand. */
const ofSquad = (name: string, asked: string, figureAt: number): Formula => ({
  name,
  handed: ({ cells }) => cells,
  run: (cells, { athletes, asOf }) => compute(name, [column(athletes), cells, asked, asOf]),
  figures: numbers(figureAt),
});

/** The four formulas. Losses are asked of the range a coach gives for them, the speeds alone. */
export const formulas: Readonly<Record<FigureName, Formula>> = {
  loss: {
    name: "VELOCITY_LOSS",
    handed: ({ cells }) => cells.slice(1).map((row) => row.slice(place.rep, place.rep + reps)),
    run: (speeds) => compute("VELOCITY_LOSS", [speeds]),
    figures: numbers(0),
  },
  setToSet: ofSquad("SET_TO_SET", lift, 1),
  line: ofSquad("LOAD_SPEED_LINE", lift, 0),
  hold: ofSquad("SEASON_HOLD", "", 3),
};

/** How many sessions SEASON_HOLD says "now" is: the last four, or all since a change. */
const sessionsNow = (printed: Printed): readonly number[] =>
  printed.map(([, , , , why]) => {
    const [, sessions] = /(\d+) sessions? against/.exec(`${why}`) ?? [];
    return sessions === undefined ? recentSessions : Number(sessions);
  });

/** What each formula prints, by a hand-written pass over the same rows. */
export const byHandAsPrinted: Readonly<
  Record<FigureName, (rows: SetRows, printed: Printed) => ArrayLike<number>>
> = {
  loss: plain.loss,
  setToSet: plain.setToSet,
  line: slopesAsPrinted,
  hold: (rows, printed) => changesAsPrinted(rows, sessionsNow(printed)),
};
