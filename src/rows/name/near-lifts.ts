import { exerciseKey } from "../../coaching/record/exercise-key";
import type { LiftingSet } from "../../coaching/record/lifting-set";
import { nameKey } from "../../coaching/record/name-key";
import { grouped } from "../../coaching/series/grouped";
import { editDistance } from "./edit-distance";

/** Words of lifts that are one letter from another such word, and no slip (common practice, no source). */
const known = new Set(
  "back hack rack front split side slide wide wall ball bell belt band hand half calf halt heel wheel step stop jump bump hang high lift left right press push pull curl clean lean sled seal seat rear bear bent bench lunge plank pause tempo floor hold single".split(
    " ",
  ),
);
/** A slip stands in so few rows for each row of the lift that is meant. */
const rare = 5;
const shortest = 4;
const longest = 80;

/** A lift that may be another one's slip, at its first set. */
export type NearLift<Set> = {
  readonly written: string;
  readonly first: Set;
  readonly rows: number;
  /** The lift it may be, as first written, and the rows that carry it. */
  readonly near: string;
  readonly nearRows: number;
};

/**
 * Exercises that stand in few rows and are one slip from one that stands in many: a letter put in, left
 * out, changed or swapped in one word, or a space or hyphen. Never one whose word is a lift's own, as
 * "hack" beside "back". A question for the coach: nothing is merged.
 */
export function nearLifts<Set extends Pick<LiftingSet, "exercise">>(
  sets: readonly Set[],
): readonly NearLift<Set>[] {
  const spellings = new Map<string, { written: string; first: Set; rows: number }>();
  for (const set of sets) {
    const one = spellings.get(set.exercise);
    if (one) one.rows++;
    else spellings.set(set.exercise, { written: set.exercise, first: set, rows: 1 });
  }
  const lifts = [...grouped([...spellings.values()], ({ written }) => exerciseKey(written))].map(
    ([key, all], at) => ({
      ...all[0]!,
      at,
      rows: all.reduce((sum, { rows }) => sum + rows, 0),
      // "Squatt" is near "squat", however the lift is called otherwise.
      keys: [...new Set([key, ...all.map(({ written }) => nameKey(written))])],
    }),
  );
  // Slips of one another have a shortening in common: a sheet of very many names is not read pair by pair.
  const byShortening = new Map<string, (typeof lifts)[number][]>();
  for (const lift of lifts)
    for (const one of shortenings(lift.keys)) {
      const like = byShortening.get(one);
      if (like) like.push(lift);
      else byShortening.set(one, [lift]);
    }
  return lifts.flatMap(({ keys, at, ...lift }) => {
    const meant = shortenings(keys)
      .flatMap((one) => byShortening.get(one)!)
      .filter(
        (other) =>
          other.rows >= rare * lift.rows &&
          other.keys.some((one) => keys.some((key) => isSlip(key, one))),
      )
      .sort((a, b) => a.at - b.at)[0];
    return meant ? [{ ...lift, near: meant.written, nearRows: meant.rows }] : [];
  });
}

/** Each key without its spaces, whole and with every letter left out in turn; a text too long for a lift is no slip. */
const shortenings = (keys: readonly string[]) =>
  keys.flatMap((key) => {
    const whole = joined(key);
    if (whole.length > longest) return [];
    return [whole, ...Array.from(whole, (_, at) => whole.slice(0, at) + whole.slice(at + 1))];
  });

function isSlip(written: string, meant: string): boolean {
  if (joined(written) === joined(meant)) return written !== meant;
  const [a, b] = [written.split(" "), meant.split(" ")];
  const apart = a.flatMap((word, at) => (word === b[at] ? [] : [[word, b[at] ?? ""] as const]));
  const [[word, other] = ["", ""], ...more] = apart;
  if (a.length !== b.length || more.length > 0 || known.has(word)) return false;
  // "Squat A" and "squat B", "step-up 20" and "step-up 30" are named so.
  const isShort = Math.min(word.length, other.length) < shortest || /\d/.test(word + other);
  return !isShort && editDistance(word, other, 1) === 1;
}

const joined = (key: string) => key.replace(/[\s\p{Pd}]/gu, "");
