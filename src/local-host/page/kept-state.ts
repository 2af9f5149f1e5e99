import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import type { OpenedWorkbook } from "../server/workbook-store";
import type { WorkbookData } from "../workbook-data";
import { autosave, resultsMs } from "./autosave";
import { endTyping } from "./end-typing";
import type { MessageStrip } from "./message-strip";
import { requests } from "./requests";

/** What the page can do with a workbook that it keeps. */
export type KeptState = {
  readonly saveCopy: () => Promise<void>;
  /** What of this workbook would be lost by leaving now: nothing where it has a place. */
  readonly wouldLose: () => boolean;
  /** Writes what is still to be written, and lets the page go without asking. */
  readonly leave: () => Promise<void>;
};

/**
 * Keeps the workbook: written after each change where it has a place, else asked for on leaving.
 * `state` always says which.
 */
export function keptState(
  host: Host,
  { opening, place }: Pick<OpenedWorkbook, "opening" | "place">,
  state: HTMLElement,
  { put }: MessageStrip,
): KeptState {
  let unkept = false;
  let leaving = false;
  state.textContent = localPage.calculating;
  void host.settled(Number.POSITIVE_INFINITY).then(() => {
    if (state.textContent !== localPage.calculating) return;
    state.textContent = place === null ? localPage.notKept : localPage.unchanged;
  });
  const save = (workbook: WorkbookData) => requests.save(opening, workbook);
  const saving =
    place === null
      ? null
      : autosave(host, save, (told) => {
          const failed = told.state === "failed" ? told.sentence : null;
          put(
            "save",
            failed === null
              ? null
              : {
                  text: localPage.notSaved(failed),
                  error: true,
                  action: { label: localPage.tryAgain, run: () => void saving?.now() },
                },
          );
          state.textContent =
            told.state === "saving"
              ? localPage.saving
              : failed === null
                ? localPage.savedTo(place)
                : "";
        });
  host.onChange(() => {
    unkept = true;
  });
  addEventListener("beforeunload", (event) => {
    const unsaved = host.engine.book.isCellEditing() || (saving ? saving.isPending() : unkept);
    if (!leaving && unsaved) event.preventDefault();
  });
  return {
    wouldLose: () => saving === null && unkept,
    leave: async () => {
      await endTyping(host);
      if (saving?.isPending()) await saving.now();
      if (saving?.isPending()) throw new Error(localPage.notSavedYet);
      leaving = true;
    },
    saveCopy: async () => {
      await endTyping(host);
      // What takes longer is in the file without its result, and calculated when that is opened.
      await host.settled(resultsMs).catch(() => undefined);
      const workbook = host.workbook();
      const address = URL.createObjectURL(await requests.exported(opening, workbook));
      const link = document.createElement("a");
      Object.assign(link, { href: address, download: `${workbook.name}.xlsx` }).click();
      URL.revokeObjectURL(address);
      unkept = false;
    },
  };
}
