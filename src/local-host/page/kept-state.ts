import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import { autosave } from "./autosave";
import type { MessageStrip } from "./message-strip";
import { requests } from "./requests";

/**
 * Keeps the workbook: written after each change where it has a place, else asked for on leaving.
 * `state` always says which.
 */
export function keptState(
  host: Host,
  place: string | null,
  state: HTMLElement,
  { put }: MessageStrip,
): {
  readonly saveCopy: () => Promise<void>;
  /** What of this workbook would be lost by leaving now: nothing where it has a place. */
  readonly wouldLose: () => boolean;
  /** Writes what is still to be written, and lets the page go without asking. */
  readonly leave: () => Promise<void>;
} {
  let unkept = false;
  let leaving = false;
  state.textContent = localPage.calculating;
  void host.settled(Number.POSITIVE_INFINITY).then(() => {
    if (state.textContent !== localPage.calculating) return;
    state.textContent = place === null ? localPage.notKept : localPage.unchanged;
  });
  const saving =
    place === null
      ? null
      : autosave(host, requests.save, (save) => {
          const failed = save.state === "failed" ? save.sentence : null;
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
            save.state === "saving"
              ? localPage.saving
              : failed === null
                ? localPage.savedTo(place)
                : "";
        });
  host.onChange(() => {
    unkept = true;
  });
  addEventListener("beforeunload", (event) => {
    if (!leaving && (saving ? saving.isPending() : unkept)) event.preventDefault();
  });
  return {
    wouldLose: () => saving === null && unkept,
    leave: async () => {
      if (saving?.isPending()) await saving.now();
      if (saving?.isPending()) throw new Error(localPage.notSavedYet);
      leaving = true;
    },
    saveCopy: async () => {
      const workbook = host.workbook();
      const address = URL.createObjectURL(await requests.exported(workbook));
      const link = document.createElement("a");
      Object.assign(link, { href: address, download: `${workbook.name}.xlsx` }).click();
      URL.revokeObjectURL(address);
      unkept = false;
    },
  };
}
