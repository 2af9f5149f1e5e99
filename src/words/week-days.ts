import type { Day } from "../coaching/calendar/day";
import type { LineReason } from "../coaching/next-week/line-reason";
import type { DayChoice, GymDays } from "../coaching/season/gym-days";
import { grouped } from "../coaching/series/grouped";
import { weekdayWords } from "./days";
import { listWords } from "./pages";
import { raceName } from "./race-name";

const named = (days: readonly DayChoice[]) => listWords(days.map(({ day }) => weekdayWords(day)));

/** The best days of a week, the second best, and each rule with the days it refuses. */
export function gymDaysWords({ best, second, all }: GymDays): string[] {
  const refused = all.flatMap(({ day, refused: rule }) =>
    rule ? [{ day, rule: ruleWords(rule) }] : [],
  );
  const byRule = grouped(refused, ({ rule }) => rule);
  const nearRun = all.some(({ refused: rule }) => rule?.code === "key-run");
  return [
    best.length === 0 ? "No day keeps every rule." : `Best: ${named(best)}.`,
    ...(second.length > 0 ? [`Second best: ${named(second)}.`] : []),
    ...[...byRule].map(
      ([rule, days]) => `${runsOfDays(days.map(({ day }) => day))} refused: ${rule}.`,
    ),
    ...(nearRun ? [evidence] : []),
  ];
}

/** What is known of lifting near a run, said honestly (Robineau et al. 2016; Doma & Deakin 2013). */
const evidence =
  "Lifting six hours from a run costs strength little; a key run the next day may still suffer.";

/** "within 72 h before R4 county track weekend, an A race" */
function ruleWords(rule: Refused): string {
  if (rule.code === "may-not-lift") return "nothing may be proposed then";
  if (rule.code === "key-run") return `within ${rule.limit} h of a key run`;
  const side = rule.code === "before-race" ? "before" : "after";
  return `within ${rule.limit} h ${side} ${raceName(rule.race.race)}, ${raceKind(rule.race.matters ?? "C")}`;
}

type Refused = NonNullable<DayChoice["refused"]>;

/** "Mon 29 Jun and Wed 1 to Fri 3 Jul": days in order, three and more in a row from first to last. */
function runsOfDays(days: readonly Day[]): string {
  const runs: Day[][] = [];
  for (const day of days) {
    const run = runs[runs.length - 1];
    if (run && run[run.length - 1] === day - 1) run.push(day);
    else runs.push([day]);
  }
  return listWords(
    runs.flatMap((run) =>
      run.length < 3
        ? run.map(weekdayWords)
        : [`${weekdayWords(run[0]!)} to ${weekdayWords(run[run.length - 1]!)}`],
    ),
  );
}

/** "an A race" */
const raceKind = (matters: unknown) => `${matters === "A" ? "an A" : `a ${matters}`} race`;

/** "Thu 2 Jul refused: 41 h before R4 county track weekend, an A race (rule: 72 h)." */
export function raceRuleWords(
  { day, hours, race, matters, limit }: LineReason["facts"],
  side: "before" | "after",
): string {
  const whole = Math.floor(Number(hours));
  const apart = side === "after" && whole === 0 ? "the day of" : `${whole} h ${side}`;
  return `${weekdayWords(Number(day))} refused: ${apart} ${raceName(race)}, ${raceKind(matters)} (rule: ${limit} h).`;
}
