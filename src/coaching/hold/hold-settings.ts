/**
 * Constants of the season hold. Found by simulating seasons of runners' gyms (squads of 20, one or
 * two sessions a week, a tenth missed, heavy tails, off-days) and kept where calm seasons are
 * flagged about as often as the coach chose under every broken assumption tried. Percent are of
 * baseline.
 *
 * Judged by the share of falls of 5 % found within 4, 6 and 8 sessions at a limit that flags equally
 * many calm seasons, with seeds used for nothing else; `npm run bench:seasons` prints what they give.
 */
export type HoldSettings = {
  /**
   * Correlation of two measures of one session; a squad's own rows replace it, so that calm seasons stay
   * calm where measures go together more than usual, and falls are found sooner where less.
   */
  readonly betweenMeasures: number;
  /** Share of that correlation which the evidence reckons with. */
  readonly betweenShare: number;
  /** Correlation of one session's error with the next session's; a squad's own rows replace it, for the same reason. */
  readonly serial: number;
  /** Serial errors widen a run of sessions by its length, and not as if it were endless. */
  readonly serialByRun: boolean;
  /** Degrees of freedom the squad's typical error is worth; 9 suits a spread of 25 % (Smyth 2004). */
  readonly squadWorth: number;
  /**
   * Scores are cut to this many typical errors, so that one misreading cannot decide (Huber 1964); cut
   * less, and with fewer rows asked of a change, large falls are found sooner and small ones later.
   */
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
