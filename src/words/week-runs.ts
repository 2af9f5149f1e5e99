import { countWords } from "./reasons-figures";

/** What a week's run load rests on, and why it has no monotony where all seven days are alike. */
export function weekRunsWords(runs: number, allAlike: boolean): string {
  if (runs === 0) return "no run in the rows of these seven days";
  const rests = countWords(runs, "run");
  return allAlike ? `${rests}; all seven days alike, so no monotony` : rests;
}
