import { defaultTheme } from "@univerjs/themes";
import { localPage } from "../../words/local-page";
import { createHost, type Host } from "../host";
import type { OpenedWorkbook } from "../server/workbook-store";
import { dropToOpen } from "./drop-to-open";
import { element } from "./element";
import { gridPlugins, gridWords } from "./grid-plugins";
import { hiddenCells } from "./hidden-cells";
import { keptState } from "./kept-state";
import { messageStrip } from "./message-strip";
import { barPane, gridPane, panes } from "./panes";
import { protectedCells } from "./protected-cells";
import { refusedCells } from "./refused-cells";
import { requests } from "./requests";
import { rowsThatFit } from "./rows-that-fit";
import { scriptRealm } from "./script-realm";
import { sidebarFrame } from "./sidebar-frame";
import { toolBar } from "./tool-bar";
import { typedDays } from "./typed-days";
import { typedFormulas } from "./typed-formulas";
import { undoInSight } from "./undo-in-sight";

/** The workbook in the grid, the add-on's menu above it and its sidebar beside it. */
export async function workbookPage(
  page: HTMLElement,
  { opening, workbook, place, notes }: OpenedWorkbook,
  nonce: string,
): Promise<Host> {
  const [bundleSource, Sidebar] = await Promise.all([
    requests.text("code.js"),
    requests.text("Sidebar.html"),
  ]);
  const sidebar = sidebarFrame(nonce);
  const messages = messageStrip();
  const bar = element("header", { className: "bar" });
  const grid = element("div", { className: "grid", ariaLabel: localPage.grid, role: "region" });
  const cells = gridPane(grid);
  page.className = "workbook";
  page.replaceChildren(
    bar,
    messages.strip,
    element("div", { className: "beside" }, grid, sidebar.panel),
  );
  const host = createHost({
    workbook,
    bundleSource,
    files: { Sidebar },
    plugins: gridPlugins(grid),
    locales: gridWords,
    theme: defaultTheme,
    realm: (globals, source) => scriptRealm(globals, source, nonce),
    hooks: {
      sidebar: sidebar.show,
      alert: (text) => messages.put("alert", { text }),
      toast: (text) => messages.passing("toast", text),
      // Who went to a cell types into it: the next key is the cell's, and the grid is in sight.
      selected: () => {
        grid.scrollIntoView({ block: "nearest" });
        cells.enter();
      },
    },
  });
  sidebar.answerFrom(host);
  sidebar.onLeave(panes([barPane(bar), sidebar.pane, cells]));
  host.open();
  const state = element("span", { className: "soft", role: "status" });
  const kept = keptState(host, { opening, place }, state, messages);
  bar.append(...toolBar(host, workbook.name, state, messages, kept));
  notes.forEach((text, index) => {
    messages.put(`note ${index}`, { text });
  });
  refusedCells(host, messages);
  hiddenCells(host, messages);
  rowsThatFit(host);
  bar.append(undoInSight(host, sidebar.undone));
  typedDays(host);
  typedFormulas(host);
  protectedCells(host, messages);
  dropToOpen(page, { place, ...kept }, messages);
  void requests.untilClosed().then(() => {
    messages.put("ended", { text: localPage.ended, error: true });
  });
  return host;
}
