import type { Race } from "../../coaching/record/race";
import { seasonPlan } from "../../coaching/season/season-plan";
import { grouped } from "../../coaching/series/grouped";
import { dayWords, weekdayWords } from "../../words/days";
import { listWords, spelled } from "../../words/pages";
import { raceName } from "../../words/race-name";
import type { WeekPaper } from "../page-messages";
import type { PrintableWeek } from "./printable-week";
import { reportedMonday } from "./reported-week";

const shownWeeks = 6;

/** The weeks from the one after the reported one on, as far as the season goes: races, and what the gym does. */
export function weeksAhead(week: PrintableWeek): WeekPaper["weeks"] {
  const { state } = week;
  const monday = reportedMonday(week) + 7;
  const { athletes, races, rules } = state.read.rows;
  const later = races.filter(({ day }) => day >= monday - 7);
  const plan = seasonPlan(athletes, later, monday - 7, shownWeeks + 1);
  return Array.from({ length: shownWeeks }, (_, at) => {
    const first = monday + 7 * at;
    const kinds = (plan?.athletes ?? []).flatMap(({ weeks }) =>
      weeks.filter((one) => one.monday === first).map(({ kind }) => kind),
    );
    const count = (kind: string) => kinds.filter((one) => one === kind).length;
    const some = (size: number) => (size === kinds.length ? "all" : spelled(size));
    const racing = count("race week");
    const after = count("week after");
    const here = races.filter(({ day }) => day >= first && day < first + 7);
    return {
      week: dayWords(first),
      race: raceWords(here),
      gym: [
        racing > 0
          ? `race week for ${some(racing)}: ${rules.raceWeekSets < 1 ? "fewer" : "all"} sets, nothing heavy in the last ${rules.hoursBeforeA} h`
          : "",
        after > 0 ? `week after for ${some(after)}` : "",
        racing + after === 0 ? "ordinary" : "",
      ]
        .filter((part) => part !== "")
        .join("; "),
    };
  });
}

/** "R4 county track weekend, A, Sat 4 and Sun 5 Jul": a race in several rows is named once. */
function raceWords(races: readonly Race[]): string {
  const named = grouped(
    [...races].sort((a, b) => a.day - b.day),
    ({ race, matters }) => `${raceName(race)}, ${matters ?? "C"}`,
  );
  return listWords(
    [...named].map(([name, same]) => {
      const days = [...new Set(same.map(({ day }) => weekdayWords(day)))];
      return `${name}, ${listWords(days)}`;
    }),
  );
}
