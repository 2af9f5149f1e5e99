/** What one contender needed in a process of its own. */
export type Measured = {
  readonly firstMs: number;
  /** The least of several further runs: other programs can only add. */
  readonly warmMs: number;
  /** Most memory held during the first run beyond what was held before it, and that as copies of the rows. */
  readonly peakBytes: number;
  readonly copies: number;
  /** What the engine kept free before it and may have used without taking more. */
  readonly freeBytes: number;
  /** Largest difference from the same figures by hand; null where there are none. */
  readonly apart: number | null;
};
