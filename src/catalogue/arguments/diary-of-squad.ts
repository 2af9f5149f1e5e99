import type { Day } from "../../coaching/calendar/day";
import type { DiaryOfAthlete } from "../../coaching/diary/what-differed";
import { sessionStarts } from "../../coaching/diary/written-after";
import { squadHold } from "../../coaching/hold/squad-hold";
import { nameKey } from "../../coaching/record/name-key";
import { squadIndex } from "../../coaching/series/squad-index";
import type { AthletesArgument } from "../../rows/argument/athletes-argument";
import { readDayArgument } from "../../rows/argument/day-argument";
import type { TableName } from "../../rows/table-name";
import { askedAthletes } from "./asked-athletes";
import { type GivenTables, givenTables } from "./given-tables";
import { thrown } from "./thrown";

/** A squad's seasons with the diary and runs beside them. */
export type DiaryOfSquad = {
  readonly asked: AthletesArgument;
  readonly asOf: Day;
  readonly given: GivenTables;
  readonly names: ReadonlyMap<string, string>;
  readonly of: (athlete: string) => DiaryOfAthlete;
};

/** Reads the arguments of a formula about the diary; throws what spoils them. */
export function diaryOfSquad(
  athletes: unknown,
  asOfCell: unknown,
  cells: Readonly<Partial<Record<TableName, unknown>>>,
  needed: readonly TableName[],
): DiaryOfSquad {
  const asked = askedAthletes(athletes);
  const asOf = thrown(readDayArgument(asOfCell));
  const given = givenTables(cells, needed, asOf);
  const sets = given.rows("Sets");
  const index = squadIndex({ sets, jumps: given.rows("Jumps"), diary: given.rows("Diary") }, asOf);
  const hold = squadHold({
    index,
    plates: given.rows("Plates"),
    athletes: asked.table?.records ?? [],
    rules: given.rules,
  });
  const ofAthlete = <Row extends { readonly athlete: string }>(rows: readonly Row[], key: string) =>
    rows.filter(({ athlete }) => nameKey(athlete) === key);
  return {
    asked,
    asOf,
    given,
    names: given.namesUpTo(asOf),
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
