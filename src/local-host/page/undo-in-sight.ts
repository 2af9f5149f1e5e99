import { IUndoRedoService } from "@univerjs/core";
import type { Host } from "../host";

/**
 * Brings the tab into sight whose change is taken back or made again, by button or key. The grid
 * library scrolls whatever tab is open to the changed rows, which the coach then does not see change.
 */
export function undoInSight({ engine }: Host): void {
  const { api, book, injector } = engine;
  const stacks = injector.get(IUndoRedoService);
  const show = (mutations: readonly { readonly params?: unknown }[] | undefined) => {
    for (const { params } of mutations ?? []) {
      const tabId = (params as { readonly subUnitId?: unknown } | undefined)?.subUnitId;
      const tab = typeof tabId === "string" ? book.getSheetBySheetId(tabId) : null;
      if (!tab) continue;
      if (tabId !== book.getActiveSheet().getSheetId()) book.setActiveSheet(tab);
      return;
    }
  };
  api.addEvent(api.Event.BeforeUndo, () => show(stacks.pitchTopUndoElement()?.undoMutations));
  api.addEvent(api.Event.BeforeRedo, () => show(stacks.pitchTopRedoElement()?.redoMutations));
}
