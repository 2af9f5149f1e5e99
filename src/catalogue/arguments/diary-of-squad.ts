import type { Day } from "../../coaching/calendar/day";
import type { DiaryOfAthlete } from "../../coaching/diary/what-differed";
import { sessionStarts } from "../../coaching/diary/written-after";
import { nameKey } from "../../coaching/record/name-key";
import { squadIndex } from "../../coaching/series/squad-index";
import type { Outcome } from "../../outcome";
import type { AskedAthlete, AthletesArgument } from "../../rows/argument/athletes-argument";
import { readDayArgument } from "../../rows/argument/day-argument";
import type { TableName } from "../../rows/table-name";
import { askedAthletes, knownAthlete } from "./asked-athletes";
import { type GivenTables, givenTables } from "./given-tables";
import { holdGiven } from "./hold-given";
import { severalRowsForAthletes } from "./several-rows";
import { thrown } from "./thrown";

/** A squad's seasons with the diary and runs beside them. */
export type DiaryOfSquad = {
  readonly asked: AthletesArgument;
  readonly asOf: Day;
  readonly given: GivenTables;
  /** Rows of the result, several for each athlete asked about whom the rows name. */
  readonly rows: (
    width: number,
    figures: (asked: AskedAthlete) => Outcome<readonly (readonly unknown[])[]>,
  ) => unknown[][];
  readonly of: (athlete: string) => DiaryOfAthlete;
};

/** Reads the arguments of a formula about the diary; throws what spoils them. */
export function diaryOfSquad(
  athletes: unknown,
  asOfCell: unknown,
  cells: Readonly<Partial<Record<TableName, unknown>>>,
): DiaryOfSquad {
  const asked = askedAthletes(athletes);
  const asOf = thrown(readDayArgument(asOfCell));
  const given = givenTables(cells, [], asOf);
  const sets = given.rows("Sets");
  const index = squadIndex({ sets, jumps: given.rows("Jumps"), diary: given.rows("Diary") }, asOf);
  const hold = holdGiven(index, asked, given);
  const names = given.namesUpTo(asOf);
  const ofAthlete = <Row extends { readonly athlete: string }>(rows: readonly Row[], key: string) =>
    rows.filter(({ athlete }) => nameKey(athlete) === key);
  return {
    asked,
    asOf,
    given,
    rows: (width, figures) =>
      severalRowsForAthletes(
        asked,
        width,
        (one) => {
          const known = knownAthlete(one.athlete, names, given.lookedIn);
          return known.ok ? figures(one) : known;
        },
        given.unused,
      ),
    of: (athlete) => {
      const key = nameKey(athlete);
      return {
        athlete,
        hold: hold.of(athlete),
        diary: index.of(athlete)?.diary ?? [],
        runs: ofAthlete(given.rows("Runs"), key).filter(({ day }) => day <= asOf),
        starts: sessionStarts(ofAthlete(sets, key)),
      };
    },
  };
}
