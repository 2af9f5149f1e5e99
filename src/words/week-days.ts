import type { LineReason } from "../coaching/next-week/line-reason";
import type { DayChoice, GymDays } from "../coaching/season/gym-days";
import { weekdayWords } from "./days";
import { listWords } from "./pages";
import { raceName } from "./race-name";
import { trimmed } from "./reasons-figures";

const named = (days: readonly DayChoice[]) => listWords(days.map(({ day }) => weekdayWords(day)));

/** The best days of a week, the second best, and each refused day with the rule it breaks. */
export function gymDaysWords({ best, second, all }: GymDays): string[] {
  const refused = all.flatMap((one) => refusedWords(one) ?? []);
  const nearRun = all.some(({ refused: rule }) => rule?.code === "key-run");
  return [
    best.length === 0 ? "No day keeps every rule." : `Best: ${named(best)}.`,
    ...(second.length > 0 ? [`Second best: ${named(second)}.`] : []),
    ...refused,
    ...(nearRun ? [evidence] : []),
  ];
}

/** What is known of lifting near a run, said honestly (Robineau et al. 2016; Doma & Deakin 2013). */
const evidence =
  "Lifting six hours from a run costs strength little; a key run the next day may still suffer.";

function refusedWords({ day, refused }: DayChoice): string | null {
  if (refused === null) return null;
  const start = `${weekdayWords(day)} refused: `;
  switch (refused.code) {
    case "may-not-lift":
      return `${start}nothing may be proposed that day.`;
    case "key-run":
      return `${start}${trimmed(refused.hours, 1)} h from a key run (rule: ${refused.limit} h).`;
    default: {
      const { hours, limit, race } = refused;
      const facts = { day, hours, limit, race: race.race, matters: race.matters ?? "C" };
      return raceRuleWords(facts, refused.code === "before-race" ? "before" : "after");
    }
  }
}

/** "Thu 2 Jul refused: 41 h before R4 county track weekend, an A race (rule: 72 h)." */
export function raceRuleWords(
  { day, hours, race, matters, limit }: LineReason["facts"],
  side: "before" | "after",
): string {
  const kind = matters === "A" ? "an A" : `a ${matters}`;
  const whole = Math.floor(Number(hours));
  const apart = side === "after" && whole === 0 ? "the day of" : `${whole} h ${side}`;
  return `${weekdayWords(Number(day))} refused: ${apart} ${raceName(race)}, ${kind} race (rule: ${limit} h).`;
}
