import { bodyParts } from "../availability/body-part";
import type { Day } from "../calendar/day";
import type { AvailabilitySpell } from "../record/availability-spell";
import { symptomWords } from "./symptom-words";

/** Days a word of pain or illness is asked after before sets are written (common practice, no source). */
const recentDays = 3;
/** Soreness is rated by itself, and every runner has some in the legs. */
const ofSoreness = /^(?:sore|soreness|stiff|stiffness|tender|tenderness|muskelkater|steif)$/;

/** Beside a set "chest up" is a cue, and it is the bar that is cold; beside a run the weather is. */
const cues = { diary: /^$/, set: /^(?:chest|cold|brust.*)$/, run: /^cold$/ } as const;

/** What was written on a day, in the diary or beside a set, jump or run. */
export type Written = {
  readonly day: Day;
  readonly text: string;
  readonly beside: keyof typeof cues;
};

/**
 * The latest of the last three days whose words speak of pain or illness; null when none does, or when
 * Availability has said since what is allowed. Words of soreness count where they name a foot, calf,
 * Achilles tendon or anything above the legs.
 *
 * @param written of one athlete, in any order
 * @param spells of the same athlete
 */
export function unwellDay(
  written: readonly Written[],
  spells: readonly Pick<AvailabilitySpell, "from">[],
  asOf: Day,
): Day | null {
  const answered = Math.max(...spells.map(({ from }) => (from > asOf ? -Infinity : from)));
  const days = written.flatMap(({ day, text, beside }) => {
    if (day > asOf || day <= asOf - recentDays || day <= answered) return [];
    const symptoms = symptomWords(text).filter((word) => !cues[beside].test(word));
    const elsewhere = symptoms.length > 0 && bodyParts(text).some((part) => part !== "leg");
    return elsewhere || symptoms.some((word) => !ofSoreness.test(word)) ? [day] : [];
  });
  return days.length === 0 ? null : Math.max(...days);
}
