import { bodyParts } from "../availability/body-part";
import { hurtParts } from "./hurt-parts";
import { symptomWords } from "./symptom-words";

/** Soreness is rated by itself, and every runner has some in the legs. */
const ofSoreness = /^(?:sore|soreness|stiff|stiffness|tender|tenderness|muskelkater|steif)$/;

/** Beside a set "chest up" is a cue, and it is the bar that is cold; beside a run the weather is. */
const cues = {
  diary: /^$/,
  // A side names the leg that a set was done with, a part alone what it was for.
  set: /^(?:chest|cold|brust.*|\S+ (?:leg|arm|foot|hand)s?|knee|hip|heel|hamstring|calf|knie|hüfte|ferse|wade)$/,
  run: /^cold$/,
} as const;

/** Where words stand: in the diary, or beside a set, jump or run. */
export type Beside = keyof typeof cues;

/**
 * Whether words speak of pain or illness; those of soreness count where they name a foot, calf,
 * Achilles tendon or anything above the legs.
 */
export function saysUnwell(text: string, beside: Beside): boolean {
  const isNoCue = (word: string) => !cues[beside].test(word);
  const symptoms = symptomWords(text).filter(isNoCue);
  const elsewhere = symptoms.length > 0 && bodyParts(text).some((part) => part !== "leg");
  return (
    elsewhere || symptoms.some((word) => !ofSoreness.test(word)) || hurtParts(text).some(isNoCue)
  );
}
