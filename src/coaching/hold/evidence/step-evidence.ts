import type { WatchedMeasure, WatchedSeason } from "../watched-season";
import { changeFactor } from "./change-factor";
import { runsApartVariance } from "./serial-variance";
import { streamSums } from "./stream-sums";

/** Evidence for a lasting fall or rise, from the sessions up to one of them. */
export type StepEvidence = {
  readonly low: DirectedEvidence;
  readonly high: DirectedEvidence;
};

export type DirectedEvidence = {
  /** Bayes factor against "no change", averaged over onsets and streams. */
  readonly total: number;
  /** What each onset adds to it, by session. */
  readonly byOnset: Float64Array;
  /** Place of the onset that adds most, −1 when none adds. */
  readonly onset: number;
  /** Recent rows of the stream of the single largest term minus its baseline, typical errors. */
  readonly recent: number;
};

type Gathering = {
  total: number;
  readonly byOnset: Float64Array;
  largest: number;
  recent: number;
};

/**
 * For every possible onset, all rows from it on are compared with all rows before it, as a Bayes
 * factor for a change of a size looked for; the factors are averaged over onsets and over two
 * kinds of stream: all measures together, and each alone. A change is looked for at unknown times
 * with an unknown size, hence no window and no smoothing weight to choose (after Page 1954, Shiryaev
 * 1963, Hawkins 1987, Hawkins, Qiu & Kang 2003).
 *
 * @param session place of the last session read, at least the number of baseline sessions
 */
export function stepEvidence(season: WatchedSeason, session: number): StepEvidence {
  const low = gathering(session);
  const high = gathering(session);
  const { measures, settings } = season;
  if (measures.length > 1) {
    addStream(season, session, measures, settings.togetherShare, low, high);
    const alone = (1 - settings.togetherShare) / measures.length;
    for (const measure of measures) addStream(season, session, [measure], alone, low, high);
  } else if (measures.length === 1) {
    addStream(season, session, measures, 1, low, high);
  }
  return { low: directed(low), high: directed(high) };
}

/** Adds one stream's Bayes factors, with `share` of the whole weight. */
function addStream(
  season: WatchedSeason,
  session: number,
  measures: readonly WatchedMeasure[],
  share: number,
  low: Gathering,
  high: Gathering,
): void {
  const { settings } = season;
  const first = Math.min(...measures.map(({ baselineSessions }) => baselineSessions));
  const { weight, score, load, rows } = streamSums(season, session, measures);
  const end = session + 1;
  const { serial, serialByRun } = settings;
  const endless = (1 + serial) / (1 - serial);
  const baseline = score[first]! / weight[first]!;
  const prior = (2 * share) / season.plannedAfter;

  let from = end;
  while (from > first && rows[end]! - rows[from]! < settings.recentRows) from--;
  const recentWeight = weight[end]! - weight[from]!;
  const recent = recentWeight > 0 ? (score[end]! - score[from]!) / recentWeight - baseline : 0;

  for (let t = first; rows[end]! - rows[t]! >= settings.leastRows; t++) {
    const before = weight[t]!;
    const after = weight[end]! - before;
    const meanAfter = (score[end]! - score[t]!) / after;
    const change = meanAfter - score[t]! / before;
    // A change must also stand against the season's own baseline, or it is only a return from the
    // other side. A change of nothing says nothing.
    if (change === 0 || (meanAfter - baseline) / change < settings.againstBaseline) continue;
    const loadGap = (load[end]! - load[t]!) / after - load[t]! / before;
    const chance =
      serialByRun && serial > 0
        ? runsApartVariance([rows[end]! - rows[t]!, rows[t]!], [after, before], serial)
        : (1 / after + 1 / before) * endless;
    const variance = chance + loadGap ** 2;
    const factor = prior * changeFactor(change, variance, settings);
    const side = change < 0 ? low : high;
    side.total += factor;
    side.byOnset[t]! += factor;
    if (factor > side.largest) {
      side.largest = factor;
      side.recent = recent;
    }
  }
}

function gathering(session: number): Gathering {
  return { total: 0, byOnset: new Float64Array(session + 1), largest: 0, recent: 0 };
}

function directed({ total, byOnset, recent }: Gathering): DirectedEvidence {
  let onset = -1;
  for (let t = 0; t < byOnset.length; t++) {
    if (byOnset[t]! > 0 && (onset < 0 || byOnset[t]! > byOnset[onset]!)) onset = t;
  }
  return { total, byOnset, onset, recent };
}
