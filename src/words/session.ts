import type { SessionItem, SwapReason } from "../coaching/next-week/session/session-plan";
import { byFeel } from "./pages";
import { trimmed } from "./reasons-figures";

const swapReasons: Readonly<Record<SwapReason, string>> = {
  "no-rack": "no rack",
  "no-plate": "no plates for it",
  limb: "spared: ask first",
  sore: "sore: ask first",
  "well-below-usual": "last session well below usual",
  "no-jumps": "no jumps until asked about",
};

/**
 * What an assistance exercise is loaded with: the last load done, held opposite the working leg where
 * the exercise says so, or by feel; nothing where it has no weight.
 */
export function loadWords(
  { exercise, kind, loadKg }: Pick<SessionItem, "exercise" | "kind" | "loadKg">,
  mass: (kg: number) => string = (kg) => `${trimmed(kg, 2)} kg`,
): { readonly exercise: string; readonly load: string } {
  const [name = "", held] = exercise.split(/, (?=weight opposite)/);
  const lifted = loadKg !== null || kind === "assistance" || kind === "main lift";
  if (!lifted || /no weight|plank|dead bug/.test(exercise)) return { exercise, load: "" };
  if (loadKg === null) return { exercise, load: byFeel };
  return { exercise: name, load: `${mass(loadKg)}${held ? " in the opposite hand" : ""}` };
}

/** "seated twist 2×8 at 10 kg", "step-up 1×6, by feel, 2–3 in reserve (for … split squat; sore: ask first)" */
export function itemWords(item: SessionItem): string {
  const { sets, reps, insteadOf, reason } = item;
  if (reason === "no-jumps") return `${insteadOf}: ${swapReasons[reason]}`;
  const { exercise, load } = loadWords(item);
  const amount = `${exercise} ${sets}×${reps}${load === "" ? "" : `, ${load}`}`;
  return reason === null
    ? amount
    : `${amount} (for ${insteadOf?.split(",")[0]}; ${swapReasons[reason]})`;
}

/** The assistance of a session in one line, what replaces the main lift first. */
export function assistanceWords(items: readonly SessionItem[]): string {
  const said = items
    .filter(
      ({ kind, reason }) => kind === "assistance" || (kind === "main lift" && reason !== null),
    )
    .map(itemWords);
  const feels = said.filter((one) => one.includes(byFeel)).length;
  if (feels < 2 || feels < said.length) return said.join("; ");
  // The same for all of them is said once.
  return `${said.map((one) => one.replace(`, ${byFeel}`, "")).join("; ")}; ${byFeel}`;
}
