import { middleOf } from "../../../statistics/spread";
import { theilSen } from "../../../statistics/theil-sen";
import type { LoadedSet } from "../../series/speed-set";
import type { HoldNote } from "../season-hold";

/** A speed further off than this share of a usual one is hardly lifted so (common practice, no source). */
const leastShare = 0.25;
/** And further than so many robust SDs: Hampel 1974 takes three; six leaves bad days alone. */
const leastSds = 6;
/** SD of a normal value over its median distance from the middle. */
const sdPerMedian = 1.4826;
/** With fewer sets nothing tells which is off; a line through more than so many takes long to draw. */
const [leastSets, mostSets] = [8, 21];
/** Slips of the pen are few: when more sets than this share are far off, it is no slip. */
const mostShare = 0.1;

/**
 * Sets whose speed hardly fits the load beside it, as a mistyped load makes them: far off the line
 * that one wild row does not move (Theil 1950; Sen 1968). They stay in what is reckoned, which they
 * may spoil, so the coach is asked to look.
 *
 * @param sets of a season in one setting, in order of day
 * @returns one note for all of them, with the first, and each of them
 */
export function farOffNotes(sets: readonly LoadedSet[]): readonly HoldNote[] {
  if (sets.length < leastSets) return [];
  const step = Math.max(1, sets.length / mostSets);
  const drawn = Array.from(
    { length: Math.floor(sets.length / step) },
    (_, at) => sets[Math.floor(at * step)]!,
  );
  const usual = middleOf(drawn.map(({ speed }) => speed));
  const line = theilSen(
    drawn.map(({ loadKg }) => loadKg),
    drawn.map(({ speed }) => speed),
  );
  // At one load all along there is no slope to find.
  const { slope, intercept } = line.ok ? line.value : { slope: 0, intercept: usual };
  const usualAt = (loadKg: number) => intercept + slope * loadKg;
  const off = ({ speed, loadKg }: LoadedSet) => Math.abs(speed - usualAt(loadKg));
  const robustSd = sdPerMedian * middleOf(drawn.map(off));
  const limit = Math.max(leastShare * usual, leastSds * robustSd);
  /** Slower than a usual set of that day at that load by less than the share: tired, not mistyped. */
  const tired = ({ day, loadKg, speed }: LoadedSet) =>
    sets.some(
      (other) =>
        other.day === day &&
        other.loadKg === loadKg &&
        off(other) <= limit &&
        speed < other.speed &&
        other.speed - speed <= leastShare * other.speed,
    );
  const far = sets.filter((set) => off(set) > limit && !tired(set));
  const first = far[0];
  if (first === undefined || far.length > Math.max(2, mostShare * sets.length)) return [];
  const { exercise } = first.set;
  const { day, loadKg, speed } = first;
  const known = (value: number) => (Number.isFinite(value) && value > 0 ? value : null);
  return [
    {
      code: "sets-far-off",
      facts: { sets: far.length, exercise, day, loadKg, speed },
      far: far.map((set) => ({
        set,
        usualSpeed: known(usualAt(set.loadKg)),
        usualKg: known((set.speed - intercept) / slope),
      })),
    },
  ];
}
