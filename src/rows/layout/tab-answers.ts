/** What the coach said of a whole tab, once, where the cells leave it open. */
export type TabAnswers = {
  /** In "5x3": five sets of three (true), or five repetitions in three sets. */
  readonly setsFirst?: boolean;
  /** The lift of blocks and rows that name none. */
  readonly exercise?: string;
  /** The athlete of rows that name none. */
  readonly athlete?: string;
  /** Mass of a doubtful bar, kg, by what is written of it ("their bar (15?)"). */
  readonly bars?: ReadonlyMap<string, number>;
  /** What one speed beside a load is. */
  readonly setSpeed?: "mean of reps" | "best rep";
  /** What several speeds beside a load are. */
  readonly speeds?: "each set" | "each rep";
  /** What a bare number in a grid of runs is. */
  readonly runs?: "minutes" | "km";
};

export const noTabAnswers: TabAnswers = {};
