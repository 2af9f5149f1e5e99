const mark = "#choose";

/** Starts the page afresh at the first screen; the browser asks when something is not kept yet. */
export function chooseAnother(): void {
  location.hash = mark;
  location.reload();
}

/** Whether the page was started to choose; asked once, so that a later reload opens the workbook. */
export function isChoosing(): boolean {
  if (location.hash !== mark) return false;
  history.replaceState(null, "", location.pathname);
  return true;
}
