import type { SeasonHold } from "../coaching/hold/season-hold";
import { spelled } from "./pages";
import { countWords } from "./reasons-figures";

/**
 * "Of 12 athletes two are slipping, two rising, eight holding. About one calm season in 10 is called
 * slipping by chance, and at most as many rising; with 12 expect about one athlete of each a season."
 *
 * @param falseFlagRate share of calm seasons with a false flag, for one athlete and direction
 */
export function squadWords(squad: readonly SeasonHold[], falseFlagRate: number): string {
  const count = (...words: readonly string[]) =>
    squad.filter(({ word }) => words.includes(word)).length;
  const groups = [
    [count("slipping"), "slipping"],
    [count("rising"), "rising"],
    [count("holding", "level"), "holding"],
    [count("too few rows"), "with too few rows"],
  ] as const;
  const named = groups.filter(([size]) => size > 0);
  const list = named
    .map(
      ([size, word], i) =>
        `${spelled(size)} ${i === 0 ? (size === 1 ? "is " : "are ") : ""}${word}`,
    )
    .join(", ");
  const expected = squad.length * falseFlagRate;
  const flags =
    expected < 0.5
      ? "either in few seasons"
      : `about ${spelled(Math.max(1, Math.round(expected)))} ${Math.round(expected) <= 1 ? "athlete" : "athletes"} of each a season`;
  return `Of ${countWords(squad.length, "athlete")} ${list}. About one calm season in ${Math.round(1 / falseFlagRate)} is called slipping by chance, and at most as many rising; with ${squad.length} expect ${flags}.`;
}
