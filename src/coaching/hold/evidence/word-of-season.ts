import type { WatchedSeason } from "../watched-season";
import { type StepEvidence, stepEvidence } from "./step-evidence";

/** The season's word after one session, and the evidence it rests on. */
export type WordOfSeason = {
  readonly word: "too few rows" | "holding" | "slipping" | "rising";
  /** Place of the likeliest first session of the change; null without one. */
  readonly since: number | null;
  /** Null for `too few rows`. */
  readonly evidence: StepEvidence | null;
};

/**
 * A change is named when its evidence reaches the limit and the latest rows lie on its side; once
 * named it is kept until the evidence falls under 0.7 of the limit, so that a word does not flicker.
 * Whether it was named before is read from the sessions before, one at a time, and only while the
 * evidence lies between the two limits: the word depends on rows alone, never on when it was asked.
 *
 * @param known evidence by session already worked out; filled as more is needed
 */
export function wordOfSeason(
  season: WatchedSeason,
  limit: number,
  session: number = season.sessions - 1,
  known: (StepEvidence | undefined)[] = [],
): WordOfSeason {
  const { measures, settings } = season;
  const ended = Math.min(...measures.map(({ baselineSessions }) => baselineSessions));
  let fallKept = true;
  let riseKept = true;
  let now: StepEvidence | null = null;
  for (let s = session; s > ended; s--) {
    let evidence = known[s];
    if (!evidence) {
      evidence = stepEvidence(season, s);
      known[s] = evidence;
    }
    now ??= evidence;
    const { low, high } = evidence;
    const falls = low.recent < -settings.recentShift;
    const rises = high.recent > settings.recentShift;
    if (low.total >= limit && low.total >= high.total && falls) {
      return fallKept
        ? { word: "slipping", since: now.low.onset, evidence: now }
        : { word: "holding", since: null, evidence: now };
    }
    if (high.total >= limit && high.total > low.total && rises) {
      return riseKept
        ? { word: "rising", since: now.high.onset, evidence: now }
        : { word: "holding", since: null, evidence: now };
    }
    fallKept &&= falls && low.total >= settings.keepShare * limit;
    riseKept &&= rises && high.total >= settings.keepShare * limit;
    if (!fallKept && !riseKept) return { word: "holding", since: null, evidence: now };
  }
  return now
    ? { word: "holding", since: null, evidence: now }
    : { word: "too few rows", since: null, evidence: null };
}
