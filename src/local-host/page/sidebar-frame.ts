import { localPage } from "../../words/local-page";
import type { Host } from "../host";
import { messageOf } from "../message-of";
import { element } from "./element";
import { endTyping } from "./end-typing";
import type { Pane } from "./panes";
import { sandboxedPage } from "./sandboxed-page";

/** The place beside the grid where the add-on's sidebar opens, 300 px wide, one at a time. */
export function sidebarFrame(nonce: string) {
  const heading = element("h2", { className: "sidebar-title" });
  const frame = element("iframe", { title: localPage.sidebar });
  frame.sandbox.add("allow-scripts", "allow-forms", "allow-modals", "allow-downloads");
  const close = element("button", {
    type: "button",
    className: "quiet",
    textContent: "×",
    ariaLabel: localPage.closeSidebar,
  });
  const panel = element(
    "aside",
    { className: "sidebar", hidden: true, ariaLabel: localPage.sidebar },
    element("div", { className: "sidebar-head" }, heading, close),
    frame,
  );
  let goOn: (from: Pane) => void = () => {};
  const hide = () => {
    const focused = panel.contains(document.activeElement);
    panel.hidden = true;
    frame.srcdoc = "";
    dispatchEvent(new Event("resize"));
    // Into the grid: with the focus gone, what is typed next would go nowhere.
    if (focused) goOn(pane);
  };
  close.onclick = hide;
  const pane: Pane = {
    holds: (focused) => panel.contains(focused),
    enter: () => {
      if (!panel.hidden) frame.focus();
      return !panel.hidden;
    },
  };
  return {
    panel,
    pane,
    /** What F6 does inside the sidebar, whose keys the page does not hear, and closing it. */
    onLeave: (leave: (from: Pane) => void) => {
      goOn = leave;
    },
    show: (title: string, html: string) => {
      heading.textContent = title;
      frame.title = title;
      frame.srcdoc = sandboxedPage(html, nonce);
      panel.hidden = false;
      // The grid measures itself on resize only.
      dispatchEvent(new Event("resize"));
      // Who works by keyboard goes on where the menu led.
      frame.focus();
    },
    /** Tells it that cells were changed by Undo or Redo: what it shows is from before. */
    undone: () => frame.contentWindow?.postMessage({ kind: "undone" }, "*"),
    /** Answers the sidebar's calls from now on. */
    answerFrom: (host: Host) => {
      addEventListener("message", ({ source, data }) => {
        if (source !== frame.contentWindow || !data) return;
        if (data.kind === "close") hide();
        if (data.kind === "next pane") goOn(pane);
        if (data.kind !== "call") return;
        const answer = (rest: object) =>
          frame.contentWindow?.postMessage({ kind: "answer", id: data.id, ...rest }, "*");
        // Results of formulas come some time after a change: a call sees them all, as online.
        endTyping(host)
          .then(() => host.settled())
          .then(() => answer({ value: host.run(String(data.name), data.args) }))
          .catch((error: unknown) => answer({ sentence: messageOf(error) }));
      });
    },
  };
}
