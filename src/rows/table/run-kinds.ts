import type { RunKind } from "../../coaching/record/run";
import { choices } from "../column/choice-column";

/** Tempo and threshold runs are near enough to race pace for laying out a week (common practice). */
export const runKinds = choices<RunKind>({
  easy: "easy|recovery|jog|steady|locker|dauerlauf|regeneration|e",
  long: "long|long run|lang|langer lauf|l",
  interval: "interval|intervals|reps|track|hills|intervall|intervalle|speed|i",
  "race pace": "race pace|tempo|threshold|race|tempolauf|schwelle|renntempo|rp",
});

const repeats = /\b\d{1,2}\s*[x×]\s*\d/;

/** The one kind that a longer text names, "10k easy", "8x1k"; null when it names none or several. */
export function runKindIn(words: string): RunKind | null {
  const kinds = new Set<RunKind>(repeats.test(words) ? ["interval"] : []);
  // A letter alone is no kind among other words.
  for (const word of words.split(/[^\p{L}]+/u)) {
    const kind = word.length > 1 ? runKinds.get(word) : undefined;
    if (kind !== undefined) kinds.add(kind);
  }
  return kinds.size === 1 ? [...kinds][0]! : null;
}
