/** Sessions in the athlete's own wobbles, with marks of the diary; food and body mass make no mark. */
export type DiaryPicture = {
  readonly athlete: string;
  readonly from: string;
  readonly to: string;
  readonly sessions: readonly {
    readonly day: string;
    readonly size: number;
    /** 0 for an ordinary day, −1 for a slow one, 1 for a good one. */
    readonly side: -1 | 0 | 1;
  }[];
  /** Half-width of the band of ordinary days, own wobbles. */
  readonly band: number;
  readonly marks: readonly {
    readonly day: string;
    readonly kind: "pain or illness" | "figure" | "note";
  }[];
  readonly inWords: string;
};

/** An unusual day to ask the athlete about. */
export type DayToAsk = {
  readonly day: string;
  readonly dayWords: string;
  readonly value: string;
  readonly size: string;
  /** What stood out, words of pain or illness first. */
  readonly stoodOut: readonly string[];
  /** "Diary L44", where an answer goes; null when there is no such cell. */
  readonly answerTo: string | null;
  /** Why there is none, in a sentence; "" when there is. */
  readonly noAnswer: string;
};

/** One athlete's diary beside the season. Only for the sidebar: nothing printed takes it. */
export type DiaryView = {
  readonly athlete: string;
  /** Days with words of pain or illness, with the caution; "" when there are none. */
  readonly first: string;
  readonly picture: DiaryPicture | null;
  readonly days: readonly DayToAsk[];
  readonly noDays: string;
  readonly items: readonly { readonly item: string; readonly words: string }[];
  readonly noItems: string;
};
