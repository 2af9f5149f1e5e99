import type { Day } from "../coaching/calendar/day";
import { weekdayWords } from "./days";
import { clock } from "./pages";
import { countWords } from "./reasons-figures";

/** Sets cut for a race, as they were and as they become. */
export type SetsCut = { readonly from: number; readonly to: number };

/** ": 3 sets become 2, 5 become 2", each once; "" where none are cut. */
export function setsCutWords(cuts: readonly SetsCut[]): string {
  const said = [...cuts]
    .sort((a, b) => a.from - b.from || a.to - b.to)
    .map(({ from, to }) => `${from} become ${to}`);
  // One set is never cut: of several at least one stays.
  return said.length === 0 ? "" : `: ${[...new Set(said)].join(", ").replace(" ", " sets ")}`;
}

/** What holds for the whole week's proposal. */
export const weekNoteWords = {
  /** "R4 county track weekend, A race, Sat 4 Jul 11:00."; a race without a letter is treated as C. */
  race: (race: string, matters: string | null, day: Day, startMinute: number | null) =>
    `${race}, ${matters === null ? "no A, B or C written: taken as C" : `${matters} race`}, ${weekdayWords(day)}${startMinute === null ? "" : ` ${clock(startMinute)}`}.`,
  /** "The last rows are of the week to 13 Jul 2025: …": rows of a season before. */
  old: (day: string, toCome: string) =>
    `The last rows are of the week to ${day}: what is proposed goes on from there. For a first week back after time off, choose the week of ${toCome}.`,
  racing: (athletes: number, cuts: readonly SetsCut[]) =>
    `${countWords(athletes, "athlete")} in race week${setsCutWords(cuts)}.`,
  noMovement:
    "No set says how it moved: no load goes up until it is written. Put y or n under “movement ok” in Sets.",
  /** "“Mvt” in Gym may say how sets moved: answer under Set up. Until then no load goes up." */
  movementAsked: (heading: string, tab: string) =>
    `“${heading}” in ${tab} may say how sets moved: answer under Set up. Until then no load goes up.`,
  noPlates:
    "No Plates table: loads are built from pairs of 25, 20, 15, 10, 5, 2.5 and 1.25 kg. Write down what the gym owns.",
  noRacks: "The rule says no racks: the main lift gives way to its alternative.",
} as const;
