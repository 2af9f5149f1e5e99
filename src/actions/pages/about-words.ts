import { racesOf } from "../../coaching/diary/races-of";
import type { ProposedLine } from "../../coaching/next-week/propose-line";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { weekdayWords } from "../../words/days";
import { raceName } from "../../words/race-name";
import type { PrintableWeek } from "./printable-week";

/** "Race week: R4, Sat 4 Jul." and the like for one athlete. */
export function aboutWords(
  { state, monday }: PrintableWeek,
  { athlete, kind, reasons }: ProposedLine,
): string {
  const { rows } = state.read;
  const about = athleteNamed(rows.athletes, athlete) ?? null;
  const races = racesOf(rows.races, athlete, about)
    .filter(({ day }) => day >= monday && day < monday + 7)
    .sort((a, b) => a.day - b.day);
  const [first] = races;
  if (first) {
    const name = raceName(first.race);
    return `${kind === "race week" ? "Race week" : "Race"}: ${name}, ${weekdayWords(first.day)}.`;
  }
  const ahead = reasons.find(({ code }) => code === "race-near");
  if (ahead) {
    const { race, on } = ahead.facts;
    return `Race: ${raceName(race)}, ${weekdayWords(Number(on))}.`;
  }
  return kind === "week after" ? "Week after a race." : "Ordinary week.";
}
