import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import { messageOf } from "../message-of";
import type { OpenedWorkbook } from "../server/workbook-store";
import { isChoosing } from "./choose-another";
import { element } from "./element";
import { firstScreen } from "./first-screen";
import { requests } from "./requests";
import { workbookPage } from "./workbook-page";

declare global {
  /** The open workbook's host, for tests and for a look from the browser's console. */
  var holdline: Host | undefined;
}

const nonce = (document.currentScript as HTMLScriptElement | null)?.nonce ?? "";
const page = document.getElementById("page") as HTMLElement;

const open = async (opened: OpenedWorkbook) => {
  document.title = `${opened.workbook.name} – ${localPage.product}`;
  globalThis.holdline = await workbookPage(page, opened, nonce);
};

async function start(): Promise<void> {
  try {
    const choosing = isChoosing();
    const opened = choosing ? null : await requests.opened();
    if (opened) await open(opened);
    else firstScreen(page, open, choosing ? () => location.reload() : null);
  } catch (error) {
    const sentence = messageOf(error);
    page.className = "loading";
    page.replaceChildren(
      element("p", {
        className: "says error",
        role: "alert",
        textContent: localPage.notOpened(sentence),
      }),
    );
  }
}

void start();
