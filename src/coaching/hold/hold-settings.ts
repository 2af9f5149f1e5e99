/**
 * Constants of the season hold. Found by simulating seasons of runners' gyms (squads of 20, one or
 * two sessions a week, a tenth missed, heavy tails, off-days) and kept where calm seasons are
 * flagged about as often as the coach chose under every broken assumption tried. Percent are of
 * baseline.
 *
 * Simulated with the limit for one calm season in ten, values read from rows: 9.6 % of calm seasons
 * flagged, a fall of 5 % found within 4/6/8 sessions in 39/60/75 % of seasons. With a share of 0.5
 * for all measures together, scores cut at 2 and averaged equally it was 6.6 % and 30/53/67 %; at the
 * same flags 36/58/73 %. Off-days of −8 % on a tenth of days raise the flags to 14 %, a serial
 * correlation of 0.4 to 12 %.
 */
export type HoldSettings = {
  /** Correlation of two measures taken in one session. */
  readonly betweenMeasures: number;
  /** Correlation of one session's error with the next session's. */
  readonly serial: number;
  /** Degrees of freedom the squad's typical error is worth; 9 suits a spread of 25 % (Smyth 2004). */
  readonly squadWorth: number;
  /** Scores are cut to this many typical errors, so that one misreading cannot decide (Huber 1964). */
  readonly clip: number;
  /** Measures of one session are averaged by the inverse of their typical errors, not equally. */
  readonly byError: boolean;
  /** SD of the changes looked for, in typical errors. */
  readonly changeSd: number;
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
  /** No typical error is taken to be less than this, percent. */
  readonly leastError: number;
};

export const usualHoldSettings: HoldSettings = {
  betweenMeasures: 0.4,
  serial: 0,
  squadWorth: 9,
  clip: 2.2,
  byError: true,
  changeSd: 1.2,
  togetherShare: 0.65,
  leastRows: 2,
  leastBaselineRows: 3,
  longestBaseline: 3,
  againstBaseline: 0.7,
  recentRows: 4,
  recentShift: 0.25,
  keepShare: 0.7,
  leastError: 0.5,
};
