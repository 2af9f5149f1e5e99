import { type Block, rotation } from "../../blocks/block";
import type { Day } from "../../calendar/day";
import type { LiftingSet } from "../../record/lifting-set";
import { grouped } from "../../series/grouped";
import { heaviestOfDay } from "./heaviest-of-day";

/** One day's session of a lift, and what they say of the session. */
export type LiftSession = {
  readonly day: Day;
  /** Days off, as `daysOff` counts them, since the lift was done before; 0 on the very first day. */
  readonly gap: number;
  /** All sets of the lift, in order; of two sessions on the day those of the heavier. */
  readonly all: readonly LiftingSet[];
  /** There were two, and this is the heavier. */
  readonly isHeaviest: boolean;
  /** The work sets with a load among them, one at least, without those of a build-up. */
  readonly work: readonly LiftingSet[];
  /** Sets that rose to a load lifted more than once were its warm-ups and are left out. */
  readonly isBuiltUp: boolean;
  /** Load of the first work set, kg: a slow one takes some off the later ones. */
  readonly loadKg: number;
  /** Load of the last one, kg. */
  readonly lastKg: number;
  /** Number of work sets. */
  readonly sets: number;
  /** Most repetitions of a set: 5 or 3 of the rotation, whatever was missed later. */
  readonly reps: number;
  /** A bar speed was taken, of a marker too. */
  readonly timed: boolean;
  /** A set no heavier than the first had fewer repetitions than it. */
  readonly missed: boolean;
  /** Every set moved well, one did not, or it was not recorded. */
  readonly movedWell: boolean | null;
  /** Least repetitions in reserve written down; null when none were. */
  readonly reserve: number | null;
};

/**
 * The sessions of one athlete's lift, in order; days without a work set with a load are none.
 *
 * @param gymDays days with a main lift, this one or another, in order
 * @param legDays those and days with another lift of the legs, in order
 */
export function liftSessions(
  lift: readonly LiftingSet[],
  gymDays: readonly Day[],
  legDays: readonly Day[] = gymDays,
): readonly LiftSession[] {
  let lastDay: Day | null = null;
  return [...grouped(lift, ({ day }) => day)].flatMap(([day, ofDay]) => {
    const all = heaviestOfDay(ofDay);
    const loaded = all.filter(({ kind, loadKg }) => kind === "work" && loadKg !== null);
    const work = withoutBuildUp(loaded);
    const [first] = work;
    if (first === undefined) return [];
    const reserves = work.flatMap(({ repsInReserve }) => repsInReserve ?? []);
    const from = lastDay ?? gymDays[gymDays.indexOf(day) - 1] ?? day;
    const gap = daysOff(from, day, gymDays, legDays);
    lastDay = day;
    return {
      day,
      gap,
      all,
      isHeaviest: all.length < ofDay.length,
      work,
      isBuiltUp: work.length < loaded.length,
      loadKg: first.loadKg!,
      lastKg: work[work.length - 1]!.loadKg!,
      sets: work.length,
      reps: Math.max(...work.map(repsDone)) > 3 ? 5 : 3,
      timed: all.some(({ repSpeeds, setSpeed }) => repSpeeds.length > 0 || setSpeed !== null),
      missed: work.some(
        (set) =>
          repsDone(set) > 0 && repsDone(set) < repsDone(first) && set.loadKg! <= first.loadKg!,
      ),
      movedWell: allOf(work.map(({ movedWell }) => movedWell)),
      reserve: reserves.length === 0 ? null : Math.min(...reserves),
    };
  });
}

/**
 * Longest run of days without a main lift from one day to another: what was not lifted since a break
 * comes back from it on a later day than what was. Those on which lighter lifts of the legs stood for it,
 * as goblet squats do away from home, count half: they keep legs used to work, not to the load (common
 * practice, no source).
 *
 * @param gymDays days with a main lift, in order
 * @param legDays those and days with another lift of the legs, in order
 */
export const daysOff = (
  from: Day,
  to: Day,
  gymDays: readonly Day[],
  legDays: readonly Day[],
): number => (longestGap(from, to, gymDays) + longestGap(from, to, legDays)) / 2;

function longestGap(from: Day, to: Day, days: readonly Day[]): number {
  const inside = days.filter((day) => day > from && day < to);
  const between = [from, ...inside, to];
  return Math.max(...between.slice(1).map((day, at) => day - between[at]!));
}

/** How many sets rise one after another, each heavier than the last, to the first at the heaviest load. */
export function setsRisen(work: readonly LiftingSet[]): number {
  const heaviest = Math.max(...work.map(({ loadKg }) => loadKg!));
  const top = work.findIndex(({ loadKg }) => loadKg === heaviest);
  const rise = (at: number) => at === 0 || work[at]!.loadKg! > work[at - 1]!.loadKg!;
  return work.slice(0, top).every((_, at) => rise(at)) ? top : 0;
}

/** Sets that rise to a load lifted more than once were its warm-ups. */
function withoutBuildUp(work: readonly LiftingSet[]): readonly LiftingSet[] {
  const top = setsRisen(work);
  return work.some(({ loadKg }, at) => at > top && loadKg === work[top]!.loadKg)
    ? work.slice(top)
    : work;
}

/** The block of the rotation a session was, by its repetitions and its number of sets. */
export function blockOf({ sets, reps }: Pick<LiftSession, "sets" | "reps">): Block {
  const [many, few] = reps > 3 ? rotation.slice(0, 2) : rotation.slice(2);
  return sets >= 4 ? many! : few!;
}

/** Whether so many sets of so many repetitions were done at the load; null when repetitions were not recorded. */
export function volumeDone(session: LiftSession, sets: number, reps: number): boolean | null {
  const { work } = session;
  if (work.some((set) => set.reps === null && set.repSpeeds.length === 0)) return null;
  return setsAtLoad(session) >= sets && work.every((set) => repsDone(set) >= reps);
}

/** Sets no lighter than the first: those after it that were are not done at the load. */
export const setsAtLoad = ({ work, loadKg }: LiftSession): number =>
  work.filter((set) => set.loadKg! >= loadKg).length;

/** Repetitions of a set: as written, else as many as have a speed. */
export const repsDone = ({ reps, repSpeeds }: LiftingSet) => reps ?? repSpeeds.length;

/** True when all are, false when one is not, null when one is not known and none is false. */
function allOf(values: readonly (boolean | null)[]): boolean | null {
  if (values.includes(false)) return false;
  return values.includes(null) ? null : true;
}
