import { barePass, touchEveryCell } from "./bare-pass";
import { dataFrameFigures } from "./data-frame";
import { Database } from "./database";
import type { Figures } from "./figures";
import { formulas, sharedFigures, speedsOf } from "./product";
import type { SetRows } from "./set-rows";

/** One way to the figures: what is timed, and the figures it gives where it gives the shared ones. */
export type Contender = {
  readonly run: () => unknown;
  readonly figures?: () => Figures | Promise<Figures>;
};

/** A formula is handed its rows anew with every call; one it has seen could be remembered. */
const anew = (rows: SetRows): SetRows => ({ ...rows, cells: [...rows.cells] });

async function withDatabase(rows: SetRows, loaded: boolean): Promise<Contender> {
  const database = await Database.open();
  await database.load(rows);
  const run = async () => {
    if (!loaded) await database.load(rows);
    return database.figures();
  };
  return { run, figures: run };
}

/** All that is measured in one process each, made ready for some rows. */
export const contenders: Readonly<
  Record<string, (rows: SetRows) => Contender | Promise<Contender>>
> = {
  "touching every cell": (rows) => ({ run: () => touchEveryCell(rows) }),
  "bare pass, all four": (rows) => ({ run: () => barePass(rows), figures: () => barePass(rows) }),
  VELOCITY_LOSS: (rows) => {
    const figures = () => sharedFigures(rows);
    const speeds = speedsOf(rows);
    return { run: () => formulas.loss(speeds), figures };
  },
  SET_TO_SET: (rows) => ({ run: () => formulas.setToSet(anew(rows)) }),
  LOAD_SPEED_LINE: (rows) => ({ run: () => formulas.line(anew(rows)) }),
  SEASON_HOLD: (rows) => ({ run: () => formulas.hold(anew(rows)) }),
  "database, rows loaded": (rows) => withDatabase(rows, true),
  "database, from the rows": (rows) => withDatabase(rows, false),
  "data frame": (rows) => ({
    run: () => dataFrameFigures(rows),
    figures: () => dataFrameFigures(rows),
  }),
};
