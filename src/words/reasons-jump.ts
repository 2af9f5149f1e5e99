import type { JumpTrend } from "../coaching/jumps/jump-trend";
import { dayWords } from "./days";
import { countWords, percentWords, signedPercentWords, trimmed } from "./reasons-figures";

/** The trend's word; `too few rows` says how many more test days. */
export function jumpTrendWords({ word, daysNeeded }: JumpTrend): string {
  return word === "too few rows"
    ? `too few rows (${countWords(Math.max(1, daysNeeded), "more test day")})`
    : word;
}

/**
 * "45.2 cm, −4 % from 47.1 since 12 May, smallest change that matters 3 %, 8 days against 6"; of one
 * that lasts and is smaller, "lasting but less than the 3 % that matters".
 */
export function jumpTrendReason(trend: JumpTrend): string {
  const { baselineCm, nowCm, change, sinceDay, baselineDays, nowDays } = trend;
  if (baselineCm === null || nowCm === null || change === null) return jumpTrendWords(trend);
  const since = sinceDay === null ? "" : ` since ${dayWords(sinceDay)}`;
  const { changed, matters } = changeWords({ ...trend, change });
  return `${trimmed(nowCm, 1)} cm, ${changed} from ${trimmed(baselineCm, 1)}${since}${matters}, ${countWords(nowDays, "day")} against ${baselineDays}`;
}

function changeWords({
  word,
  change,
  smallestChange,
}: Pick<JumpTrend, "word" | "smallestChange"> & { readonly change: number }) {
  const changed = signedPercentWords(100 * change);
  if (smallestChange === null) return { changed, matters: "" };
  const least = percentWords(100 * smallestChange);
  const isLasting = word === "rising" || word === "slipping";
  if (!isLasting || Math.abs(change) >= smallestChange)
    return { changed, matters: `, smallest change that matters ${least}` };
  const less = (size: string) => `, lasting but less than the ${size} that matters`;
  // Rounded to the same figure the lesser would not be read as less.
  return percentWords(100 * change) === least
    ? {
        changed: `${change < 0 ? "−" : "+"}${trimmed(100 * Math.abs(change), 1)} %`,
        matters: less(`${trimmed(100 * smallestChange, 1)} %`),
      }
    : { changed, matters: less(least) };
}
