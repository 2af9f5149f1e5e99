import type { Refusal } from "../outcome";
import { argumentRefusals } from "./refusals-arguments";
import { figureRefusals } from "./refusals-figures";
import { rowRefusals } from "./refusals-rows";
import { statisticsRefusals } from "./refusals-statistics";

/** Facts of a refusal as text, by name. */
export type Say = (facts: Refusal["facts"]) => string;

const sentences: Readonly<Record<string, Say>> = {
  ...argumentRefusals,
  ...figureRefusals,
  ...rowRefusals,
  ...statisticsRefusals,
};

/** Why there is no figure, and what to do, in one or two sentences. */
export function refusalSentence({ code, facts }: Refusal): string {
  const say = sentences[code];
  // A code without its sentence is our own mistake; a test walks every code.
  if (!say) throw new Error(`no sentence for the refusal ${code}`);
  return say(facts);
}
