/** The figures every contender gives, so that all can be held against one another. */
export type Figures = {
  /** Loss within each set, in order of the rows. */
  readonly loss: ArrayLike<number>;
  /** By athlete, in the order asked: the last session's last work set against its first. */
  readonly setToSet: ArrayLike<number>;
  /** Slope of fastest repetition on load over all sets, m/s per kg, least squares. */
  readonly line: ArrayLike<number>;
  /** Mean marker speed of the last four sessions against the first six, fraction. */
  readonly hold: ArrayLike<number>;
};

export const figureNames = ["loss", "setToSet", "line", "hold"] as const;
export type FigureName = (typeof figureNames)[number];
export const baselineSessions = 6;
export const recentSessions = 4;

/** Largest difference between two contenders' figures; NaN when one has other rows. */
export function furthestApart(one: Figures, other: Figures): number {
  let most = 0;
  for (const name of figureNames) {
    const [a, b] = [one[name], other[name]];
    if (a.length !== b.length) return Number.NaN;
    for (let i = 0; i < a.length; i++) {
      const off = Math.abs((a[i] as number) - (b[i] as number));
      if (!(off <= most)) most = off;
    }
  }
  return most;
}
