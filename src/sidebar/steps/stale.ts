import type { State } from "../state";

/** What was read before an answer or an edit is read again when it is next looked at. */
export function stale(state: State): State {
  return { ...state, toCheck: null, squad: null, rows: null, setUp: null, week: null, pages: null };
}

/**
 * The same where what is on screen is read again at once: it stays until then, for a list that goes
 * and comes back would lose the reader's place in it.
 */
export function staleBehind(state: State): State {
  const { view } = state;
  return { ...stale(state), toCheck: state.toCheck, [view]: state[view] };
}
