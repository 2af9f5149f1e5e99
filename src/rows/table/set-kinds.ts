import type { SetKind } from "../../coaching/record/lifting-set";
import { choices } from "../column/choice-column";

/** Words for the kind of a set; `last w/u` and the like name the marker only in their own column. */
export const setKinds = choices<SetKind>({
  "warm-up":
    "warm-up|warm up|warmup|wu|w/u|w-u|wup|aufwärmen|aufwärmsatz|aw|warm|échauffement|calentamiento|riscaldamento|aquecimento|opwarmen|uppvärmning",
  marker: "marker|marker set|m|mk|markersatz|test set|last w/u|last wu|last warm-up",
  work: "work|work set|w|ws|working|working set|top|top set|main|arbeit|arbeitssatz|back-off|backoff|amrap|drop",
});

export const speedKinds = choices<"mean" | "peak">({
  mean: "mean|avg|average|mean speed|mean velocity|mittel|mittelwert|mv",
  peak: "peak|peak speed|peak velocity|max|spitze|pv|top",
});

/** Stands for a heading where nothing says what one speed beside a load is. */
export const speedNotSaid = "speed, not said which";

/** What a speed heading says about its figures. */
export function speedMeaning(words: string): {
  readonly speedIs: "mean" | "peak" | null;
  readonly setSpeedIs: "mean of reps" | "best rep" | null;
  /** The cell lists one figure a repetition. */
  readonly ofReps: boolean;
} {
  const best = /\b(best|fastest|top|schnellste|beste)\b/.test(words);
  const peak = /\b(peak|spitze)\b/.test(words);
  const mean = /\b(mean|avg|average|mittel|mittlere|mv)\b/.test(words);
  return {
    speedIs: peak ? "peak" : mean ? "mean" : null,
    setSpeedIs: best ? "best rep" : words === speedNotSaid ? null : "mean of reps",
    ofReps: /\b(rep speeds|speeds|velocities|each rep|per rep|je wdh)\b/.test(words),
  };
}
