import type { JumpTrend } from "../coaching/jumps/jump-trend";
import { dayWords } from "./days";
import { countWords, percentWords, signedPercentWords, trimmed } from "./reasons-figures";

/** The trend's word; `too few rows` says how many more test days. */
export function jumpTrendWords({ word, daysNeeded }: JumpTrend): string {
  return word === "too few rows"
    ? `too few rows (${countWords(Math.max(1, daysNeeded), "more test day")})`
    : word;
}

/** "45.2 cm, −4 % from 47.1 since 12 May, smallest change to tell 3 %, 8 days against 6" */
export function jumpTrendReason(trend: JumpTrend): string {
  const { baselineCm, nowCm, change, smallestChange, sinceDay, baselineDays, nowDays } = trend;
  if (baselineCm === null || nowCm === null || change === null) return jumpTrendWords(trend);
  const since = sinceDay === null ? "" : ` since ${dayWords(sinceDay)}`;
  const smallest =
    smallestChange === null
      ? ""
      : `, smallest change to tell ${percentWords(100 * smallestChange)}`;
  return `${trimmed(nowCm, 1)} cm, ${signedPercentWords(100 * change)} from ${trimmed(baselineCm, 1)}${since}${smallest}, ${countWords(nowDays, "day")} against ${baselineDays}`;
}
