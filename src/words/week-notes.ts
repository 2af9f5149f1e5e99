import type { Day } from "../coaching/calendar/day";
import { weekdayWords } from "./days";
import { clock } from "./pages";
import { countWords } from "./reasons-figures";

/** "about half the sets, load kept": what the rule leaves of the sets before an A race. */
export const raceSetsWords = (kept: number): string =>
  `${kept < 1 ? `about ${kept === 0.5 ? "half" : `${Math.round(100 * kept)} % of`} the` : "all"} sets, load kept`;

/** What holds for the whole week's proposal. */
export const weekNoteWords = {
  /** "R4 county track weekend, A race, Sat 4 Jul 11:00."; a race without a letter is treated as C. */
  race: (race: string, matters: string | null, day: Day, startMinute: number | null) =>
    `${race}, ${matters === null ? "no A, B or C written: taken as C" : `${matters} race`}, ${weekdayWords(day)}${startMinute === null ? "" : ` ${clock(startMinute)}`}.`,
  /** "The last rows are of the week to 13 Jul 2025: …": rows of a season before. */
  old: (day: string) =>
    `The last rows are of the week to ${day}: what is proposed goes on from there. For sets after the time off choose the week to come.`,
  racing: (athletes: number, kept: number) =>
    `${countWords(athletes, "athlete")} in race week: ${raceSetsWords(kept)}.`,
  noMovement:
    "No set says how it moved: no load goes up until it is written. Put y or n under “movement ok” in Sets.",
  /** "“Mvt” in Gym may say how sets moved: answer under Set up. Until then no load goes up." */
  movementAsked: (heading: string, tab: string) =>
    `“${heading}” in ${tab} may say how sets moved: answer under Set up. Until then no load goes up.`,
  noPlates:
    "No Plates table: loads are built from pairs of 25, 20, 15, 10, 5, 2.5 and 1.25 kg. Write down what the gym owns.",
  noRacks: "The rule says no racks: the main lift gives way to its alternative.",
} as const;
