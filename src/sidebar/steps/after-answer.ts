import type {
  AthleteView,
  DiaryView,
  Done,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekView,
} from "../../actions/messages";
import type { PrintedPages } from "../../actions/page-messages";
import { diaryViewWords } from "../../words/diary-view";
import { sidebarWords } from "../../words/sidebar";
import type { Ask, State, Step } from "../state";
import { takesBack } from "../take-back";
import { asking, athleteAsk, fetchFor } from "./asks";
import { isPresentWeek, proposedAfresh } from "./shown-week";
import { stale, staleBehind } from "./stale";

/** The next state once the script has answered, and what is asked next. */
export function afterAnswer(state: State, ask: Ask, answer: unknown): Step {
  const step = answered({ ...state, readAnew: false }, ask, answer);
  if (!state.readAnew) return step;
  return {
    ...step,
    state: { ...step.state, said: step.state.said ?? readAnewWords(step.state, ask) },
  };
}

/** Checked again from the end of the list, its beginning may be out of sight. */
const readAnewWords = ({ rows }: State, { name }: Ask) =>
  name === "rowCheck" && rows !== null ? `${rows.summary}.` : sidebarWords.readAnew;

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
  return state[state.view] !== null
    ? { state, asks: [] }
    : asking(state, fetchFor(state, state.view), sidebarWords.reading);
}
