/**
 * Constants of the load–speed line: typical of bar speeds in a runners' gym (simulation, no outside
 * source); the speeds are the fastest repetition of a set, m/s.
 */
export type LineSettings = {
  /** SD of whole days around the athlete's line, m/s. */
  readonly daySd: number;
  /** SD of sets within a day, m/s. */
  readonly setSd: number;
  /** Degrees of freedom that the day SD rests on. */
  readonly spreadFreedom: number;
  /** Days after which a session weighs half. */
  readonly halfLifeDays: number;
  /** Speed at zero load, m/s: usual value, its spread between athletes when the squad shows it… */
  readonly zeroLoadSpeed: number;
  readonly zeroLoadSpread: number;
  /** …and how wide of the usual value a squad, or an athlete alone, may lie. */
  readonly zeroLoadDoubt: number;
};

export const usualLineSettings: LineSettings = {
  daySd: 0.04,
  setSd: 0.02,
  spreadFreedom: 12,
  halfLifeDays: 42,
  zeroLoadSpeed: 1.35,
  zeroLoadSpread: 0.1,
  zeroLoadDoubt: 0.35,
};
