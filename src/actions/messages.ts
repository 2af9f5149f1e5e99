/**
 * What passes between sidebar and script: plain JSON only, days as "2026-05-12". Sentences are made
 * on the script's side, so that sidebar, cell and paper say the same.
 */

/** How a word is dressed wherever it is shown; the word itself always stands there too. */
export type Dress = "low" | "high" | "unsure" | "plain";

/** What is kept with the workbook. */
export const keptMatters = ["answers", "next week", "week changes", "season"] as const;
export type KeptMatter = (typeof keptMatters)[number];

/** Something kept that can no longer be read: what that means and what to do. */
export type DamagedMemory = { readonly what: KeptMatter; readonly said: string };

/** What a whole view was read without, damaged as it is. */
type ReadWithout = { readonly damaged: readonly DamagedMemory[] };

export type SquadLine = {
  readonly athlete: string;
  readonly group: string;
  readonly event: string;
  readonly mayDo: string;
  readonly word: string;
  readonly dress: Dress;
  /** "since 12 May (± 10 days)" or "". */
  readonly since: string;
  readonly why: string;
  readonly today: string;
  readonly todayDress: Dress;
  readonly rowsNotUsed: number;
};

export type SquadView = ReadWithout & {
  readonly asOf: string;
  readonly asOfWords: string;
  readonly summary: string;
  readonly lines: readonly SquadLine[];
  /** Cells and names listed under Rows. */
  readonly toCheck: number;
  readonly cautions: readonly string[];
};

/** A series of one measure, percent of its own baseline. */
export type SeasonSeries = {
  readonly name: string;
  readonly points: readonly { readonly day: string; readonly percent: number }[];
};

export type SeasonPicture = {
  readonly athlete: string;
  readonly from: string;
  readonly to: string;
  readonly series: readonly SeasonSeries[];
  /** Half-width of the band, percent: two wobbles. */
  readonly band: number;
  readonly baselineTo: string | null;
  readonly since: { readonly from: string; readonly day: string; readonly to: string } | null;
  readonly races: readonly {
    readonly day: string;
    readonly name: string;
    readonly matters: string;
  }[];
  /** The whole picture in one or two sentences. */
  readonly inWords: string;
};

export type LinePicture = {
  readonly exercise: string;
  readonly points: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly latest: boolean;
  }[];
  readonly line: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly inWords: string;
};

export type SetsPicture = {
  readonly day: string;
  readonly sets: readonly {
    readonly set: number;
    readonly percent: number;
    readonly usual: number | null;
    readonly low: number | null;
    readonly high: number | null;
  }[];
  readonly inWords: string;
};

export type AthleteView = {
  readonly line: SquadLine;
  readonly season: SeasonPicture | null;
  readonly loadSpeed: LinePicture | null;
  readonly sets: SetsPicture | null;
};

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

export type RowProblem = {
  readonly tab: string;
  readonly tabId: number;
  readonly cell: string;
  readonly found: string;
  readonly why: string;
  readonly toDo: string;
  /** Code of the kind; its words are in `words/row-kinds.ts`. */
  readonly kind: string;
  /** Proposed value, only ever written on a click. */
  readonly mend: string | null;
};

/** A name that the Athletes table does not have, at the first cell that carries it. */
export type NameQuestion = {
  readonly name: string;
  readonly tab: string;
  readonly tabId: number;
  readonly cell: string;
  readonly rows: number;
  /** Athletes it may be, likeliest first; none once each was said to be somebody else. */
  readonly near: readonly string[];
  readonly toDo: string;
};

export type RowCheckView = ReadWithout & {
  readonly summary: string;
  readonly problems: readonly RowProblem[];
  readonly names: readonly NameQuestion[];
};

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
  /** Values in force of the squad's rules, by key. */
  readonly rules: Readonly<Record<string, number>>;
};

/** An answer after something was done: what happened, in one sentence. */
export type Done = { readonly said: string };

/** One session proposed for one athlete, as its fields stand. */
export type WeekSession = {
  readonly day: string;
  readonly dayWords: string;
  readonly block: string;
  readonly sets: number;
  readonly reps: number;
  readonly loadKg: number;
  readonly plates: readonly number[];
  readonly platesWords: string;
  readonly barKg: number;
  readonly markerKg: number | null;
  /** m/s; the set ends when two repetitions fall under it. */
  readonly speedFloor: number | null;
  readonly stack: string;
  readonly contacts: number;
  /** "0.81 or faster: 85 kg, as planned" and so on, for the day. */
  readonly bands: readonly {
    readonly speed: string;
    readonly lift: string;
    readonly change: string;
  }[];
  readonly ifWritten: readonly string[];
  /** What is done in place of the main lift, with its load: "leg press, by feel"; "" for the lift. */
  readonly instead: string;
};

export type WeekLine = {
  readonly athlete: string;
  readonly group: string;
  readonly event: string;
  /** Read this one before writing. */
  readonly odd: boolean;
  readonly word: string;
  readonly dress: Dress;
  /** One short reason for the list. */
  readonly brief: string;
  readonly why: readonly string[];
  readonly sessions: readonly WeekSession[];
  readonly leftOut: boolean;
  /** The coach has said that there is no rack for this line. */
  readonly noRack: boolean;
  /** The best gym days, the second best, and each refused day with its rule. */
  readonly daysSaid: readonly string[];
  /** Four weeks from this one if all goes well, named by their Mondays: "29 Jun", "2×5", 80. */
  readonly ahead: readonly {
    readonly week: string;
    readonly block: string;
    readonly loadKg: number;
  }[];
  readonly blocks: readonly string[];
  readonly days: readonly { readonly day: string; readonly label: string; readonly why: string }[];
};

export type WeekView = ReadWithout & {
  readonly monday: string;
  readonly mondays: readonly { readonly monday: string; readonly label: string }[];
  readonly notes: readonly string[];
  readonly lines: readonly WeekLine[];
  readonly rowsToWrite: number;
  /** What writing would do to rows of this week that already stand in the tab; "" for a first writing. */
  readonly already: string;
  /** Smallest change of load this gym's plates make, kg. */
  readonly stepKg: number;
  readonly canTakeBack: boolean;
  readonly cautions: readonly string[];
};

/** A coach's change to a proposal. */
export type WeekChange = {
  readonly athlete: string;
  readonly leaveOut?: boolean;
  readonly block?: string;
  readonly loadKg?: number;
  readonly sets?: number;
  readonly day?: string;
  readonly contacts?: number;
  readonly stack?: string;
  readonly noRack?: boolean;
};
