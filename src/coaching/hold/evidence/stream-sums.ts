import type { WatchedMeasure, WatchedSeason } from "../watched-season";

/**
 * Running sums over sessions of a stream's weights, weighted scores and weighted load errors, and
 * the count of its rows; place t holds the sum before session t. What last season says of the level
 * stands before the first session, as part of one more reading.
 *
 * A session's scores are averaged with shares a and weigh
 * (Σa)²/((1 − r)·Σa² + r·(Σa)²), for measures of one day share part of their error; with equal shares
 * that is m/(1 + (m − 1)·r). Shares are equal or, by error, those that show a loss of so many percent
 * in all measures best: of the inverse typical errors e, e − r·Σe/(1 + (m − 1)·r), never under zero
 * (generalised least squares, Aitken 1935).
 */
export function streamSums(
  season: WatchedSeason,
  session: number,
  measures: readonly WatchedMeasure[],
) {
  const { clip, betweenMeasures, betweenShare, byError } = season.settings;
  const r = betweenShare * betweenMeasures;
  const weight = new Float64Array(session + 2);
  const score = new Float64Array(session + 2);
  const load = new Float64Array(session + 2);
  const rows = new Float64Array(session + 2);
  for (const { level, baselineMean, errors } of measures) {
    if (!level) continue;
    const error = errors[session]!;
    const worth = error ** 2 / level.variance;
    weight[0]! += worth;
    score[0]! += (worth * (level.mean - baselineMean)) / error;
  }
  for (let s = 0; s <= session; s++) {
    let present = 0;
    let steadiness = 0;
    for (const { values, errors } of measures) {
      if (Number.isNaN(values[s]!)) continue;
      present++;
      steadiness += 1 / errors[session]!;
    }
    const common = (r * steadiness) / (1 + (present - 1) * r);
    let shares = 0;
    let squares = 0;
    let scores = 0;
    let loads = 0;
    for (const { values, baselineMean, errors, loadError } of measures) {
      const value = values[s]!;
      if (Number.isNaN(value)) continue;
      const error = errors[session]!;
      const share = byError ? Math.max(0, 1 / error - common) : 1;
      shares += share;
      squares += share * share;
      scores += share * Math.min(clip, Math.max(-clip, (value - baselineMean) / error));
      if (loadError) loads += (share * loadError[s]!) / error;
    }
    const own = present > 0 ? shares / ((1 - r) * squares + r * shares * shares) : 0;
    weight[s + 1] = weight[s]! + own * shares;
    score[s + 1] = score[s]! + own * scores;
    load[s + 1] = load[s]! + own * loads;
    rows[s + 1] = rows[s]! + (present > 0 ? 1 : 0);
  }
  return { weight, score, load, rows };
}
