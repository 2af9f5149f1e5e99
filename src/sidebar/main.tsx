import { render } from "preact";
import { scriptBridge } from "./bridge";
import { type Ask, type State, startState } from "./state";
import { type Event, update } from "./update";
import { Sidebar } from "./view/sidebar";

/** The only place that waits: it draws the state, and sends what the state asks for. */
function start(root: Element, today: string): void {
  let state: State = startState(today);
  const draw = () => render(<Sidebar state={state} dispatch={dispatch} />, root);
  const send = (ask: Ask) => {
    scriptBridge(ask.name, ask.message).then(
      (answer) => dispatch({ type: "answered", ask, answer }),
      (error: unknown) =>
        dispatch({
          type: "failed",
          ask,
          message: error instanceof Error ? error.message : String(error),
        }),
    );
  };
  function dispatch(event: Event): void {
    const step = update(state, event);
    state = step.state;
    draw();
    for (const ask of step.asks) send(ask);
  }
  dispatch({ type: "started" });
}

const now = new Date();
const two = (part: number) => String(part).padStart(2, "0");
start(
  document.getElementById("sidebar")!,
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
);
