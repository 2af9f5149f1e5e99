import type { Day } from "../../coaching/calendar/day";
import { type SquadIndex, squadIndex } from "../../coaching/series/squad-index";
import { accept, type Outcome } from "../../outcome";
import { readDayArgument } from "../../rows/argument/day-argument";
import { askedAthletes, knownAthlete, rowsForAthletes } from "./asked-athletes";
import { type GivenTables, givenTables } from "./given-tables";
import { textCell } from "./number-cell";
import { thrown } from "./thrown";

/** What a formula about one lift of a squad works on. */
export type LiftOfSquad = {
  readonly index: SquadIndex;
  readonly exercise: string;
  readonly asOf: Day;
  readonly given: GivenTables;
  /** Rows of the result, one for each athlete asked about who is in the sets. */
  readonly rows: (
    width: number,
    figures: (athlete: string, at: number) => Outcome<readonly unknown[]>,
  ) => unknown[][];
};

/** Reads the arguments of a formula about one lift; throws what spoils them. */
export function liftOfSquad(args: {
  readonly athletes: unknown;
  readonly sets: unknown;
  readonly exercise: unknown;
  readonly asOf: unknown;
  readonly rules?: unknown;
}): LiftOfSquad {
  const asked = askedAthletes(args.athletes);
  const asOf = thrown(readDayArgument(args.asOf));
  const exercise = thrown(textCell(args.exercise, "exercise"));
  const given = givenTables({ Sets: args.sets, Rules: args.rules }, ["Sets"], asOf);
  const index = squadIndex({ sets: given.rows("Sets") }, asOf);
  const isKnown = (athlete: string) =>
    index.of(athlete) === undefined
      ? knownAthlete(athlete, given.namesUpTo(asOf), given.lookedIn)
      : accept(athlete);
  return {
    index,
    exercise,
    asOf,
    given,
    rows: (width, figures) =>
      rowsForAthletes(
        asked,
        width,
        ({ athlete }, at) => {
          const known = isKnown(athlete);
          return known.ok ? figures(athlete, at) : known;
        },
        given.unused,
      ),
  };
}
