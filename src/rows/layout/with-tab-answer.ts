import type { TabAnswers } from "./tab-answers";
import { type TabMatter, tabChoices } from "./tab-question";

/** Bars in use are between these, kg. */
const barBounds = { low: 2, high: 40 } as const;

/** Adds one answer, in the words it was chosen or typed in; null when the matter cannot take it. */
export function withTabAnswer(
  before: TabAnswers,
  about: TabMatter,
  said: string,
  answer: string,
): TabAnswers | null {
  const words = answer.trim();
  const choices = tabChoices[about];
  if (words === "" || (choices.length > 0 && !choices.includes(words))) return null;
  const first = words === choices[0];
  switch (about) {
    case "scheme order":
      return { ...before, setsFirst: first };
    case "exercise":
      return { ...before, exercise: words };
    case "athlete":
      return { ...before, athlete: words };
    case "set speed":
      return { ...before, setSpeed: first ? "mean of reps" : "best rep" };
    case "speeds":
      return { ...before, speeds: first ? "each set" : "each rep" };
    case "runs":
      return { ...before, runs: first ? "minutes" : "km" };
    case "bar": {
      const kg = Number(words.replace(",", ".").replace(/\s*kg$/i, ""));
      const possible = kg >= barBounds.low && kg <= barBounds.high;
      return possible ? { ...before, bars: new Map(before.bars).set(said, kg) } : null;
    }
  }
}
