import { writtenIn } from "../coaching/diary/symptom-day";
import type { Written } from "../coaching/diary/unwell-day";
import { nameKey } from "../coaching/record/name-key";
import { grouped } from "../coaching/series/grouped";
import type { TableName } from "../rows/table-name";
import type { StateOfSquad } from "./state-of-squad";

const besideOf: Partial<Record<TableName, Written["beside"]>> = { Diary: "diary", Runs: "run" };

/** All that was written in words of an athlete (by name key), wherever it stands: in the diary, beside sets, jumps and runs, or where a figure would stand. */
export function writtenWords({
  read,
  index,
  asOf,
}: Pick<StateOfSquad, "read" | "index" | "asOf">): (key: string) => readonly Written[] {
  const { rows, notes } = read;
  const noted = grouped(
    [...rows.sets, ...rows.jumps].filter(({ note }) => note !== ""),
    (row) => nameKey(row.athlete),
  );
  const beside = grouped(notes, ({ athlete }) => nameKey(athlete));
  return (key) => [
    ...(index.of(key)?.diary ?? []).map(
      (row): Written => ({ day: row.day, text: writtenIn(row), beside: "diary" }),
    ),
    ...(noted.get(key) ?? []).map(({ day, note }): Written => ({ day, text: note, beside: "set" })),
    ...(beside.get(key) ?? []).flatMap(({ day, span, words, table }): Written[] => {
      if (day === null) return [];
      // Words of a week may be of its last day.
      const last = span === "week" && day <= asOf ? Math.min(day + 6, asOf) : day;
      return [{ day: last, text: words, beside: besideOf[table] ?? "set" }];
    }),
  ];
}
