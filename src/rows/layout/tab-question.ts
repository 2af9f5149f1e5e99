/** What may have to be asked of a whole tab. */
export const tabMatters = [
  "scheme order",
  "exercise",
  "athlete",
  "bar",
  "set speed",
  "speeds",
  "runs",
] as const;
export type TabMatter = (typeof tabMatters)[number];

/** A cell that raises a question without being wrong. */
export type TabAsk = { readonly about: TabMatter; readonly sample: string };

/** A question for the coach about a whole tab. */
export type TabQuestion = {
  readonly about: TabMatter;
  /** What is written of a doubtful bar; "" for all other matters. */
  readonly said: string;
  /** Up to three cells it is about. */
  readonly samples: readonly string[];
  readonly guess: string | null;
  /** Answers to choose from; other words may be typed where there is no other way to know. */
  readonly choices: readonly string[];
};

/** The answers there are to choose from; a lift, a name and a mass are typed. */
export const tabChoices: Readonly<Record<TabMatter, readonly string[]>> = {
  "scheme order": ["sets × repetitions", "repetitions × sets"],
  exercise: [],
  athlete: [],
  bar: [],
  "set speed": ["mean of the repetitions", "fastest repetition"],
  speeds: ["one for each set", "one for each repetition"],
  runs: ["minutes", "kilometres"],
};
