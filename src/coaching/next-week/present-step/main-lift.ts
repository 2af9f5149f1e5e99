import type { Day } from "../../calendar/day";
import { exerciseKey } from "../../record/exercise-key";
import type { LiftingSet } from "../../record/lifting-set";
import { remembered } from "../../series/remembered";
import { isAssistance, isLegAssistance } from "../exercises/assistance-load";
import { isSquat } from "../exercises/is-squat";
import { alternate } from "./in-turn";

/** What stands for a lift of the bar where there is none, by the words coaches write (common practice, no source). */
const inPlaceOfTheBar = /goblet|dumb.?bell|kettle.?bell|body.?weight|\bdb\b/i;
/** Jumps, throws, the upper body and small muscles: no block of a runner's rotation (common practice, no source). */
const besideTheBar = [
  /jump|\bhops?\b|bound|throw|toss|slam|sprung|sprünge/i,
  /press|bench|pull.?(up|down)|chin.?up|push.?up|\bdips?\b|\brows?\b/i,
  /calf|calves|soleus|waden|nordic|curl|extension|raises?\b|bridge|copenhagen|[ab]duct|crunch|sit.?up|pallof|carry/i,
];

const assistance = 3;
/** 0 for a lift of the bar, 1 for what stands for one, 2 for what goes beside it, 3 for assistance. */
function rankOfLift(exercise: string): number {
  if (isAssistance(exercise)) return assistance;
  if (besideTheBar.some((words) => words.test(exercise))) return 2;
  return inPlaceOfTheBar.test(exercise) ? 1 : 0;
}

/** A day with work sets of main lifts: how many of each, by key. */
export type LiftDay = { readonly day: Day; readonly setsOf: ReadonlyMap<string, number> };

/**
 * One athlete's days with a main lift, in order: work sets with a load, assistance left aside, and what
 * stands for a lift of the bar or goes beside it only where there is nothing else.
 */
export function liftDays(sets: readonly LiftingSet[]): readonly LiftDay[] {
  // A season's rows name few exercises.
  const rankOf = remembered(rankOfLift);
  const work = sets.filter(
    ({ kind, loadKg, exercise }) =>
      kind === "work" && loadKg !== null && rankOf(exercise) < assistance,
  );
  const rank = Math.min(...work.map(({ exercise }) => rankOf(exercise)));
  const days = new Map<Day, Map<string, number>>();
  for (const { day, exercise } of work) {
    if (rankOf(exercise) !== rank) continue;
    const key = exerciseKey(exercise);
    const setsOf = days.get(day) ?? new Map<string, number>();
    days.set(day, setsOf.set(key, (setsOf.get(key) ?? 0) + 1));
  }
  return [...days].map(([day, setsOf]) => ({ day, setsOf })).sort((a, b) => a.day - b.day);
}

/** One athlete's days on which the legs were loaded by whatever lift, those with a main lift among them, in order. */
export function legDays(sets: readonly LiftingSet[], trained: readonly Day[]): readonly Day[] {
  const loadsLegs = remembered(
    (exercise: string) => isLegAssistance(exercise) || rankOfLift(exercise) < 2,
  );
  const days = sets.flatMap(({ kind, loadKg, exercise, day }) =>
    kind === "work" && loadKg !== null && loadsLegs(exercise) ? [day] : [],
  );
  return [...new Set([...days, ...trained])].sort((a, b) => a - b);
}

/** Days back from the last one that tell which lift an athlete is on. */
export const latestDays = 7;

/**
 * Key of the lift an athlete is on now: done on most of the latest week's days; of several, and of those
 * done in turn with it, a squat, then the one that has been in the rows longest, then with most sets. A new exercise
 * takes the old one's place within a week, however many sets of the old one stand in the rows. Null
 * without any.
 */
export function mainLift(days: readonly LiftDay[]): string | null {
  const last = days[days.length - 1];
  if (last === undefined) return null;
  const latest = days.filter(({ day }) => day > last.day - latestDays);
  const first = (key: string) => days.findIndex(({ setsOf }) => setsOf.has(key));
  const count = (key: string) => latest.filter(({ setsOf }) => setsOf.has(key)).length;
  const sets = (key: string) => days.reduce((sum, { setsOf }) => sum + (setsOf.get(key) ?? 0), 0);
  const isOther = (key: string) => Number(!isSquat(key));
  const longest = (a: string, b: string) =>
    isOther(a) - isOther(b) || first(a) - first(b) || sets(b) - sets(a);
  const keys = [...new Set(latest.flatMap(({ setsOf }) => [...setsOf.keys()]))].sort();
  const [most] = keys.sort((a, b) => count(b) - count(a) || longest(a, b));
  const [main] = [most!, ...liftsInTurn(days, most!)].sort(longest);
  return main!;
}

/** Keys of the lifts done in turn with one, each on days of its own. */
export function liftsInTurn(days: readonly LiftDay[], key: string): readonly string[] {
  const others = new Set(days.flatMap(({ setsOf }) => [...setsOf.keys()]));
  others.delete(key);
  return [...others].filter((other) => {
    const apart = days.filter(({ setsOf }) => setsOf.has(key) !== setsOf.has(other));
    const labelled = apart.map(({ day, setsOf }) => ({
      day,
      label: setsOf.has(key) ? key : other,
    }));
    return alternate(labelled, apart.length === days.length);
  });
}
