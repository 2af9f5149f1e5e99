import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import { hurtParts } from "./hurt-parts";
import { symptomWords } from "./symptom-words";

/** A diary day whose words speak of pain or illness. */
export type SymptomDay = {
  readonly day: Day;
  readonly symptoms: readonly string[];
  /** Private rows give their day, not their words. */
  readonly private: boolean;
};

/** All that is written in words in a row of the diary. */
export function writtenIn({ newToday, foodNote, note }: DiaryDay): string {
  return [newToday, foodNote, note].join(". ");
}

/** Days to be looked at before any figure, latest first; they feed no figure. */
export function symptomDays(diary: readonly DiaryDay[], asOf: Day): readonly SymptomDay[] {
  return diary
    .filter(({ day }) => day <= asOf)
    .flatMap((row) => {
      const { day, private: hidden } = row;
      const said = writtenIn(row);
      const symptoms = [...symptomWords(said), ...hurtParts(said)];
      return symptoms.length === 0
        ? []
        : [{ day, symptoms: hidden ? [] : symptoms, private: hidden }];
    })
    .sort((a, b) => b.day - a.day);
}
