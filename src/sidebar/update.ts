import { requestEffects } from "../actions/messages/request-effects";
import type { Event } from "./event";
import type { Ask, State, Step } from "./state";
import { afterEvent } from "./steps/after-event";

/** The next state and what to ask of the script. Pure. */
export function update(state: State, event: Event): Step {
  const { state: next, asks } = afterEvent(state, event);
  if (event.type === "answered" || event.type === "failed") {
    const others = state.waiting.filter((one) => !isSame(one, event.ask));
    return { state: { ...next, waiting: [...others, ...asks] }, asks };
  }
  // A button pressed twice: what writes is not asked for again while it is being done.
  const isDouble = asks.some(
    (ask) => requestEffects[ask.name] !== "looks" && state.waiting.some((one) => isSame(one, ask)),
  );
  if (isDouble) return { state, asks: [] };
  return { state: { ...next, waiting: [...state.waiting, ...asks] }, asks };
}

const isSame = (one: Ask, other: Ask) => JSON.stringify(one) === JSON.stringify(other);
