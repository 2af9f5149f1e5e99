import { localPage } from "../../words/local-page";
import { messageOf } from "../message-of";
import type { MessageStrip } from "./message-strip";
import { requests } from "./requests";

type Open = {
  /** Where the open workbook is kept; null when nowhere. */
  readonly place: string | null;
  readonly wouldLose: () => boolean;
  readonly leave: () => Promise<void>;
};

/** Files dropped on an open workbook are offered to be opened in its place, never opened unasked. */
export function dropToOpen(page: HTMLElement, open: Open, { put }: MessageStrip): void {
  const openFiles = async (files: readonly File[]) => {
    const named = files.length === 1 ? files[0]!.name : localPage.manyFiles(files.length);
    put("drop", { text: localPage.openingNamed(named) });
    try {
      await open.leave();
      await requests.imported(files);
      location.reload();
    } catch (error) {
      put("drop", { text: localPage.notOpened(messageOf(error)), error: true });
    }
  };
  const ask = (files: readonly File[]) => {
    const [file] = files;
    if (!file) return;
    const named = files.length === 1 ? file.name : localPage.manyFiles(files.length);
    const kept = open.wouldLose()
      ? localPage.lostHere
      : open.place === null
        ? ""
        : localPage.keptHere(open.place);
    put("drop", {
      text: `${localPage.openDropped(named)} ${kept}`.trim(),
      action: { label: localPage.openIt, run: () => void openFiles(files) },
      close: localPage.stayHere,
    });
  };
  // Without these the browser would leave the page for the dropped file.
  page.ondragover = (event) => {
    event.preventDefault();
    page.classList.add("dropping");
  };
  page.ondragleave = (event) => {
    if (event.relatedTarget === null) page.classList.remove("dropping");
  };
  page.ondrop = (event) => {
    event.preventDefault();
    page.classList.remove("dropping");
    ask([...(event.dataTransfer?.files ?? [])]);
  };
}
