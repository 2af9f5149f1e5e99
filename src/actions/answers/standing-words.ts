import type { StandingWords } from "../../coaching/availability/standing-absences";
import type { Athlete } from "../../coaching/record/athlete";
import { nameKey } from "../../coaching/record/name-key";
import { grouped } from "../../coaching/series/grouped";
import { lastDaySaid } from "../../rows/value/last-day-said";
import { sureEnough } from "../read-workbook";
import type { StateOfSquad } from "../squad/state-of-squad";
import { placeOfWords } from "./place-of-words";

type OfAthlete = StandingWords & { readonly athlete: string };

/** What is written of an athlete (by name key) beside no day: in the Athletes table, and as notes of a whole table. */
export function standingWords({
  read,
  asOf,
}: Pick<StateOfSquad, "read" | "asOf">): (key: string) => readonly StandingWords[] {
  const inRows = read.tabs.flatMap(({ tab, table, sureness, understanding }) => {
    if (table !== "Athletes" || sureness < sureEnough) return [];
    const { reading, columns } = understanding;
    const column = columns.find(({ field }) => field === "notes")?.column ?? 1;
    return (reading.records as readonly Athlete[]).flatMap(
      ({ athlete, row, notes: text }): OfAthlete[] => {
        const said = { row, column, text, beside: "diary" } as const;
        const at = () => placeOfWords(read, tab, said);
        return text === "" ? [] : [{ athlete, text, until: lastDaySaid(text, asOf), at }];
      },
    );
  });
  const inCells = read.notes.flatMap(({ athlete, day, words, cell, tab }): OfAthlete[] => {
    const at = () => ({ place: `${tab.name} ${cell}`, words });
    return day === null ? [{ athlete, text: words, until: lastDaySaid(words, asOf), at }] : [];
  });
  const all = grouped([...inRows, ...inCells], ({ athlete }) => nameKey(athlete));
  return (key) => all.get(key) ?? [];
}
