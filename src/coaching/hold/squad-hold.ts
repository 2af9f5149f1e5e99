import type { Day } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import type { Plate } from "../record/plate";
import type { SquadRules } from "../record/squad-rules";
import type { SquadIndex } from "../series/squad-index";
import type { HoldNote, SeasonHold } from "./season-hold";

/** The season of a whole squad: what is common to all, and each athlete on asking. */
export type SquadHold = {
  readonly seasonStart: Day;
  /** Never refuses: an athlete without rows is `too few rows` and is told what is missing. */
  readonly of: (athlete: string) => SeasonHold;
  /** All athletes with rows, in order of name. */
  readonly all: () => readonly SeasonHold[];
  /** What speaks of the whole squad: serial correlation, many changes from one date. */
  readonly notes: () => readonly HoldNote[];
};

export function squadHold(_given: {
  readonly index: SquadIndex;
  readonly plates: readonly Plate[];
  /** Rows of the Athletes table, for baseline dates, experience, sessions a week; may be empty. */
  readonly athletes: readonly Athlete[];
  readonly rules: SquadRules;
  /** Default: first day after the squad's last gap of more than eight weeks. */
  readonly seasonStart?: Day;
}): SquadHold {
  throw new Error("being written");
}
