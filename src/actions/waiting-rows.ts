import { athleteNamed } from "../coaching/record/athlete-named";
import { nameKey } from "../coaching/record/name-key";
import { withNames } from "../rows/name/name-answers";
import { nameLink } from "../rows/name/near-name";
import { type Waiting, waitingWords } from "../words/waiting-rows";
import type { NameQuestion } from "./messages";
import type { ReadWorkbook } from "./read-workbook";
import { unknownNames } from "./unknown-names";

/** What waits for the coach's word about one athlete. */
export type WaitingRows = {
  /** Rows under names that may be the athlete's. */
  readonly names: readonly Waiting[];
  /** Rows of Availability that were left out. */
  readonly spells: readonly Waiting[];
};

/** Rows that may be an athlete's and do not count yet; looked for once, when first asked. */
export function waitingRows(read: ReadWorkbook): (athlete: string) => WaitingRows {
  let asked: readonly NameQuestion[] | null = null;
  const spells = withNames(
    read.issues.filter(({ issue }) => issue.table === "Availability" && issue.dropsRow),
    read.answers.names,
  );
  const { athletes } = read.rows;
  return (athlete) => {
    asked ??= unknownNames(read);
    const is = (name: string) => nameKey(name) === nameKey(athlete);
    const mayBe = (name: string) =>
      is(name) || (!athleteNamed(athletes, name) && nameLink(name, athlete) !== null);
    return {
      names: asked
        .filter(({ near }) => near.some(is))
        .map(({ name, rows }) => waitingWords.name(name, rows, athlete)),
      spells: spells
        .filter(({ athlete: whose }) => mayBe(whose))
        .map(({ tab, issue }) => waitingWords.spell(`${tab.name} ${issue.cell}`)),
    };
  };
}
