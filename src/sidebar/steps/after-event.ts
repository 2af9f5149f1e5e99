import { withChanges } from "../../actions/messages/week-change";
import { pageLabels } from "../../words/page-labels";
import { sidebarWords } from "../../words/sidebar";
import type { Event } from "../event";
import type { Ask, State, Step } from "../state";
import { afterAnswer } from "./after-answer";
import { asking, athleteAsk, fetchFor, ofOpenedAthlete, readAgain } from "./asks";
import { onShownWeek, shownWeek } from "./shown-week";
import { staleBehind } from "./stale";

/** The next state after a click or an answer, and what is asked of the script. */
export function afterEvent(state: State, event: Event): Step {
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
        const changed = { [monday]: withChanges(before, [event.change]) };
        return { state: { ...state, otherWeeks: { ...state.otherWeeks, ...changed } }, asks: [] };
      }
      const changes = withChanges(before, [event.change]);
      const next = { ...state, monday, changes, pages: null, said: null };
      return asking(next, fetchFor(next, "week"), sidebarWords.working);
    }
    case "wrote": {
      const { athletes, again } = event;
      const message = { today: state.today, ...shownWeek(state), athletes };
      return working(state, {
        name: "writeWeek",
        message: again ? { ...message, again } : message,
      });
    }
    case "took back": {
      const message = { today: state.today, monday: shownWeek(state).monday };
      return working(state, { name: "takeBackWeek", message });
    }
    case "took answer back":
      // An ask that takes back is known by being the same object when it is answered.
      return state.takeBack ? working(state, state.takeBack.ask) : { state, asks: [] };
    case "forgot damaged":
      return working(state, { name: "forgetDamaged", message: { what: event.what } });
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
    case "answered":
      return afterAnswer(state, event.ask, event.answer);
    case "failed":
      return {
        state: { ...onShownWeek(state), busy: null, readAnew: false, error: event.message },
        asks: [],
      };
  }
}

/** The script is asked to change something: what was said before is not about it. */
const working = (state: State, ask: Ask) =>
  asking({ ...state, said: null }, [ask], sidebarWords.working);
