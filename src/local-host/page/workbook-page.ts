import { defaultTheme } from "@univerjs/themes";
import { localPage } from "../../words/local-page";
import { createHost, type Host } from "../host";
import { messageOf } from "../message-of";
import type { OpenedWorkbook } from "../server/workbook-store";
import { autosave, type SaveState } from "./autosave";
import { element } from "./element";
import { gridPlugins, gridWords } from "./grid-plugins";
import { menuButton } from "./menu-button";
import { messageStrip } from "./message-strip";
import { refusedCells } from "./refused-cells";
import { requests } from "./requests";
import { scriptRealm } from "./script-realm";
import { sidebarFrame } from "./sidebar-frame";

/** The workbook in the grid, the add-on's menu above it and its sidebar beside it. */
export async function workbookPage(
  page: HTMLElement,
  { workbook, place, notes }: OpenedWorkbook,
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
      toast: (text) => messages.put("toast", { text }),
    },
  });
  sidebar.answerFrom(host);
  host.open();
  await host.settled();
  refusedCells(host, messages);

  const state = element("span", { className: "soft", role: "status" });
  const saved = place === null ? localPage.notKept : localPage.savedTo(place);
  state.textContent = saved;
  const tell = (save: SaveState) => {
    state.textContent = save.state === "saving" ? localPage.saving : saved;
    if (save.state !== "failed") messages.put("save", null);
    else {
      state.textContent = "";
      messages.put("save", {
        text: localPage.notSaved(save.sentence),
        error: true,
        action: { label: localPage.tryAgain, run: () => void saving?.now() },
      });
    }
  };
  const saving = place === null ? null : autosave(host, requests.save, tell);
  const button = (label: string, run: () => void) =>
    element("button", { type: "button", className: "quiet", textContent: label, onclick: run });
  bar.append(
    element("h1", { textContent: workbook.name }),
    ...host.menus.map(({ title, items }) =>
      menuButton(title, items, (item) => {
        try {
          host.run(item.functionName);
        } catch (error) {
          const sentence = messageOf(error);
          messages.put("menu", { text: localPage.menuFailed(item.label, sentence), error: true });
        }
      }),
    ),
    button(localPage.undo, host.undo),
    button(localPage.redo, host.redo),
    button(localPage.saveCopy, () => void download(host)),
    state,
  );
  notes.forEach((text, index) => {
    messages.put(`note ${index}`, { text });
  });
  addEventListener("beforeunload", (event) => {
    if (saving?.isPending()) event.preventDefault();
  });
  void requests.untilClosed().then(() => {
    messages.put("ended", { text: localPage.ended, error: true });
  });
  return host;
}

async function download(host: Host): Promise<void> {
  const address = URL.createObjectURL(await requests.exported(host.workbook()));
  element("a", { href: address, download: `${host.workbook().name}.xlsx` }).click();
  URL.revokeObjectURL(address);
}
