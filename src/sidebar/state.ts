import type {
  AthleteView,
  DiaryView,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekChange,
  WeekView,
} from "../actions/messages";
import type { PrintedPages } from "../actions/page-messages";

export type ViewName = "week" | "squad" | "rows" | "setUp";

/** All the sidebar knows; everything on screen follows from it. */
export type State = {
  /** The coach's day, "2026-06-28". */
  readonly today: string;
  readonly view: ViewName;
  /** What is being waited for, in words; null when nothing is. */
  readonly busy: string | null;
  /** What was asked and is not answered yet. */
  readonly waiting: readonly Ask[];
  /** What went wrong, what is safe and what to do; null when nothing did. */
  readonly error: string | null;
  /** What was done last. */
  readonly said: string | null;
  /** What is on screen is being read again as the coach asked: it is said once it is. */
  readonly readAnew: boolean;
  /** What takes the last answer back, shown beside the sentence it belongs to; null for none. */
  readonly takeBack: { readonly said: string; readonly ask: Ask } | null;
  /** How many cells and names Rows would list, by whatever was read last; null when nothing says. */
  readonly toCheck: number | null;
  readonly squad: SquadView | null;
  readonly rows: RowCheckView | null;
  readonly setUp: SetUpView | null;
  readonly week: WeekView | null;
  /** Monday of the week looked at; null until the script has said which week is next. */
  readonly monday: string | null;
  /** Changes made to that week's proposal, in the order they were made. */
  readonly changes: readonly WeekChange[];
  /** The changes that `week` was answered with: fewer than all while an answer is waited for. */
  readonly shown: readonly WeekChange[];
  /** Changes made to other weeks, by Monday. */
  readonly otherWeeks: Readonly<Record<string, readonly WeekChange[]>>;
  /** The athlete opened, in the squad or in the week. */
  readonly athlete: string | null;
  readonly athleteView: AthleteView | null;
  /** The diary of the athlete opened in the squad. */
  readonly diary: DiaryView | null;
  /** Pages to be printed, shown on paper only; null when none were asked for. */
  readonly pages: PrintedPages | null;
  /** The host did not let the sidebar print: its pages can be opened in a window of their own. */
  readonly printKept: boolean;
};

/** What the sidebar asks of the script. */
export type Ask = { readonly name: string; readonly message: Readonly<Record<string, unknown>> };

export type Step = { readonly state: State; readonly asks: readonly Ask[] };

export function startState(today: string): State {
  return {
    today,
    view: "week",
    busy: null,
    waiting: [],
    error: null,
    said: null,
    readAnew: false,
    takeBack: null,
    toCheck: null,
    squad: null,
    rows: null,
    setUp: null,
    week: null,
    monday: null,
    changes: [],
    shown: [],
    otherWeeks: {},
    athlete: null,
    athleteView: null,
    diary: null,
    pages: null,
    printKept: false,
  };
}
