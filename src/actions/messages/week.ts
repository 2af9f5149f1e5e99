import type { NumberStyle } from "../../words/printed-numbers";
import type { Dress, ReadWithout } from "../messages";

/** One session proposed for one athlete, as its fields stand. */
export type WeekSession = {
  /** The lift's name where it is done in turn with the one the athlete is on; "" for that. */
  readonly lift: string;
  /** What a change of its load names; "" for the week's first turn, whose figures stand for the week. */
  readonly turn: string;
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
    /** "0.82: repeat the set first": where the leading set is first repeated; "" for nowhere. */
    readonly again: string;
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
  /** The lift the athlete is on. */
  readonly exercise: string;
  readonly sessions: readonly WeekSession[];
  readonly leftOut: boolean;
  /** Something is set to another value than is proposed. */
  readonly byHand: boolean;
  /** The coach has said that there is no rack for this line. */
  readonly noRack: boolean;
  /** Rows of this line that the coach has deleted in the Next week tab. */
  readonly deleted: number;
  /** The best gym days, the second best, and each refused day with its rule. */
  readonly daysSaid: readonly string[];
  /** Of each lift the weeks from this one if all goes well, named by their Mondays: "29 Jun", "2×5", 80. */
  readonly ahead: readonly {
    readonly lift: string;
    readonly steps: readonly {
      readonly week: string;
      readonly block: string;
      readonly loadKg: number;
    }[];
  }[];
  readonly blocks: readonly string[];
  readonly days: readonly { readonly day: string; readonly label: string; readonly why: string }[];
};

export type WeekView = ReadWithout & {
  /** How loads and speeds are shown; what is asked is in kg. */
  readonly numbers: NumberStyle;
  readonly monday: string;
  readonly mondays: readonly { readonly monday: string; readonly label: string }[];
  readonly notes: readonly string[];
  readonly lines: readonly WeekLine[];
  /** Those deleted in the tab are not among them. */
  readonly rowsToWrite: number;
  readonly deleted: number;
  /** What writing would do to rows of this week that already stand in the tab; "" for a first writing. */
  readonly already: string;
  /** The week stands in the tab as it is proposed: writing would change nothing. */
  readonly isWritten: boolean;
  /** Smallest change of load this gym's plates make, kg. */
  readonly stepKg: number;
  readonly canTakeBack: boolean;
  /** Cells and names listed under Rows. */
  readonly toCheck: number;
  readonly cautions: readonly string[];
};
