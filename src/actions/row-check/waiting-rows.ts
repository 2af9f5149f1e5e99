import type { Day } from "../../coaching/calendar/day";
import { athleteNamed } from "../../coaching/record/athlete-named";
import type { AvailabilitySpell } from "../../coaching/record/availability-spell";
import { nameKey } from "../../coaching/record/name-key";
import { cellOfName } from "../../rows/name/cell-of-name";
import { withNames } from "../../rows/name/name-answers";
import { nameLink } from "../../rows/name/near-name";
import { type Waiting, waitingWords } from "../../words/waiting-rows";
import type { NameQuestion } from "../messages";
import { type ReadWorkbook, sureEnough } from "../read-workbook";
import { onceARow } from "./once-a-row";
import { unknownNames } from "./unknown-names";

/** What waits for the coach's word about one athlete. */
export type WaitingRows = {
  /** Rows under names that may be the athlete's. */
  readonly names: readonly Waiting[];
  /** Rows of Availability that were left out, or stand under a name that may be the athlete's. */
  readonly spells: readonly Waiting[];
  /** Where those stand under such a name: "Availability A2". */
  readonly places: readonly string[];
};

/** Rows that may be an athlete's and do not count yet on a day; looked for once, when first asked. */
export function waitingRows(read: ReadWorkbook, asOf: Day): (athlete: string) => WaitingRows {
  let asked: readonly NameQuestion[] | null = null;
  const spells = withNames(
    onceARow(read.issues.filter(({ issue }) => issue.table === "Availability" && issue.dropsRow)),
    read.answers.names,
  );
  const { athletes } = read.rows;
  return (athlete) => {
    asked ??= unknownNames(read);
    const is = (name: string) => nameKey(name) === nameKey(athlete);
    const mayBe = (name: string) =>
      is(name) || (!athleteNamed(athletes, name) && nameLink(name, athlete) !== null);
    const names = asked.filter(({ near }) => near.some(is));
    const places = limitsUnder(names, read, asOf);
    return {
      names: names.map(({ name, rows }) => waitingWords.name(name, rows, athlete)),
      spells: [
        ...spells
          .filter(({ athlete: whose }) => mayBe(whose))
          .map(({ tab, issue }) => `${tab.name} ${issue.cell}`),
        ...places,
      ].map(waitingWords.spell),
      places,
    };
  };
}

/** Where spells stand that limit somebody under these names, and are not over by a day. */
function limitsUnder(
  names: readonly NameQuestion[],
  { tabs, cells }: ReadWorkbook,
  asOf: Day,
): readonly string[] {
  const keys = new Set(names.map(({ name }) => nameKey(name)));
  return tabs
    .filter(({ table, sureness }) => table === "Availability" && sureness >= sureEnough)
    .flatMap(({ tab, understanding: { columns, reading } }) => {
      const column = columns.find(({ field }) => field === "athlete")?.column ?? null;
      return (reading.records as readonly AvailabilitySpell[])
        .filter(
          ({ athlete, mayDo, until }) =>
            keys.has(nameKey(athlete)) && mayDo !== "full" && (until ?? asOf) >= asOf,
        )
        .map(
          ({ athlete, row }) => `${tab.name} ${cellOfName(cells(tab.id), row, column, athlete)}`,
        );
    });
}
