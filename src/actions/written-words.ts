import { writtenIn } from "../coaching/diary/symptom-day";
import type { Written } from "../coaching/diary/unwell-day";
import type { DiaryDay } from "../coaching/record/diary-day";
import type { JumpAttempt } from "../coaching/record/jump-attempt";
import type { LiftingSet } from "../coaching/record/lifting-set";
import { nameKey } from "../coaching/record/name-key";
import { grouped } from "../coaching/series/grouped";
import { withNames } from "../rows/name/name-answers";
import type { TableName } from "../rows/table-name";
import { type ReadTab, type ReadWorkbook, sureEnough } from "./read-workbook";
import type { StateOfSquad } from "./state-of-squad";
import { wordsCell } from "./words-cell";

type OfAthlete = Written & { readonly athlete: string };

const besideOf: Partial<Record<TableName, Written["beside"]>> = { Diary: "diary", Runs: "run" };

/** All that was written in words of an athlete (by name key), wherever it stands: in the diary, beside sets, jumps and runs, or where a figure would stand. */
export function writtenWords({
  read,
  asOf,
}: Pick<StateOfSquad, "read" | "asOf">): (key: string) => readonly Written[] {
  const inCells = read.notes.flatMap((note): OfAthlete[] => {
    const { athlete, day, span, words, table, tab, cell } = note;
    if (day === null) return [];
    // Words of a week may be of its last day.
    const last = span === "week" && day <= asOf ? Math.min(day + 6, asOf) : day;
    const place = () => `${tab.name} ${cell}`;
    return [{ athlete, day: last, text: words, beside: besideOf[table] ?? "set", place }];
  });
  const inRows = read.tabs
    .filter(({ sureness }) => sureness >= sureEnough)
    .flatMap((tab) => withNames(wordsOfRows(read, tab), read.answers.names));
  const all = grouped([...inRows, ...inCells], ({ athlete }) => nameKey(athlete));
  return (key) => all.get(key) ?? [];
}

/** The words of a tab's own records. */
function wordsOfRows(
  { cells }: ReadWorkbook,
  { tab, table, understanding }: ReadTab,
): readonly OfAthlete[] {
  const { reading, columns } = understanding;
  const written = (
    { athlete, day, row }: DiaryDay | LiftingSet | JumpAttempt,
    text: string,
    beside: Written["beside"],
  ): OfAthlete => {
    const place = () => `${tab.name} ${wordsCell(cells(tab.id), { row, columns, text, beside })}`;
    return { athlete, day, text, beside, place };
  };
  if (table === "Diary")
    return (reading.records as readonly DiaryDay[]).map((one) =>
      written(one, writtenIn(one), "diary"),
    );
  if (table !== "Sets" && table !== "Jumps") return [];
  return (reading.records as readonly (LiftingSet | JumpAttempt)[]).flatMap((one) =>
    one.note === "" ? [] : [written(one, one.note, "set")],
  );
}
