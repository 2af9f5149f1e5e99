import type { WatchedSeason } from "../watched-season";

/** How far off the last two readings must be, in typical errors: each, and on the mean. */
const each = 3;
const onMean = 4;
/** Readings this far off still belong to the same change. */
const sameChange = 2;

/** A change too large to wait for: which measure, and where it began. */
export type SuddenChange = {
  readonly measure: number;
  readonly word: "slipping" | "rising";
  /** First session of the change, and the session of the last reading before it. */
  readonly since: number;
  readonly lastBefore: number;
};

/**
 * The evidence cuts every reading to 1.8 typical errors, so that one misreading decides nothing; a
 * value that is tested seldom would then need months to show an injury. Two readings running, each
 * at least three typical errors off and four on the mean, are therefore enough by themselves. The
 * typical error is that before the change, which the change itself would widen.
 *
 * @returns the measure that is furthest off; null when none is
 */
export function suddenChange(season: WatchedSeason): SuddenChange | null {
  let found: SuddenChange | null = null;
  let furthest = 0;
  for (const [m, { values, baselineSessions, baselineMean, errors }] of season.measures.entries()) {
    const places: number[] = [];
    for (let s = 0; s < values.length; s++) if (!Number.isNaN(values[s]!)) places.push(s);
    const after = places.filter((s) => s >= baselineSessions);
    if (after.length < 2) continue;
    const offs = (count: number) => {
      // The baseline's readings stand before all of them.
      const error = errors[places[places.length - count - 1]!]!;
      return places.slice(-count).map((s) => (values[s]! - baselineMean) / error);
    };
    const [first, second] = offs(2) as [number, number];
    const side = Math.sign(first);
    const mean = (side * (first + second)) / 2;
    if (side * first < each || side * second < each || mean < onMean || mean <= furthest) continue;
    let run = 2;
    while (run < after.length && side * offs(run + 1)[0]! >= sameChange) run++;
    furthest = mean;
    found = {
      measure: m,
      word: side < 0 ? "slipping" : "rising",
      since: places[places.length - run]!,
      lastBefore: places[places.length - run - 1]!,
    };
  }
  return found;
}
