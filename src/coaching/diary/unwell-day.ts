import { bodyParts } from "../availability/body-part";
import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import { symptomWords } from "./symptom-words";

/** Days a word of pain or illness is asked after before sets are written (common practice, no source). */
const recentDays = 3;
/** Soreness is rated by itself, and every runner has some in the legs. */
const ofSoreness = /^(?:sore|soreness|stiff|stiffness|tender|tenderness|muskelkater|steif)$/;

/**
 * The latest of the last three days whose words speak of pain or illness; null when none does. Words of
 * soreness count where they name a foot, calf, Achilles tendon or anything above the legs.
 */
export function unwellDay(diary: readonly DiaryDay[], asOf: Day): Day | null {
  const days = diary.flatMap(({ day, note, newToday, foodNote }) => {
    if (day > asOf || day <= asOf - recentDays) return [];
    const said = [newToday, foodNote, note].join(". ");
    const symptoms = symptomWords(said);
    const elsewhere = symptoms.length > 0 && bodyParts(said).some((part) => part !== "leg");
    return elsewhere || symptoms.some((word) => !ofSoreness.test(word)) ? [day] : [];
  });
  return days.length === 0 ? null : Math.max(...days);
}
