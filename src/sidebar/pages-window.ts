import { pageLabels } from "../words/page-labels";

/**
 * Opens the browser's print window for this document. A sandbox that forbids dialogs ignores the call
 * without a word, and then no event of printing comes.
 *
 * @returns whether the print window opened
 */
export function printHere(view: Window): boolean {
  let begun = false;
  const begin = () => {
    begun = true;
  };
  view.addEventListener("beforeprint", begin);
  view.print();
  view.removeEventListener("beforeprint", begin);
  return begun;
}

/**
 * Puts the drawn pages into a window of their own, which is no part of the sandbox and prints: for the
 * online sheet. Must be called from a click. Nothing is fetched: styles and pages are copied.
 *
 * @returns false when the browser holds new windows back
 */
export function openPages(from: Document): boolean {
  const paper = from.getElementById("pages");
  const opened = from.defaultView?.open("", "_blank");
  if (!paper || !opened) return false;
  const { document: page } = opened;
  // A blank window has no document type, and tables would be set by the rules of old pages.
  page.open();
  page.write("<!doctype html><html><head></head><body></body></html>");
  page.close();
  page.title = pageLabels.onPaper;
  page.documentElement.lang = from.documentElement.lang;
  for (const style of from.querySelectorAll("style")) {
    page.head.append(page.importNode(style, true));
  }
  const print = page.createElement("button");
  print.type = "button";
  print.className = "print-these";
  print.textContent = pageLabels.printThese;
  print.addEventListener("click", () => opened.print());
  page.body.className = "alone";
  page.body.append(print, page.importNode(paper, true));
  return true;
}
