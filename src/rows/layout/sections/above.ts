import type { Day } from "../../../coaching/calendar/day";
import type { Column } from "../../header/column";
import { weekdayOfWord } from "../../value/day-text";
import type { Unit } from "../../value/units";
import type { HeadedGroups } from "../across/header-of-groups";
import type { DaySettler } from "../day-settler";
import type { Placed } from "../flat-rows";
import { liftInWords } from "../lift-in-words";
import type { TabAnswers } from "../tab-answers";
import type { Unfolded } from "../unfolded";
import type { PendingSet } from "./marker-sets";

/** What stands above a row and holds for it, until another line says otherwise. */
export type Above = {
  athlete: Placed | null;
  /** The athlete stands beside the day, and holds for its session alone. */
  besideDay: boolean;
  day: { day: Day; row: number; column: number } | null;
  /** What was written last that names a week, and its cell's row and column; it is no day. */
  week: { readonly week: string; readonly cell: string } | null;
  minute: Placed | null;
  exercise: Placed | null;
  /** The kind of the sets that follow, as a line of its own says: "Warm-up". */
  kind: Placed | null;
  /** The jump test whose rows follow; null among lifts. */
  test: Placed | null;
  bar: Placed | null;
  gym: Placed | null;
  /** The bar of this session alone, as the coach answered. */
  sessionBar: Placed | null;
  /** The session's bar is doubtful, so its loads are not settled. */
  barDoubtful: boolean;
  /** The load written last, for blank cells and ditto marks below it. */
  load: unknown;
  /** Athlete, day and lift that it is of. */
  loadOf: string;
  /** Sets written in shorthand so far, of an athlete, day and lift, which are numbered on. */
  readonly shorthandSets: Map<string, number>;
  /** Row of the header that holds. */
  header: number;
  columns: Readonly<Record<string, Column>>;
  reps: readonly Column[];
  /** Lifts or sets side by side; `columns` are then what they share. */
  across: HeadedGroups | null;
  /** Number of the set that the columns are of, where a heading says it. */
  set: Placed | null;
};

/** One walk down a tab of blocks. */
export type Walk = {
  readonly into: Unfolded;
  readonly above: Above;
  readonly settler: DaySettler;
  readonly pending: PendingSet[];
  readonly tab: TabAnswers;
  /** Unit of loads whose heading names none, as the coach answered. */
  readonly massUnit: Unit | null;
};

/** Nothing known yet but what the tab's name says, an athlete's or a lift's, and what the coach said. */
export function aboveAll(title: string, tab: TabAnswers): Above {
  const lift = liftInWords(title) ?? tab.exercise ?? null;
  const athlete = tab.athlete ?? (liftInWords(title) === null ? personName(title) : null);
  return {
    athlete: athlete === null ? null : [athlete, -1],
    besideDay: false,
    day: null,
    week: null,
    minute: null,
    exercise: lift === null ? null : [lift, -1],
    kind: null,
    test: null,
    bar: null,
    gym: null,
    sessionBar: null,
    barDoubtful: false,
    load: "",
    loadOf: "",
    shorthandSets: new Map(),
    header: -1,
    columns: {},
    reps: [],
    across: null,
    set: null,
  };
}

const trade =
  /\b(sets?|gym|log|week|wk|sheet\d*|tab|training|session|block|jumps?|season|sätze|woche|squad|total|road|track|tabelle\d*|lifts?|lifting|strength|kraft|accessory|assistance|warm-?up|tests?|testing|results?|data)\b/i;
/** Words that stand alone over rows, and are names of people beside another. */
const aloneNoName =
  /^(?:power|speed|main|master|notes?|team|group|men|women|boys|girls|juniors?|seniors?|core|mobility|upper|lower|plyos?|weights?)$/i;

/** "Athlete: Ilka Brandmoor", and the label alone beside the name. */
export const labelled = /^(?:athlete|name|runner|athlet|athletin|sportler)\s*:\s*(.*)$/i;

/** A title that is a person's name: up to four words of letters, none a word of the trade. */
export function personName(text: string): string | null {
  const said = labelled.exec(text.trim())?.[1] ?? text;
  const bare = said.replace(/\s*[–—|:(].*$/, "").trim();
  const words = bare.split(/\s+/);
  const letters = /^\p{Lu}[\p{L}.'’-]*(\s+(?:\p{Lu}[\p{L}.'’-]*|[a-z]{2,3}))*$/u;
  const isName = letters.test(bare) && words.length <= 4 && !trade.test(bare);
  return isName && !aloneNoName.test(bare) && weekdayOfWord(bare) === null ? bare : null;
}

/** Athlete, day and lift of a row that has them all. */
export function keyOf({ athlete, day, exercise }: Above): string {
  return [athlete![0], day!.day, exercise![0]].join("|");
}

/** The athlete above, as a note carries it. */
export function whoAbove(above: Above): string {
  return String(above.athlete?.[0] ?? "");
}

/** A row of nobody, of no day or of no lift is left out; what names a week above it is said to be no day. */
export function reportLacking({ above, into }: Walk, row: number): void {
  const { athlete, day, week } = above;
  if (athlete === null) into.report("athlete-missing", row, 0, {}, true);
  else if (day === null) into.report("day-missing", row, 0, week ?? {}, true);
  else into.report("exercise-missing", row, 0, {}, true);
}
