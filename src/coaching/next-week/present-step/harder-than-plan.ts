import { leastReserve } from "../../blocks/next-block";
import type { LiftSession } from "./lift-session";

/** So long a session says what its load usually leaves (common practice, no source). */
const comparedDays = 14;

/** What of a session tells how hard it was. */
export type Effort = Pick<LiftSession, "day" | "reps" | "reserve" | "missed" | "timed">;

/**
 * Whether a lighter session was harder than the last one at its plan, which left enough: with fewer
 * repetitions in reserve, where no speed was taken that says more, or with repetitions missed that were
 * done there. Then it was the day that was heavy. As many in reserve as there may be a habit of writing.
 */
export function harderThanPlan(session: Effort, whole: Effort): boolean {
  if (session.day - whole.day > comparedDays || session.reps !== whole.reps) return false;
  if (whole.missed || (whole.reserve ?? leastReserve) < leastReserve) return false;
  return session.missed || (!session.timed && leavesFewer(session, whole));
}

const leavesFewer = ({ reserve }: Effort, whole: Effort) =>
  reserve !== null && reserve < (whole.reserve ?? 0);
