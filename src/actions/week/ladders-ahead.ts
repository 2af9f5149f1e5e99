import { blockText } from "../../coaching/blocks/block";
import type { OutlookWeek, ProposedLine } from "../../coaching/next-week/proposed-line";
import { grouped } from "../../coaching/series/grouped";
import { dayWords } from "../../words/days";
import type { WeekLine } from "../messages";
import { hundredths } from "./planned-lines";

/** The weeks ahead by lift, those of the lift the athlete is on first. */
export function laddersAhead({
  exercise: main,
  outlook,
}: Pick<ProposedLine, "exercise" | "outlook">): WeekLine["ahead"] {
  const isOther = ({ exercise }: OutlookWeek) => Number(exercise !== main);
  const ordered = [...outlook].sort((a, b) => isOther(a) - isOther(b));
  return [...grouped(ordered, ({ exercise }) => exercise)].map(([lift, weeks]) => ({
    lift,
    steps: weeks.map(({ monday, block, sets, loadKg }) => ({
      week: dayWords(monday),
      block: blockText({ sets, reps: block.reps }),
      loadKg: hundredths(loadKg),
    })),
  }));
}
