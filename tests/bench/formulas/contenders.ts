import type { Cells } from "../../../src/rows/cells";
import { changesAsPrinted, slopesAsPrinted } from "./bare/as-printed";
import { plain, touchEveryCell } from "./bare/plain";
import { dataFrame } from "./data-frame";
import { Database } from "./database";
import { type FigureName, recentSessions } from "./figures";
import { byHandAsPrinted, formulas } from "./product";
import type { SetRows } from "./set-rows";

/** One way to a figure, made ready for some rows: what is timed, and what its last run is held against. */
export type Timed = {
  /** What happens before each run but the first and is not timed. */
  readonly before?: () => void;
  readonly run: () => unknown;
  readonly check?: () => {
    readonly found: ArrayLike<number>;
    readonly byHand: ArrayLike<number>;
  };
};

/**
 * A formula is handed its rows anew with every call, lists, rows and dates; rows seen could be
 * remembered. The others keep nothing.
 */
const anew = (rows: SetRows): SetRows => ({
  ...rows,
  cells: rows.cells.map((row) =>
    row.map((cell) => (cell instanceof Date ? new Date(cell.getTime()) : cell)),
  ),
});

type Contender = (rows: SetRows, figure: FigureName) => Timed | Promise<Timed>;

function kept<Found>(
  run: () => Found | Promise<Found>,
  check: (found: Found) => ReturnType<NonNullable<Timed["check"]>>,
): Timed {
  let last: Found;
  return {
    run: async () => {
      last = await run();
    },
    check: () => check(last),
  };
}

const peer = (
  rows: SetRows,
  figure: FigureName,
  run: () => ArrayLike<number> | Promise<ArrayLike<number>>,
): Timed => kept(run, (found) => ({ found, byHand: plain[figure](rows) }));

/** One database a process, as a program that keeps it open would have. */
let opened: Promise<Database> | undefined;
const database = () => {
  opened ??= Database.open();
  return opened;
};

export const bareName = "bare pass";
export const asPrintedName = "bare pass, as printed";
export const formulaName = "formula";
export const touchName = "touching every cell";
export const loadedName = "database, rows loaded";
export const builtInName = "built-in formulas";

/** Figures whose formula prints more than the plain one: recent days weigh more, the squad steadies. */
export const printsMore: Readonly<Partial<Record<FigureName, true>>> = { line: true, hold: true };

/** Everyone measured, in the table's order. */
export const contenders: Readonly<Record<string, Contender>> = {
  [touchName]: (rows) => ({ run: () => touchEveryCell(rows) }),
  [bareName]: (rows, figure) => ({ run: () => plain[figure](rows) }),
  [asPrintedName]: (rows, figure) => {
    if (figure === "line") return { run: () => slopesAsPrinted(rows) };
    const four = rows.athletes.map(() => recentSessions);
    return { run: () => changesAsPrinted(rows, four) };
  },
  [formulaName]: (rows, figure) => {
    const { handed, run, figures } = formulas[figure];
    let cells: Cells = handed(rows);
    const timed = kept(
      () => run(cells, rows),
      (printed) => ({
        found: figures(printed),
        byHand: byHandAsPrinted[figure](rows, printed),
      }),
    );
    const before = () => {
      cells = handed(anew(rows));
    };
    return { ...timed, before };
  },
  [loadedName]: async (rows, figure) => {
    const open = await database();
    await open.load(rows, figure);
    return peer(rows, figure, () => open.figures(figure));
  },
  "database, from the rows": async (rows, figure) => {
    const open = await database();
    return peer(rows, figure, async () => {
      await open.load(rows, figure);
      return open.figures(figure);
    });
  },
  "data frame": (rows, figure) => peer(rows, figure, () => dataFrame[figure](rows)),
};
