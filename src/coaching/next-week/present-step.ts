import { type Block, isSame, rotation } from "../blocks/block";
import { usualBarKg } from "../blocks/usual-bar";
import type { SessionLoad } from "../blocks/way-back";
import type { Day } from "../calendar/day";
import { mondayOf, weekdayOfDay } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import { exerciseKey } from "../record/exercise-key";
import type { LiftingSet } from "../record/lifting-set";
import { nameKey } from "../record/name-key";
import { usualSessionsAWeek } from "../season/usual-sessions-a-week";
import { inOrder } from "../series/in-order";
import { isAssistance } from "./assistance-load";
import { type LessOn, plannedLoads } from "./planned-loads";

/** Where an athlete stands on the rotation, from the rows. */
export type PresentStep = {
  readonly exercise: string;
  readonly block: Block;
  /** Planned at the last session, kg: of a day that asked for less than its plan the load from before it. */
  readonly loadKg: number;
  /** Lifted in the first work set of the last session, kg: under the planned load on such a day. */
  readonly liftedKg: number;
  /** Why less was lifted on that day than planned; null where it was not. */
  readonly less: LessOn | null;
  /** The load before it, kg, where the last week's sessions were lighter and no row says why; null otherwise. */
  readonly droppedFromKg: number | null;
  readonly lastDay: Day;
  /** Weeks with a session at this block and load, the latest run of them. */
  readonly weeksHeld: number;
  /** No other block than the rotation's first was done this season. */
  readonly firstTurn: boolean;
  /** Of the last session: every set moved well, one did not, or it was not recorded. */
  readonly movedWell: boolean | null;
  /** Every set and repetition done; null when repetitions were not recorded. */
  readonly volumeDone: boolean | null;
  /** Least repetitions in reserve written down in that session; null when none were. */
  readonly reserveSeen: number | null;
  /** The same of the last session at its planned load. */
  readonly plannedReserve: number | null;
  readonly markerKg: number | null;
  readonly barKg: number;
  /** Usual gym weekdays, most used first, and the usual start in minutes after midnight. */
  readonly weekdays: readonly number[];
  readonly minute: number;
  /** Every session of the lift with its planned load, in order of day. */
  readonly sessions: readonly SessionLoad[];
};

const usualMinute = 18 * 60;
const weekLong = 7;

/**
 * The step an athlete stands on, from the work sets of the lift done most; null without any.
 *
 * @param seasonDays days that count as this season, back from `asOf`
 * @param barKg the bar where no row says which
 * @param about the athlete's row of the Athletes table, for the sessions a week written there
 * @param lessOn why a day asked for less than its plan, from the lift's sets on it
 */
export function presentStep(
  sets: readonly LiftingSet[],
  athlete: string,
  asOf: Day,
  plannedSets: (block: Block, day: Day) => number,
  seasonDays: number,
  barKg: number = usualBarKg("kg"),
  about: Pick<Athlete, "sessionsAWeek"> | null = null,
  lessOn: (
    session: readonly LiftingSet[],
    day: Day,
  ) => ReturnType<Parameters<typeof plannedLoads>[2]> = () => null,
): PresentStep | null {
  const key = nameKey(athlete);
  const own = sets.filter((set) => set.day <= asOf && nameKey(set.athlete) === key);
  const exercise = mostDone(own);
  if (exercise === null) return null;
  const lift = inOrder(
    own.filter((set) => exerciseKey(set.exercise) === exercise),
    (set) => set,
  );
  const work = lift.filter(({ kind, loadKg }) => kind === "work" && loadKg !== null);
  const days = [...new Set(work.map(({ day }) => day))];
  const lastDay = days[days.length - 1];
  if (lastDay === undefined) return null;
  const on = (day: Day) => work.filter((set) => set.day === day);
  const last = on(lastDay);
  const sessionsAWeek = usualSessionsAWeek(about, days);
  const lifted = days.map((day) => ({
    day,
    loadKg: firstLoad(on(day)),
    sets: on(day).length,
    reps: repsOf(on(day)),
    movedWell: allOf(on(day).map(({ movedWell }) => movedWell)),
    reserve: leastReserveOf(on(day)),
  }));
  const plans = plannedLoads(lifted, sessionsAWeek, (day) =>
    lessOn(
      lift.filter((set) => set.day === day),
      day,
    ),
  );
  const planOf = new Map(days.map((day, at) => [day, plans[at]!.loadKg]));
  const { loadKg, less } = plans[plans.length - 1]!;
  const isLess = (at: number) => plans[at]!.less !== null;
  let whole = days.length - 1;
  while (isLess(whole)) whole--;
  // A race week's sets are few by plan: they do not say which block of the rotation it is.
  const cut = (day: Day) => plannedSets(rotation[0]!, day) < rotation[0]!.sets;
  const sameLoad = (day: Day) => planOf.get(day) === loadKg && repsOf(on(day)) === repsOf(last);
  let shown = days.length - 1;
  // A slow day takes load off, no sets: its sets show the block as any day's do.
  const fewer = (at: number) =>
    cut(days[at]!) || plans[at]!.less === "eased" || plans[at]!.less === "light";
  while (shown > 0 && fewer(shown) && sameLoad(days[shown - 1]!)) shown--;
  const block = blockOf(on(days[shown]!));
  const planned = plannedSets(block, lastDay);
  const sameStep = (at: number) =>
    sameLoad(days[at]!) && (fewer(at) || isSame(blockOf(on(days[at]!)), block));
  let held = days.length - 1;
  while (held > 0 && sameStep(held - 1)) held--;
  const markers = lift.filter(({ kind, loadKg: kg }) => kind === "marker" && kg !== null);
  // A marker as heavy as its sets was taken down to them, as after time off: it is not the usual one.
  const usualMarkers = markers.filter((marker) =>
    on(marker.day).every((set) => marker.loadKg! < set.loadKg!),
  );
  const ofMarkers = usualMarkers.length > 0 ? usualMarkers : markers;
  const counted = days.map(weekdayOfDay);
  return {
    exercise: last[0]!.exercise,
    block,
    loadKg,
    liftedKg: firstLoad(last),
    less,
    droppedFromKg:
      plans.find(
        ({ droppedFromKg: from }, at) =>
          from !== null && from > loadKg && days[at]! > lastDay - weekLong,
      )?.droppedFromKg ?? null,
    lastDay,
    weeksHeld: new Set(days.slice(held).map(mondayOf)).size,
    firstTurn: days
      .filter((day, at) => day > asOf - seasonDays && !fewer(at))
      .every((day) => isSame(blockOf(on(day)), rotation[0]!)),
    movedWell: lifted[lifted.length - 1]!.movedWell,
    volumeDone: volumeDone(last, planned, block.reps),
    reserveSeen: lifted[lifted.length - 1]!.reserve,
    plannedReserve: lifted[whole]!.reserve,
    markerKg: ofMarkers[ofMarkers.length - 1]?.loadKg ?? null,
    // A session away on another bar does not change the bar of the gym whose plates are listed.
    barKg: byUse(lift.slice(-60).flatMap(({ barKg }) => barKg ?? []))[0] ?? barKg,
    weekdays: byUse(counted.slice(-12)),
    minute: byUse(lift.slice(-40).flatMap(({ minute }) => minute ?? []))[0] ?? usualMinute,
    sessions: days.map((day, at) => ({ day, loadKg: plans[at]!.loadKg })),
  };
}

/** Key of the lift with most work sets, assistance left aside; null without one. */
export function mostDone(sets: readonly LiftingSet[]): string | null {
  const lifts = sets.filter(({ kind, exercise }) => kind === "work" && !isAssistance(exercise));
  return byUse(lifts.map((set) => exerciseKey(set.exercise)).sort())[0] ?? null;
}

/** The load a session began with: a slow first set takes some off the later ones. */
function firstLoad(session: readonly LiftingSet[]): number {
  return session[0]?.loadKg ?? 0;
}

function leastReserveOf(session: readonly LiftingSet[]): number | null {
  const reserves = session.flatMap(({ repsInReserve }) => repsInReserve ?? []);
  return reserves.length === 0 ? null : Math.min(...reserves);
}

/** The block of the rotation a session was, by its repetitions and its number of sets. */
export function blockOf(session: readonly LiftingSet[]): Block {
  const [many, few] = repsOf(session) > 3 ? rotation.slice(0, 2) : rotation.slice(2);
  return session.length >= 4 ? many! : few!;
}

/** Most repetitions of a set: 5 or 3 of the rotation, whatever was missed later. */
const repsOf = (session: readonly LiftingSet[]) =>
  Math.max(1, ...session.map((set) => set.reps ?? countedReps(set))) > 3 ? 5 : 3;

const countedReps = ({ repSpeeds }: LiftingSet) => repSpeeds.length;

function volumeDone(session: readonly LiftingSet[], sets: number, reps: number): boolean | null {
  if (session.some((set) => set.reps === null && set.repSpeeds.length === 0)) return null;
  return session.length >= sets && session.every((set) => (set.reps ?? countedReps(set)) >= reps);
}

/** True when all are, false when one is not, null when one is not known and none is false. */
function allOf(values: readonly (boolean | null)[]): boolean | null {
  if (values.includes(false)) return false;
  return values.includes(null) ? null : true;
}

function byUse<T>(values: readonly T[]): T[] {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1]).map(([value]) => value);
}
