/**
 * What the printed pages are made from: plain JSON, every figure already in the coach's unit and
 * decimal mark. Nothing private is among it: no diary text, no medical reason, no strength estimate.
 */
import type { NumberStyle } from "../words/printed-numbers";
import type {
  Dress,
  KeptMatter,
  LinePicture,
  SeasonPicture,
  SeasonSeries,
  SetsPicture,
  WeekLine,
} from "./messages";

export type PageKind = "cards" | "rack plan" | "week page" | "pictures";

/** What a page was made without, which paper says as the sidebar does. */
export type MadeWithout = {
  /** What is kept with the workbook and can no longer be read. */
  readonly damaged: readonly Extract<KeptMatter, "answers" | "week changes">[];
  /** Rows with a cell not used, of the athletes on the page. */
  readonly rows: readonly { readonly athlete: string; readonly rows: number }[];
  /** Cells of the Next week tab that the coach has changed and paper does not follow. */
  readonly cells: readonly string[];
  /** Rows deleted in that tab whose sessions are on paper all the same: "Oona Petrakell, Tue 30 Jun". */
  readonly deleted: readonly string[];
  /** Cells to ask about before anything is lifted, by their place alone: "Gym E3". */
  readonly ask: readonly string[];
};

/** One line of the day's decision on a card. */
export type CardBand = {
  /** "0.81", "0.76 to 0.80"; the smaller words after it: "or faster". */
  readonly speed: string;
  readonly speedAfter: string;
  /** "0.82: repeat the set first": where the leading set is first repeated; "" for nowhere. */
  readonly again: string;
  /** "85"; "" for no heavy work. */
  readonly lift: string;
  /** "20 + 10 + 2.5" */
  readonly plates: string;
  /** Plates of one side for the drawing, kg. */
  readonly side: readonly number[];
  /** "0.46"; "" when not known. */
  readonly floor: string;
};

/** One athlete's session on A5. */
export type CardPage = {
  readonly without: MadeWithout;
  readonly athlete: string;
  /** "5000 m. Race week: R4, Sat 4 July." */
  readonly about: string;
  /** "Tue 30 June 2026, 18:00" */
  readonly when: string;
  /** "Rack 3" */
  readonly rack: string;
  readonly unit: string;
  readonly marker: {
    readonly load: string;
    readonly reps: number;
    readonly plates: string;
    readonly usual: string;
  } | null;
  readonly bands: readonly CardBand[];
  /** Said in place of the bands when there are none; "" otherwise. */
  readonly noBands: "no speed" | "no marker" | null;
  /** Usual mean of the first work set where it decides, as there is no marker; "" otherwise. */
  readonly firstSet: string;
  /** Share off a day slow by eye, the squad's rule, fraction. */
  readonly shareOff: number;
  readonly jumps: {
    /** "40 contacts in all." or "No jumps until asked about." */
    readonly lead: string;
    readonly lines: readonly {
      readonly name: string;
      /** "(in place of plate-to-plate drop jump)"; "" for the usual one. */
      readonly instead: string;
      readonly amount: string;
      readonly write: "contact" | "cleared" | "";
    }[];
    /** What to mind of the jumps that are on the card; null without any. */
    readonly care: {
      /** Longest contact of a trained athlete's drop jump in s, as the coach writes figures; null without one. */
      readonly contactS: string | null;
      readonly box: "soft" | "firm" | null;
    } | null;
  };
  readonly lift: {
    readonly name: string;
    readonly load: string;
    readonly plates: string;
    readonly sets: number;
    readonly reps: number;
    readonly say: string;
  };
  readonly assistance: readonly string[];
  readonly cautions: readonly string[];
};

/** One athlete's turn at a rack. */
export type RackLine = {
  readonly athlete: string;
  readonly marker: string;
  readonly markerChange: string;
  readonly load: string;
  readonly plates: string;
  readonly side: readonly number[];
  readonly change: string;
  readonly sets: string;
  /** "80, 75" */
  readonly slower: string;
};

/** One gym session's racks on A4. */
export type RackPage = {
  readonly without: MadeWithout;
  readonly when: string;
  readonly lifters: number;
  readonly minutes: number;
  /** A rule the room breaks, "" when all fits. */
  readonly warning: string;
  readonly racks: readonly {
    readonly name: string;
    readonly bar: string;
    readonly lines: readonly RackLine[];
    readonly back: string;
  }[];
  readonly stacks: readonly {
    readonly stack: string;
    readonly height: string;
    readonly athletes: string;
  }[];
  readonly noJumps: string;
  readonly plates: readonly {
    readonly plate: string;
    readonly bars: number;
    readonly stack: number;
    readonly drop: number;
    readonly owned: string;
    readonly spare: string;
  }[];
  /** Plates lacking, "25 kg": for the bars alone, and for bars and stacks at once; null when nothing is known to lack and not every number is known. */
  readonly short: { readonly bars: readonly string[]; readonly stacks: readonly string[] } | null;
  readonly unit: string;
  readonly cautions: readonly string[];
};

/** One athlete's line on the head coach's page. */
export type WeekPageLine = {
  readonly athlete: string;
  readonly event: string;
  readonly series: SeasonSeries | null;
  readonly since: string | null;
  readonly races: readonly { readonly day: string; readonly matters: string }[];
  readonly word: string;
  readonly dress: Dress;
  readonly words: string;
  readonly small: string;
  readonly sessions: string;
  readonly mayDo: string;
  readonly next: string;
  readonly nextDays: string;
};

/** The page a week for the head coach on A4. */
export type WeekPaper = {
  /** Its rows stand in `howSure`, beside how many there are in all. */
  readonly without: MadeWithout;
  readonly title: string;
  readonly written: string;
  readonly sentences: readonly string[];
  /** Over what each lifts in the planned week: "Next week, sets × reps". */
  readonly planned: string;
  readonly from: string;
  readonly to: string;
  readonly lines: readonly WeekPageLine[];
  readonly weeks: readonly { readonly week: string; readonly race: string; readonly gym: string }[];
  readonly howSure: string;
};

/** The charts of those who moved, some athletes to an A4 page. */
export type PicturePage = {
  /** How the drawings write figures. */
  readonly numbers: NumberStyle;
  readonly without: MadeWithout;
  /** "page 1 of 2"; "" for a single one. */
  readonly page: string;
  readonly athletes: readonly {
    readonly athlete: string;
    readonly word: string;
    readonly dress: Dress;
    readonly words: string;
    readonly season: SeasonPicture | null;
    readonly loadSpeed: LinePicture | null;
    readonly sets: SetsPicture | null;
    readonly ahead: WeekLine["ahead"];
  }[];
};

/** What is to be printed; `said` names it and how many pages. */
export type PrintedPages = { readonly said: string } & (
  | { readonly kind: "cards"; readonly cards: readonly CardPage[] }
  | { readonly kind: "rack plan"; readonly plans: readonly RackPage[] }
  | { readonly kind: "week page"; readonly paper: WeekPaper }
  | { readonly kind: "pictures"; readonly pictures: readonly PicturePage[] }
);
