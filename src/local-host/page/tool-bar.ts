import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import { messageOf } from "../message-of";
import { chooseAnother } from "./choose-another";
import { element } from "./element";
import { endTyping } from "./end-typing";
import type { KeptState } from "./kept-state";
import { menuButton } from "./menu-button";
import type { MessageStrip } from "./message-strip";

/** The add-on's menu and the few things the grid itself does not offer, in one slim row. */
export function toolBar(
  host: Host,
  name: string,
  state: HTMLElement,
  { put }: MessageStrip,
  kept: KeptState,
): readonly HTMLElement[] {
  const button = (label: string, run: () => void) =>
    element("button", { type: "button", className: "quiet", textContent: label, onclick: run });
  /** What goes wrong is said in the strip, under the label that was pressed. */
  const attempt = (label: string, act: () => unknown) => {
    put("tool", null);
    endTyping(host)
      .then(act)
      .catch((error: unknown) => {
        put("tool", { text: localPage.menuFailed(label, messageOf(error)), error: true });
      });
  };
  const leaveToChoose = async () => {
    await kept.leave();
    chooseAnother();
  };
  const openAnother = () => {
    if (!kept.wouldLose()) return leaveToChoose();
    return put("tool", {
      text: localPage.lostHere,
      action: {
        label: localPage.openAnotherOne,
        run: () => attempt(localPage.openAnother, leaveToChoose),
      },
      close: localPage.stayHere,
    });
  };
  return [
    element("h1", { textContent: name }),
    ...host.menus.map(({ title, items }) =>
      menuButton(title, items, ({ label, functionName }) => {
        attempt(label, () => host.run(functionName));
      }),
    ),
    button(localPage.openAnother, () => attempt(localPage.openAnother, openAnother)),
    button(localPage.undo, host.undo),
    button(localPage.redo, host.redo),
    button(localPage.saveCopy, () => attempt(localPage.saveCopy, kept.saveCopy)),
    state,
  ];
}
