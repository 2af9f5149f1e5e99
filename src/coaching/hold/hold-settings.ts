/**
 * Constants of the season hold. Found by simulating seasons of runners' gyms (squads of 20, one or
 * two sessions a week, a tenth missed, heavy tails, off-days) and kept where calm seasons are
 * flagged about as often as the coach chose under every broken assumption tried. Percent are of
 * baseline.
 *
 * Found with seeds used for nothing else, at a limit that flags equally many calm seasons, 1,200 to
 * 2,500 of them and as many with a fall of 5 %; standard error about 1. Share of falls found within
 * 4/6/8 sessions, percent:
 *
 * - a session's first set alone 42/61/73, all its sets 45/63/75;
 * - correlations of measures and of sessions taken from the squad: the same in usual seasons, but calm
 *   seasons flagged 10 and not 14 % where measures correlate by .7, 8 and not 17 % where sessions do
 *   by .4, 15 and not 17 % where one day in ten is 8 % off, and 48/70/82 found, not 34/56/71, where
 *   measures are independent;
 * - cut at 1.7 and three rows at least, 40/64/76 beside 41/62/74 cut at 2.1 and two rows;
 * - last season's level as part of a baseline reading, where its rows are given: `lastSeasonLevels`;
 * - the limit grown with the sessions planned: one visit a week and two are flagged equally often.
 *
 * Tried and left out: the squad's common day taken off each value, from the squad's others on that day,
 * shrunk, with steps of the whole squad kept (39/60/72, not 35/58/69, where a fifth of the noise is the
 * squad's day, but 38/63/74, not 40/64/75, in usual seasons; and a slow slide of the whole squad would be
 * taken for its days; kept to what differs from the days around, 35/59/71 and no gain in usual
 * seasons); a whole session's score cut as well as each value (fewer); typical errors from the residuals
 * on either side of each onset, streams of two measures, a smooth cut of large scores (fewer).
 */
export type HoldSettings = {
  /** Correlation of two measures of one session; a squad's own rows replace it. */
  readonly betweenMeasures: number;
  /** Share of that correlation which the evidence reckons with. */
  readonly betweenShare: number;
  /** Correlation of one session's error with the next session's; a squad's own rows replace it. */
  readonly serial: number;
  /** Serial errors widen a run of sessions by its length, and not as if it were endless. */
  readonly serialByRun: boolean;
  /** Degrees of freedom the squad's typical error is worth; 9 suits a spread of 25 % (Smyth 2004). */
  readonly squadWorth: number;
  /** Scores are cut to this many typical errors, so that one misreading cannot decide (Huber 1964). */
  readonly clip: number;
  /** Measures of one session are averaged by their typical errors and correlation, not equally. */
  readonly byError: boolean;
  /** SD of the changes looked for, in typical errors. */
  readonly changeSd: number;
  /** Share of the changes looked for that are about `stepSize`, give or take `stepSd`, typical errors. */
  readonly stepShare: number;
  readonly stepSize: number;
  readonly stepSd: number;
  /**
   * Share of a change's nominal variance that the evidence reckons with. Less than all makes it
   * keener for every onset alike; the limit, found by simulation, pays for it.
   */
  readonly varianceShare: number;
  /** Share of the evidence given to all measures together; each alone has an equal part of the rest. */
  readonly togetherShare: number;
  /** Rows a change must have before it counts. */
  readonly leastRows: number;
  /** Baseline rows a measure must have. */
  readonly leastBaselineRows: number;
  /** A measure with too few of them in the baseline may take its first rows from this many times it. */
  readonly longestBaseline: number;
  /** Share of a change that must also stand against the season's own baseline. */
  readonly againstBaseline: number;
  /** Rows that must lie on the side of the change just now, and by how many typical errors. */
  readonly recentRows: number;
  readonly recentShift: number;
  /** Share of the limit at which a word already given is kept. */
  readonly keepShare: number;
  /** The loss that would show, in standard errors of six more sessions against all so far. */
  readonly fallShown: number;
  /** No typical error is taken to be less than this, percent. */
  readonly leastError: number;
};

export const usualHoldSettings: HoldSettings = {
  betweenMeasures: 0.43,
  betweenShare: 0.7,
  serial: 0,
  serialByRun: true,
  squadWorth: 9,
  clip: 1.8,
  byError: true,
  changeSd: 1.2,
  stepShare: 2 / 3,
  stepSize: 1.1,
  stepSd: 0.3,
  varianceShare: 0.7,
  togetherShare: 0.88,
  leastRows: 3,
  leastBaselineRows: 3,
  longestBaseline: 3,
  againstBaseline: 0.7,
  recentRows: 4,
  recentShift: 0.25,
  keepShare: 0.7,
  fallShown: 3.4,
  leastError: 0.5,
};
