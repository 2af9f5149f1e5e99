import { IUndoRedoService } from "@univerjs/core";
import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import { element } from "./element";

type Step = { readonly params?: unknown };

/**
 * Brings the tab into sight whose change is taken back or made again, by button or key. The grid
 * library scrolls whatever tab is open to the changed rows, which the coach then does not see change.
 *
 * @param changed told when there is something to take back or make again
 * @returns what says the same to a screen reader, in whose hearing cells change without a word
 */
export function undoInSight({ engine }: Host, changed: () => void): HTMLElement {
  const { api, book, injector } = engine;
  const stacks = injector.get(IUndoRedoService);
  const heard = element("span", { className: "heard", role: "status" });
  const say = (text: string) => {
    // The same words again are heard only when they come anew.
    heard.textContent = "";
    setTimeout(() => {
      heard.textContent = text;
    }, 100);
  };
  const show = (
    steps: readonly Step[] | undefined,
    { none, done }: { readonly none: string; readonly done: (tab: string) => string },
  ) => {
    if (steps) changed();
    else say(none);
    for (const { params } of steps ?? []) {
      const tabId = (params as { readonly subUnitId?: unknown } | undefined)?.subUnitId;
      const tab = typeof tabId === "string" ? book.getSheetBySheetId(tabId) : null;
      if (!tab) continue;
      if (tabId !== book.getActiveSheet().getSheetId()) book.setActiveSheet(tab);
      say(done(tab.getSheetName()));
      return;
    }
  };
  api.addEvent(api.Event.BeforeUndo, () =>
    show(stacks.pitchTopUndoElement()?.undoMutations, localPage.undone),
  );
  api.addEvent(api.Event.BeforeRedo, () =>
    show(stacks.pitchTopRedoElement()?.redoMutations, localPage.redone),
  );
  return heard;
}
