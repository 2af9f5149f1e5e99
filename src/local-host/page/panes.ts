/** A part of the page that the keyboard can be sent to; false when it is not there now. */
export type Pane = {
  readonly holds: (focused: Element | null) => boolean;
  readonly enter: () => boolean;
};

/**
 * F6 goes from part to part, as between the panes of a browser: inside the grid Tab goes from cell to
 * cell, so without it the toolbar and the sidebar could not be reached by keyboard.
 *
 * @returns goes on from the part named, for a pane whose keys the page does not hear
 */
export function panes(order: readonly Pane[]): (from: Pane) => void {
  const goOn = (from: Pane | undefined) => {
    const at = from ? order.indexOf(from) : -1;
    for (let step = 1; step <= order.length; step++) {
      if (order[(at + step) % order.length]!.enter()) return;
    }
  };
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      goOn(order.find(({ holds }) => holds(document.activeElement)));
    },
    { capture: true },
  );
  return goOn;
}

/** The toolbar, entered at its first button. */
export function barPane(bar: HTMLElement): Pane {
  return {
    holds: (focused) => bar.contains(focused),
    enter: () => {
      const button = bar.querySelector("button");
      button?.focus();
      return button !== null;
    },
  };
}

/** The grid, entered where it was left: it listens in a field of its own. */
export function gridPane(grid: HTMLElement): Pane {
  let left: HTMLElement | null = null;
  grid.addEventListener("focusin", ({ target }) => {
    if (target instanceof HTMLElement) left = target;
  });
  return {
    holds: (focused) => focused === null || focused === document.body || grid.contains(focused),
    enter: () => {
      const field = left?.isConnected
        ? left
        : grid.querySelector<HTMLElement>("[contenteditable=true]");
      field?.focus();
      return field !== null;
    },
  };
}
