import type { NumberStyle } from "../../words/printed-numbers";
import type { ReadWithout } from "../messages";

export type SetUpTab = {
  readonly tabId: number;
  readonly tab: string;
  readonly table: string | null;
  /** How it was found: by the coach's word, by its headings, probably so, or not at all. */
  readonly found: "said" | "sure" | "unsure" | "left alone";
  readonly rows: number;
};

/** An answer that may be chosen, and its words. */
export type Choice = { readonly answer: string; readonly words: string };

/** What may be asked of a column. */
export type ColumnMatter = "meaning" | "unit" | "date order";
/** What may be asked of a whole tab. */
export type WholeTabMatter =
  | "scheme order"
  | "exercise"
  | "athlete"
  | "bar"
  | "set speed"
  | "speeds"
  | "runs";

type Asked = {
  readonly tabId: number;
  readonly tab: string;
  readonly choices: readonly Choice[];
};
type AskedOfColumn = Asked & {
  readonly about: ColumnMatter;
  /** Where it stands now, from 1; 0 for an answer whose column is no longer there. */
  readonly column: number;
  readonly heading: string;
};
type AskedOfTab = Asked & {
  readonly about: WholeTabMatter;
  /** How a doubtful bar is written; "" for all other matters. */
  readonly written: string;
};

export type SetUpQuestion = (AskedOfColumn | AskedOfTab) & {
  /** Three values it is about. */
  readonly samples: readonly string[];
  readonly guess: string | null;
};

/** An answer as it is remembered; the choices are what it may be changed to. */
export type SetUpAnswer =
  | (AskedOfColumn & { readonly said: string; readonly tag: string | null })
  | (AskedOfTab & { readonly said: string });

export type SetUpView = ReadWithout & {
  readonly tabs: readonly SetUpTab[];
  readonly tables: readonly string[];
  readonly missing: readonly string[];
  readonly questions: readonly SetUpQuestion[];
  readonly answered: readonly SetUpAnswer[];
  /** Spellings said to be an athlete, or not to be one. */
  readonly names: readonly {
    readonly spelling: string;
    readonly athlete: string;
    readonly same: boolean;
  }[];
  /** Sets said to be right as they stand. */
  readonly rightSets: readonly string[];
  /** Values in force of the squad's rules, by key. */
  readonly rules: Readonly<Record<string, number>>;
  readonly mark: NumberStyle["mark"];
};
