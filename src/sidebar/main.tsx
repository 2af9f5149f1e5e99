import { render } from "preact";
import { Pages } from "../pages/pages";
import { scriptBridge } from "./bridge";
import type { Event } from "./event";
import { openPages, printHere } from "./pages-window";
import { type Ask, type State, startState } from "./state";
import { update } from "./update";
import { Sidebar } from "./view/sidebar";

/**
 * The only place that waits: it draws the state, sends what the state asks for, and opens the
 * browser's own print dialog when pages have come. They stand in this same document, unseen on
 * screen, so that nothing has to be opened or fetched.
 */
function start(root: Element, paper: Element, today: () => string): void {
  let state: State = startState(today());
  const draw = () => {
    render(<Sidebar state={state} dispatch={dispatch} />, root);
    render(state.pages && <Pages pages={state.pages} />, paper);
  };
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
    const day = today();
    if (day !== state.today) {
      state = { ...state, today: day };
      dispatch({ type: "day came", today: day });
    }
    const step = update(state, event);
    const { pages } = step.state;
    const left = event.type === "closed athlete" ? state.athlete : null;
    const printing = pages !== null && pages !== state.pages;
    state = step.state;
    const held = document.activeElement;
    const next = held && nextInList(held);
    draw();
    // Another view is read from its beginning, however far this one was scrolled.
    if (event.type === "chose view") scrollTo(0, 0);
    if (left !== null) rowOf(root, left)?.focus();
    // What had the focus may be done with and gone: the reader stays in the list, or in the view.
    else if (held?.isConnected === false)
      (next?.() ?? root.querySelector<HTMLElement>("main h1"))?.focus();
    for (const ask of step.asks) send(ask);
    if (event.type === "asked for window") {
      dispatch({ type: "opened window", given: openPages(document) });
    }
    // After the browser has drawn: the dialog stops everything until it is closed.
    if (printing && paper.hasChildNodes()) {
      requestAnimationFrame(() => {
        if (!printHere(window)) dispatch({ type: "kept from printing" });
      });
    }
  }
  // Out of an athlete's page as out of a menu; in a field Escape leaves what was typed alone.
  document.addEventListener("keydown", ({ key, target }) => {
    const inField = target instanceof Element && target.matches("select, input, textarea");
    if (key === "Escape" && state.athlete !== null && !inField)
      dispatch({ type: "closed athlete" });
  });
  // Only the local workbook tells; online nobody does.
  addEventListener("undone", () => dispatch({ type: "undone" }));
  dispatch({ type: "started" });
}

/** The athlete's row in the list, where the reader was before the page was opened. */
function rowOf(root: Element, athlete: string): HTMLButtonElement | undefined {
  return [...root.querySelectorAll<HTMLButtonElement>("button.row")].find(
    (row) => row.querySelector(".name")?.textContent === athlete,
  );
}

/**
 * Where a list goes on when the entry that holds the focus is done with: the button of the entry that
 * has come into its place, or of the last one; null outside a list and in one that has ended.
 */
function nextInList(held: Element): () => HTMLElement | null {
  const entry = held.closest("main .list > li");
  const list = entry?.parentElement;
  const at = entry && list ? [...list.children].indexOf(entry) : -1;
  return () => {
    if (!list?.isConnected) return null;
    const { children } = list;
    return children[Math.min(at, children.length - 1)]?.querySelector("button") ?? null;
  };
}

/** The coach's own day; a sidebar may stand open over midnight. */
function thisDay(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

start(document.getElementById("sidebar")!, document.getElementById("pages")!, thisDay);
