import type { Ask, State, Step, ViewName } from "../state";

/** A step that asks, and says for what it waits; one that asks nothing waits for nothing. */
export function asking(state: State, asks: readonly Ask[], busy: string): Step {
  return asks.length === 0 ? { state, asks } : { state: { ...state, busy, error: null }, asks };
}

export function athleteAsk(name: "athleteView" | "diaryView", { today, athlete }: State): Ask {
  return { name, message: { today, athlete } };
}

export function fetchFor(state: State, view: ViewName): readonly Ask[] {
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

/** What is on screen, read anew: the opened athlete with it. */
export function readAgain(state: State): readonly Ask[] {
  const ofAthlete = ofOpenedAthlete(state);
  return state.view === "squad" && state.athlete !== null
    ? ofAthlete
    : [...fetchFor(state, state.view), ...ofAthlete];
}

export function ofOpenedAthlete(state: State): readonly Ask[] {
  return state.athlete === null ? [] : [athleteAsk("athleteView", state)];
}
