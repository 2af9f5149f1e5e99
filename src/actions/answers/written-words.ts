import { writtenIn } from "../../coaching/diary/symptom-day";
import type { Written } from "../../coaching/diary/unwell-day";
import type { DiaryDay } from "../../coaching/record/diary-day";
import type { JumpAttempt } from "../../coaching/record/jump-attempt";
import type { LiftingSet } from "../../coaching/record/lifting-set";
import { nameKey } from "../../coaching/record/name-key";
import { grouped } from "../../coaching/series/grouped";
import { withNames } from "../../rows/name/name-answers";
import type { TableName } from "../../rows/table-name";
import type { ReadTab } from "../read-tab";
import { type ReadWorkbook, sureEnough } from "../read-workbook";
import type { StateOfSquad } from "../squad/state-of-squad";
import { placeOfWords } from "./place-of-words";

type OfAthlete = Written & { readonly athlete: string };

const besideOf: Partial<Record<TableName, Written["beside"]>> = { Diary: "diary", Runs: "run" };

/** All that was written in words of an athlete (by name key), wherever it stands: in the diary, beside sets, jumps and runs, or where a figure would stand. */
export function writtenWords({
  read,
  asOf,
}: Pick<StateOfSquad, "read" | "asOf">): (key: string) => readonly Written[] {
  const inCells = read.notes.flatMap((note): OfAthlete[] => {
    const { athlete, day: from, span, table, tab } = note;
    if (from === null) return [];
    // Words of a week may be of its last day.
    const day = span === "week" && from <= asOf ? Math.min(from + 6, asOf) : from;
    const said = { ...note, text: note.words, beside: besideOf[table] ?? "set" };
    return [{ ...said, athlete, day, from, at: () => placeOfWords(read, tab, said) }];
  });
  const inRows = read.tabs
    .filter(({ sureness }) => sureness >= sureEnough)
    .flatMap((tab) => withNames(wordsOfRows(read, tab), read.answers.names));
  const all = grouped([...inRows, ...inCells], ({ athlete }) => nameKey(athlete));
  return (key) => all.get(key) ?? [];
}

/** The words of a tab's own records. */
function wordsOfRows(
  read: ReadWorkbook,
  { tab, table, understanding }: ReadTab,
): readonly OfAthlete[] {
  const { reading, columns } = understanding;
  // A yes under "Pain?" says it without a word.
  const expected = ["pain", "note"].flatMap(
    (one) => columns.find(({ field }) => field === one) ?? [],
  );
  const written = (
    { athlete, day, row }: DiaryDay | LiftingSet | JumpAttempt,
    text: string,
    beside: Written["beside"],
  ): OfAthlete => {
    const said = { row, column: expected[0]?.column ?? 1, text, beside };
    return { athlete, day, from: day, text, beside, at: () => placeOfWords(read, tab, said) };
  };
  if (table === "Diary")
    return (reading.records as readonly DiaryDay[]).map((one) => {
      const said = written(one, writtenIn(one), "diary");
      return one.private ? { ...said, at: () => ({ ...said.at(), words: "" }) } : said;
    });
  if (table !== "Sets" && table !== "Jumps") return [];
  return (reading.records as readonly (LiftingSet | JumpAttempt)[]).flatMap((one) =>
    one.note === "" ? [] : [written(one, one.note, "set")],
  );
}
