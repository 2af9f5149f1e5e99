/** One parameter of a custom function, as the coach reads it. */
export type Parameter = {
  readonly name: string;
  readonly help: string;
  readonly optional?: true;
};

/** One runnable example: arguments as the spreadsheet passes them, and the result. */
export type Example = {
  /** How it is typed into a cell. */
  readonly formula: string;
  readonly args: readonly unknown[];
  readonly result: unknown;
};

/**
 * A custom function, whole: from this come its declaration in the bundle, its help in both hosts,
 * its row in the README and its example tests.
 */
export type SheetFunction = {
  readonly name: string;
  /** One sentence. */
  readonly summary: string;
  readonly parameters: readonly Parameter[];
  /** Headings of the result's columns, left to right; one for a single figure. */
  readonly results: readonly string[];
  readonly examples: readonly Example[];
  /** Gives a value or rows of cells; throws `Error` with a sentence when there is no figure. */
  readonly compute: (args: readonly unknown[]) => unknown;
};
