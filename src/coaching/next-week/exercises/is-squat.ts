import { exerciseKey } from "../../record/exercise-key";

/** Whether a lift is a squat, which the rotation is made for and a rack is needed for (common practice, no source). */
export const isSquat = (exercise: string): boolean => /squat|kniebeuge/.test(exerciseKey(exercise));
