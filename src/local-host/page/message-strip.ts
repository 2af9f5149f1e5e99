import { localPage } from "../../words/local-page";
import { element } from "./element";

export type Message = {
  readonly text: string;
  readonly error?: boolean;
  readonly action?: { readonly label: string; readonly run: () => void };
};

/** One line between toolbar and grid for what the coach should read; screen readers hear it. */
export function messageStrip() {
  const strip = element("div", { className: "messages", role: "status", ariaLive: "polite" });
  const shown = new Map<string, HTMLElement>();
  const put = (key: string, message: Message | null) => {
    shown.get(key)?.remove();
    shown.delete(key);
    if (!message) return;
    const close = element("button", {
      type: "button",
      className: "quiet",
      textContent: localPage.close,
      onclick: () => put(key, null),
    });
    const line = element(
      "p",
      { className: message.error ? "says error" : "says" },
      element("span", { textContent: message.text }),
    );
    if (message.action) {
      const { label, run } = message.action;
      line.append(element("button", { type: "button", textContent: label, onclick: run }));
    }
    line.append(close);
    strip.append(line);
    shown.set(key, line);
  };
  return { strip, put };
}

export type MessageStrip = ReturnType<typeof messageStrip>;
