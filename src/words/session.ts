import type { DropHeight } from "../coaching/next-week/drop-height";
import type { SessionItem, SwapReason } from "../coaching/next-week/session-plan";
import { trimmed } from "./reasons-figures";
import { stackWords } from "./week";

const swapReasons: Readonly<Record<SwapReason, string>> = {
  "not-available": "not available",
  sore: "sore: ask first",
  "well-below-usual": "last session well below usual",
  "no-jumps": "no jumps until asked about",
};

/** "seated twist 2×8", "step-up 1×6 (for rear-foot-elevated split squat: sore: ask first)" */
export function itemWords({ exercise, sets, reps, insteadOf, reason }: SessionItem): string {
  if (reason === "no-jumps") return `${insteadOf}: ${swapReasons[reason]}`;
  const amount = `${exercise} ${sets}×${reps}`;
  return reason === null
    ? amount
    : `${amount} (for ${insteadOf?.split(",")[0]}; ${swapReasons[reason]})`;
}

/** The assistance of a session in one line. */
export function assistanceWords(items: readonly SessionItem[]): string {
  return items
    .filter(({ kind }) => kind === "assistance")
    .map(itemWords)
    .join("; ");
}

/** "from 30 cm, 6×20": the height at most and the plates for it, with the reason when it changed. */
export function dropWords({ cm, stackKg, reason }: DropHeight): string {
  const plates = stackKg.length === 0 ? "" : `, ${stackWords(stackKg)}`;
  const why = {
    "as last": "",
    "first drop": "",
    "contact long": ": lower, contact was past 0.25 s",
    novice: ": novices from 20 cm or less",
  }[reason];
  return `from ${trimmed(cm, 1)} cm${plates}${why}`;
}
