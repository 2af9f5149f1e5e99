import { type Block, rotation } from "../blocks/block";
import type { Day } from "../calendar/day";
import type { LiftingSet } from "../record/lifting-set";
import { grouped } from "../series/grouped";

/** One day's sets of a lift, and what they say of the session. */
export type LiftSession = {
  readonly day: Day;
  /** Days since a main lift was done before it, this one or another; 0 on the first. */
  readonly gap: number;
  /** All sets of the lift, in order. */
  readonly all: readonly LiftingSet[];
  /** The work sets with a load among them, one at least. */
  readonly work: readonly LiftingSet[];
  /** Load of the first work set, kg: a slow one takes some off the later ones. */
  readonly loadKg: number;
  /** Number of work sets. */
  readonly sets: number;
  /** Most repetitions of a set: 5 or 3 of the rotation, whatever was missed later. */
  readonly reps: number;
  /** Every set moved well, one did not, or it was not recorded. */
  readonly movedWell: boolean | null;
  /** Least repetitions in reserve written down; null when none were. */
  readonly reserve: number | null;
};

/**
 * The sessions of one athlete's lift, in order; days without a work set with a load are none.
 *
 * @param gymDays days with a main lift, this one or another, in order
 */
export function liftSessions(
  lift: readonly LiftingSet[],
  gymDays: readonly Day[],
): readonly LiftSession[] {
  return [...grouped(lift, ({ day }) => day)].flatMap(([day, all]) => {
    const work = all.filter(({ kind, loadKg }) => kind === "work" && loadKg !== null);
    const [first] = work;
    if (first === undefined) return [];
    const reserves = work.flatMap(({ repsInReserve }) => repsInReserve ?? []);
    return {
      day,
      gap: day - (gymDays[gymDays.indexOf(day) - 1] ?? day),
      all,
      work,
      loadKg: first.loadKg!,
      sets: work.length,
      reps: Math.max(...work.map(repsDone)) > 3 ? 5 : 3,
      movedWell: allOf(work.map(({ movedWell }) => movedWell)),
      reserve: reserves.length === 0 ? null : Math.min(...reserves),
    };
  });
}

/** The block of the rotation a session was, by its repetitions and its number of sets. */
export function blockOf({ sets, reps }: Pick<LiftSession, "sets" | "reps">): Block {
  const [many, few] = reps > 3 ? rotation.slice(0, 2) : rotation.slice(2);
  return sets >= 4 ? many! : few!;
}

/** Whether so many sets of so many repetitions were done; null when repetitions were not recorded. */
export function volumeDone({ work }: LiftSession, sets: number, reps: number): boolean | null {
  if (work.some((set) => set.reps === null && set.repSpeeds.length === 0)) return null;
  return work.length >= sets && work.every((set) => repsDone(set) >= reps);
}

/** Repetitions of a set: as written, else as many as have a speed. */
export const repsDone = ({ reps, repSpeeds }: LiftingSet) => reps ?? repSpeeds.length;

/** True when all are, false when one is not, null when one is not known and none is false. */
function allOf(values: readonly (boolean | null)[]): boolean | null {
  if (values.includes(false)) return false;
  return values.includes(null) ? null : true;
}
