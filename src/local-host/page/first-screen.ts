import { localPage } from "../../words/local-page";
import { messageOf } from "../message-of";
import type { OpenedWorkbook } from "../server/workbook-store";
import { element } from "./element";
import { requests } from "./requests";

/** The sample squad, or a workbook of one's own by picking or dropping. */
export function firstScreen(
  page: HTMLElement,
  open: (opened: OpenedWorkbook) => Promise<void>,
  /** Given when the coach came from an open workbook: takes back to it. */
  back: (() => void) | null = null,
): void {
  const says = element("p", { className: "says", role: "status", hidden: true });
  const say = (text: string, error = false) => {
    says.hidden = false;
    says.className = error ? "says error" : "says";
    says.textContent = text;
    // Under the buttons it may be past the end of a small or enlarged window.
    says.scrollIntoView({ block: "nearest" });
  };
  const sample = element("button", {
    type: "button",
    className: "main",
    textContent: localPage.chooseSample,
  });
  const files = element("input", {
    type: "file",
    accept: ".xlsx,.csv",
    multiple: true,
    hidden: true,
    ariaLabel: localPage.chooseOwn,
  });
  const own = element("button", { type: "button", textContent: localPage.chooseOwn });
  const buttons = [sample, own];
  const attempt = async (workbook: Promise<OpenedWorkbook>) => {
    const pressed = document.activeElement;
    say(localPage.openingWorkbook);
    for (const button of buttons) button.disabled = true;
    try {
      await open(await workbook);
    } catch (error) {
      for (const button of buttons) button.disabled = false;
      // A button that is switched off loses the focus: who works by keyboard tries again from there.
      if (pressed instanceof HTMLElement) pressed.focus({ preventScroll: true });
      say(localPage.notOpened(messageOf(error)), true);
    }
  };
  sample.onclick = () => void attempt(requests.sample());
  own.onclick = () => files.click();
  files.onchange = () => {
    if (files.files?.length) void attempt(requests.imported([...files.files]));
    files.value = "";
  };
  const screen = element(
    "main",
    { className: "first" },
    element("h1", { textContent: localPage.product }),
    element("p", { textContent: localPage.about }),
    element(
      "div",
      { className: "choices" },
      element("section", {}, sample, element("p", { textContent: localPage.sampleAbout })),
      element("section", {}, own, files, element("p", { textContent: localPage.ownAbout })),
    ),
    says,
    ...(back
      ? [
          element("button", {
            type: "button",
            className: "back",
            textContent: localPage.back,
            onclick: back,
          }),
        ]
      : []),
    element("p", { className: "soft", textContent: `${localPage.stays} ${localPage.keys}` }),
  );
  screen.ondragover = (event) => {
    event.preventDefault();
    screen.classList.add("dropping");
  };
  screen.ondragleave = () => screen.classList.remove("dropping");
  screen.ondrop = (event) => {
    event.preventDefault();
    screen.classList.remove("dropping");
    const dropped = [...(event.dataTransfer?.files ?? [])];
    if (dropped.length > 0) void attempt(requests.imported(dropped));
  };
  // The browser's own way back leads to the same address, so that nothing is loaded by itself.
  if (back) addEventListener("popstate", back);
  page.className = "";
  page.replaceChildren(screen);
  sample.focus();
}
