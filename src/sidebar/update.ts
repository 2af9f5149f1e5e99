import type {
  AthleteView,
  DiaryView,
  Done,
  KeptMatter,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekChange,
  WeekView,
} from "../actions/messages";
import type { PageKind, PrintedPages } from "../actions/page-messages";
import { diaryViewWords } from "../words/diary-view";
import { pageLabels } from "../words/page-labels";
import { sidebarWords } from "../words/sidebar";
import type { Ask, State, Step, ViewName } from "./state";
import { takesBack } from "./take-back";

/** What can happen: a click, or an answer of the script. */
export type Event =
  | { readonly type: "started" }
  /** Another day has begun while the sidebar stood open. */
  | { readonly type: "day came"; readonly today: string }
  | { readonly type: "chose view"; readonly view: ViewName }
  | { readonly type: "opened athlete"; readonly athlete: string }
  | { readonly type: "closed athlete" }
  | { readonly type: "asked again" }
  /** The workbook's own Undo or Redo has changed cells. */
  | { readonly type: "undone" }
  | { readonly type: "asked"; readonly ask: Ask; readonly busy: string }
  | { readonly type: "chose week"; readonly monday: string }
  | { readonly type: "changed"; readonly change: WeekChange }
  | {
      readonly type: "wrote";
      readonly athletes: readonly string[] | null;
      /** Rows deleted in the tab are written, too. */
      readonly again?: true;
    }
  | { readonly type: "took back" }
  /** An answer is to be taken back. */
  | { readonly type: "took answer back" }
  /** Something kept that can no longer be read is to be forgotten. */
  | { readonly type: "forgot damaged"; readonly what: KeptMatter }
  | { readonly type: "printed"; readonly kind: PageKind }
  | { readonly type: "printed again" }
  /** The host did not open its print window. */
  | { readonly type: "kept from printing" }
  /** The pages are wanted in a window of their own, and whether the browser gave one. */
  | { readonly type: "asked for window" }
  | { readonly type: "opened window"; readonly given: boolean }
  | { readonly type: "answered"; readonly ask: Ask; readonly answer: unknown }
  | { readonly type: "failed"; readonly ask: Ask; readonly message: string };

/** The next state and what to ask of the script. Pure. */
export function update(state: State, event: Event): Step {
  const { state: next, asks } = stepAfter(state, event);
  if (event.type === "answered" || event.type === "failed") {
    const others = state.waiting.filter((one) => !isSame(one, event.ask));
    return { state: { ...next, waiting: [...others, ...asks] }, asks };
  }
  // A button pressed twice: what writes is not asked for again while it is being done.
  const isDouble = asks.some(
    (ask) => !onlyReads.test(ask.name) && state.waiting.some((one) => isSame(one, ask)),
  );
  if (isDouble) return { state, asks: [] };
  return { state: { ...next, waiting: [...state.waiting, ...asks] }, asks };
}

const onlyReads = /View$|^(?:rowCheck|goToCell|printPages)$/;
const isSame = (one: Ask, other: Ask) => JSON.stringify(one) === JSON.stringify(other);

function stepAfter(state: State, event: Event): Step {
  switch (event.type) {
    case "started":
      return asking(state, fetchFor(state, state.view), sidebarWords.reading);
    case "day came": {
      const { today } = event;
      // Next week is another one now, unless one was chosen to be changed.
      const monday = state.changes.length === 0 ? null : state.monday;
      const next = { ...staleBehind(state), today, monday };
      const asks = [...fetchFor(next, next.view), ...ofOpenedAthlete(next)];
      return asking(next, asks, sidebarWords.reading);
    }
    case "chose view": {
      const next = {
        ...state,
        view: event.view,
        athlete: null,
        athleteView: null,
        diary: null,
        said: null,
        readAnew: false,
        error: null,
      };
      // What was read before stays until then: cells may have been typed into since, which nobody tells.
      return asking(next, fetchFor(next, event.view), sidebarWords.reading);
    }
    case "opened athlete": {
      const next = {
        ...state,
        athlete: event.athlete,
        athleteView: null,
        diary: null,
        said: null,
        readAnew: false,
      };
      return asking(next, [athleteAsk("athleteView", next)], sidebarWords.reading);
    }
    case "closed athlete":
      return {
        state: { ...state, athlete: null, athleteView: null, diary: null, error: null },
        asks: [],
      };
    case "asked again":
      return asking(
        { ...state, error: null, said: null, readAnew: true },
        readAgain(state),
        sidebarWords.reading,
      );
    case "undone":
      // Not read again at once: a call would end what is being typed in the grid.
      return { state: { ...state, said: sidebarWords.undoneSince, readAnew: false }, asks: [] };
    case "asked":
      return asking({ ...state, error: null, said: null }, [event.ask], event.busy);
    case "chose week": {
      const { monday } = event;
      const otherWeeks =
        state.monday === null
          ? state.otherWeeks
          : { ...state.otherWeeks, [state.monday]: state.changes };
      const changes = otherWeeks[monday] ?? [];
      const next = { ...state, monday, changes, otherWeeks, pages: null, said: null };
      return asking(next, fetchFor(next, "week"), sidebarWords.reading);
    }
    case "changed": {
      const { monday, changes: before } = shownWeek(state);
      if (state.monday !== null && monday !== null && monday !== state.monday) {
        // Another week was chosen meanwhile: the change stays with the one it was made to.
        const changed = { [monday]: withChange(before, event.change) };
        return { state: { ...state, otherWeeks: { ...state.otherWeeks, ...changed } }, asks: [] };
      }
      const changes = withChange(before, event.change);
      const next = { ...state, monday, changes, pages: null, said: null };
      return asking(next, fetchFor(next, "week"), sidebarWords.working);
    }
    case "wrote":
      return asking(
        { ...state, said: null, error: null },
        [
          {
            name: "writeWeek",
            message: {
              today: state.today,
              ...shownWeek(state),
              athletes: event.athletes,
              ...(event.again && { again: true }),
            },
          },
        ],
        sidebarWords.working,
      );
    case "took back":
      return asking(
        { ...state, said: null, error: null },
        [
          {
            name: "takeBackWeek",
            message: { today: state.today, monday: shownWeek(state).monday },
          },
        ],
        sidebarWords.working,
      );
    case "took answer back": {
      const { ask } = state.takeBack ?? {};
      // An ask that takes back is known by being the same object when it is answered.
      return asking({ ...state, said: null, error: null }, ask ? [ask] : [], sidebarWords.working);
    }
    case "forgot damaged":
      return asking(
        { ...state, said: null, error: null },
        [{ name: "forgetDamaged", message: { what: event.what } }],
        sidebarWords.working,
      );
    case "printed":
      return asking(
        { ...state, said: null, pages: null },
        [
          {
            name: "printPages",
            message: { today: state.today, kind: event.kind, ...shownWeek(state) },
          },
        ],
        pageLabels.preparing,
      );
    case "printed again":
      // The same pages as a new object: whoever draws the state prints what is new.
      return { state: { ...state, pages: state.pages && { ...state.pages } }, asks: [] };
    case "kept from printing":
      return { state: { ...state, printKept: true, said: `${pageLabels.keptBack}.` }, asks: [] };
    case "asked for window":
      // Whoever draws the state opens it: a browser gives a window only within the click.
      return { state, asks: [] };
    case "opened window": {
      const said = event.given ? (state.pages?.said ?? null) : `${pageLabels.windowKept}.`;
      return { state: { ...state, said }, asks: [] };
    }
    case "answered": {
      const step = answered({ ...state, readAnew: false }, event.ask, event.answer);
      return state.readAnew
        ? {
            ...step,
            state: { ...step.state, said: step.state.said ?? readAnewWords(step.state, event.ask) },
          }
        : step;
    }
    case "failed":
      return {
        state: { ...onShownWeek(state), busy: null, readAnew: false, error: event.message },
        asks: [],
      };
  }
}

/** Checked again from the end of the list, its beginning may be out of sight. */
const readAnewWords = ({ rows }: State, { name }: Ask) =>
  name === "rowCheck" && rows !== null ? `${rows.summary}.` : sidebarWords.readAnew;

function asking(state: State, asks: readonly Ask[], busy: string): Step {
  return asks.length === 0 ? { state, asks } : { state: { ...state, busy, error: null }, asks };
}

/** Changes to one athlete's week are kept together, and to each of its other turns, the later of each field counting. */
export function withChange(
  changes: readonly WeekChange[],
  change: WeekChange,
): readonly WeekChange[] {
  const isAbout = ({ athlete, turn }: WeekChange) =>
    athlete === change.athlete && turn === change.turn;
  const before = changes.find(isAbout);
  return [...changes.filter((one) => !isAbout(one)), { ...before, ...change }];
}

/** The week on screen with its changes: another one may have been chosen and not been read yet. */
function shownWeek({
  week,
  monday,
  changes,
  otherWeeks,
}: State): Pick<State, "monday" | "changes"> {
  if (week === null || monday === null) return { monday: week?.monday ?? monday, changes };
  return week.monday === monday
    ? { monday, changes }
    : { monday: week.monday, changes: otherWeeks[week.monday] ?? [] };
}

/** A week taken back is proposed afresh, by the script and here: changes are kept until then. */
function proposedAfresh(state: State, monday: string): State {
  const { [monday]: gone, ...otherWeeks } = state.otherWeeks;
  return state.monday === monday ? { ...state, changes: [], otherWeeks } : { ...state, otherWeeks };
}

/** Back to the week on screen, when the one that was chosen could not be read. */
function onShownWeek(state: State): State {
  const { monday, changes, otherWeeks } = state;
  const aside = monday === null ? otherWeeks : { ...otherWeeks, [monday]: changes };
  return { ...state, otherWeeks: aside, ...shownWeek(state) };
}

/** What is on screen, read anew: the opened athlete with it. */
function readAgain(state: State): readonly Ask[] {
  const ofAthlete = ofOpenedAthlete(state);
  return state.view === "squad" && state.athlete !== null
    ? ofAthlete
    : [...fetchFor(state, state.view), ...ofAthlete];
}

function ofOpenedAthlete(state: State): readonly Ask[] {
  return state.athlete === null ? [] : [athleteAsk("athleteView", state)];
}

/** Whether an answer about a week is of the week and the changes as they are now: a later one may be on its way. */
function isPresentWeek({ monday, changes }: State, message: Ask["message"]): boolean {
  const sameWeek = message.monday === null || message.monday === monday;
  return sameWeek && JSON.stringify(message.changes) === JSON.stringify(changes);
}

function athleteAsk(name: "athleteView" | "diaryView", { today, athlete }: State): Ask {
  return { name, message: { today, athlete } };
}

function fetchFor(state: State, view: ViewName): readonly Ask[] {
  const { today, monday, changes } = state;
  switch (view) {
    case "week":
      return [{ name: "weekView", message: { today, monday, changes } }];
    case "squad":
      return [{ name: "squadView", message: { today } }];
    case "rows":
      return [{ name: "rowCheck", message: { today } }];
    case "setUp":
      return [{ name: "setUpView", message: { today } }];
  }
}

function has(state: State, view: ViewName): boolean {
  return state[view === "setUp" ? "setUp" : view] !== null;
}

function answered(state: State, ask: Ask, answer: unknown): Step {
  const { name, message } = ask;
  const next = { ...state, busy: null, error: null };
  switch (name) {
    case "squadView": {
      const squad = answer as SquadView;
      return { state: { ...next, squad, toCheck: squad.toCheck }, asks: [] };
    }
    case "athleteView":
      // A slow answer about an athlete since left is not shown.
      if (message.athlete !== state.athlete) return { state: next, asks: [] };
      // In the squad the diary follows once the page can be read.
      return asking(
        { ...next, athleteView: answer as AthleteView },
        state.view === "squad" ? [athleteAsk("diaryView", state)] : [],
        diaryViewWords.reading,
      );
    case "diaryView":
      return message.athlete === state.athlete
        ? { state: { ...next, diary: answer as DiaryView }, asks: [] }
        : { state: next, asks: [] };
    case "writeDiaryAnswer":
      return asking(
        // Words of a note change no figure of the other views: they stay as read.
        { ...next, said: (answer as Done).said },
        message.athlete === state.athlete ? [athleteAsk("diaryView", state)] : [],
        diaryViewWords.reading,
      );
    case "rowCheck":
      return { state: withRows(next, answer as RowCheckView), asks: [] };
    case "answerName":
    case "answerSet": {
      const read = withRows(stale(next), answer as RowCheckView);
      return shownAgain({ ...read, ...remembered(state, ask, null) });
    }
    case "setUpView":
      return { state: { ...next, setUp: answer as SetUpView }, asks: [] };
    case "answerTable":
    case "forgetTable":
    case "answerTab":
    case "forgetTab":
    case "answerColumn":
    case "forgetColumn":
    case "forgetName":
    case "forgetSet": {
      const setUp = answer as SetUpView;
      return shownAgain({ ...stale(next), setUp, ...remembered(state, ask, setUp) });
    }
    case "weekView": {
      if (!isPresentWeek(state, message)) return { state, asks: [] };
      const week = answer as WeekView;
      const { monday, toCheck } = week;
      return { state: { ...next, week, monday, toCheck, shown: state.changes }, asks: [] };
    }
    case "printPages": {
      const pages = answer as PrintedPages;
      return { state: { ...next, pages, said: pages.said }, asks: [] };
    }
    case "mendCell":
    case "makeCleanTabs":
      return asking(
        { ...staleBehind(next), said: (answer as Done).said },
        fetchFor(next, state.view),
        sidebarWords.reading,
      );
    case "forgetDamaged": {
      const read = { ...stale(next), said: (answer as Done).said };
      return asking(read, fetchFor(next, state.view), sidebarWords.reading);
    }
    case "writeWeek":
      return asking(
        // The changes stay: without them writing again would put the proposal back over the coach's.
        { ...next, said: (answer as Done).said },
        fetchFor(next, "week"),
        sidebarWords.reading,
      );
    case "takeBackWeek": {
      const afresh = { ...proposedAfresh(next, String(message.monday)), pages: null };
      return asking(
        { ...afresh, said: (answer as Done).said },
        fetchFor(afresh, "week"),
        sidebarWords.reading,
      );
    }
    case "goToCell":
      return { state: next, asks: [] };
    default:
      return { state: { ...next, said: (answer as Done).said }, asks: [] };
  }
}

const withRows = (state: State, rows: RowCheckView): State => ({
  ...state,
  rows,
  toCheck: rows.problems.length + rows.names.length,
});

/** What an answer did, in a sentence, and what takes it back; taking back is not itself taken back. */
function remembered(state: State, ask: Ask, setUp: SetUpView | null) {
  if (state.takeBack?.ask === ask) return { said: sidebarWords.takenBack, takeBack: null };
  const back = takesBack(ask, state.setUp, setUp);
  const said = /^forget/.test(ask.name) ? sidebarWords.forgotten : sidebarWords.remembered;
  const { today } = state;
  const takeBack = back && {
    said,
    ask: { name: back.name, message: { today, ...back.message } },
  };
  return { said, takeBack };
}

/** An answer can be taken back from another view than the one it is answered with. */
function shownAgain(state: State): Step {
  return has(state, state.view)
    ? { state, asks: [] }
    : asking(state, fetchFor(state, state.view), sidebarWords.reading);
}

/** What was read before an answer or an edit is read again when it is next looked at. */
function stale(state: State): State {
  return { ...state, toCheck: null, squad: null, rows: null, setUp: null, week: null, pages: null };
}

/**
 * The same where what is on screen is read again at once: it stays until then, for a list that goes
 * and comes back would lose the reader's place in it.
 */
function staleBehind(state: State): State {
  const { view } = state;
  return { ...stale(state), toCheck: state.toCheck, [view]: state[view] };
}
