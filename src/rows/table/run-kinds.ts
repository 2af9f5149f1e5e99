import type { RunKind } from "../../coaching/record/run";
import { choices } from "../column/choice-column";

/** Tempo and threshold runs are near enough to race pace for laying out a week (common practice). */
export const runKinds = choices<RunKind>({
  easy: "easy|recovery|jog|steady|locker|dauerlauf|regeneration|e",
  long: "long|long run|lang|langer lauf|l",
  interval: "interval|intervals|reps|track|hills|intervall|intervalle|speed|i",
  "race pace": "race pace|tempo|threshold|race|tempolauf|schwelle|renntempo|rp",
});
