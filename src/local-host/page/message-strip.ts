import { localPage } from "../../words/local-page";
import { element } from "./element";

export type Message = {
  readonly text: string;
  readonly error?: boolean;
  readonly action?: { readonly label: string; readonly run: () => void };
  /** What closing is called when it is an answer. */
  readonly close?: string;
};

/** Long enough to read a sentence twice. */
const passingMs = 8000;

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
      textContent: message.close ?? localPage.close,
      onclick: () => put(key, null),
    });
    const line = element(
      "p",
      { className: message.error ? "says error" : "says" },
      element("span", { textContent: message.text }),
    );
    const { action } = message;
    const act =
      action &&
      element("button", { type: "button", textContent: action.label, onclick: action.run });
    line.append(...(act ? [act] : []), close);
    strip.append(line);
    shown.set(key, line);
    // A question is answered where the eye already is, by keyboard too.
    if (message.close !== undefined) act?.focus();
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** Shows a line that goes away by itself. */
  const passing = (key: string, text: string) => {
    put(key, { text });
    clearTimeout(timer);
    timer = setTimeout(() => put(key, null), passingMs);
  };
  return { strip, put, passing };
}

export type MessageStrip = ReturnType<typeof messageStrip>;
