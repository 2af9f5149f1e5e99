import { catalogue } from "../../../src/catalogue";
import { lineRows } from "../../../src/coaching/bar-speed/squad-lines";
import type { SpeedSet } from "../../../src/coaching/series/speed-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { readDayArgument } from "../../../src/rows/argument/day-argument";
import { readTable } from "../../../src/rows/read-table";
import { straightLine } from "../../../src/statistics/straight-line";
import { baselineSessions, type Figures, recentSessions } from "./figures";
import { lift, place, reps, type SetRows } from "./set-rows";

const compute = (name: string, args: readonly unknown[]) =>
  catalogue.find((one) => one.name === name)?.compute(args) as (readonly unknown[])[];

const column = (names: readonly string[]) => names.map((name) => [name]);

/** The range a coach gives for the losses: the speeds alone. */
export const speedsOf = ({ cells }: SetRows): readonly (readonly unknown[])[] =>
  cells.slice(1).map((row) => row.slice(place.rep, place.rep + reps));

/** The four formulas as a coach types them, once for the whole squad. */
export const formulas = {
  loss: (speeds: readonly (readonly unknown[])[]) => compute("VELOCITY_LOSS", [speeds]),
  setToSet: ({ cells, athletes, asOf }: SetRows) =>
    compute("SET_TO_SET", [column(athletes), cells, lift, asOf]),
  line: ({ cells, athletes, asOf }: SetRows) =>
    compute("LOAD_SPEED_LINE", [column(athletes), cells, lift, asOf]),
  hold: ({ cells, athletes, asOf }: SetRows) =>
    compute("SEASON_HOLD", [column(athletes), cells, "", asOf]),
} as const;

/**
 * The figures the contenders share. Losses and last set against first are the formulas' own; line and
 * hold are the plain ones on the product's own reading and laying out of the rows, for the formulas
 * weigh days by age, steady by the squad and refuse to be moved by one odd day, which no peer does.
 */
export function sharedFigures(rows: SetRows): Figures {
  const asOf = readDayArgument(rows.asOf);
  if (!asOf.ok) throw new Error(asOf.refusal.code);
  const index = squadIndex({ sets: readTable("Sets", rows.cells).records }, asOf.value);
  const setsOf = (athlete: string): readonly SpeedSet[] => index.of(athlete)?.lifts.get(lift) ?? [];
  return {
    loss: formulas.loss(speedsOf(rows)).map(([loss]) => loss as number),
    setToSet: formulas.setToSet(rows).map((row) => row[1] as number),
    line: rows.athletes.map((athlete) => {
      const sets = lineRows(setsOf(athlete));
      const line = straightLine(
        sets.map(({ loadKg }) => loadKg),
        sets.map(({ speed }) => speed),
      );
      return line.ok ? line.value.slope : Number.NaN;
    }),
    hold: rows.athletes.map((athlete) => {
      const speeds = setsOf(athlete).flatMap(({ marker, speed }) => (marker ? [speed] : []));
      const mean = (of: readonly number[]) => of.reduce((sum, v) => sum + v, 0) / of.length;
      return mean(speeds.slice(-recentSessions)) / mean(speeds.slice(0, baselineSessions)) - 1;
    }),
  };
}
