/** The plain figures that every contender but the formulas for line and hold gives. */
export const figureNames = ["loss", "setToSet", "line", "hold"] as const;
export type FigureName = (typeof figureNames)[number];

/** What each is, as the table's headings say it. */
export const figureWords: Readonly<Record<FigureName, string>> = {
  loss: "Loss within each set",
  setToSet: "Last session's last work set against its first, by athlete",
  line: "Slope of fastest repetition on load, by athlete",
  hold: "Marker speed of the last four sessions against the first six, by athlete",
};

export const baselineSessions = 6;
export const recentSessions = 4;

/** Stands for figures that cannot be compared: other rows, or no number. */
const incomparable = Number.MAX_VALUE;

/** Largest difference between two lists of figures. */
export function furthestApart(one: ArrayLike<number>, other: ArrayLike<number>): number {
  if (one.length !== other.length) return incomparable;
  let most = 0;
  for (let at = 0; at < one.length; at++) {
    const off = Math.abs((one[at] as number) - (other[at] as number));
    if (!Number.isFinite(off)) return incomparable;
    most = Math.max(most, off);
  }
  return most;
}
