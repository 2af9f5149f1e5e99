import type { MenuItem } from "../services/spreadsheet";
import { element } from "./element";

/** A menu of the add-on: a button that opens a list, worked by mouse or by keyboard. */
export function menuButton(
  title: string,
  items: readonly MenuItem[],
  choose: (item: MenuItem) => void,
): HTMLElement {
  const list = element("ul", {
    className: "menu-list",
    hidden: true,
    role: "menu",
    ariaLabel: title,
  });
  const button = element("button", {
    type: "button",
    className: "menu-title",
    textContent: title,
    ariaHasPopup: "menu",
    ariaExpanded: "false",
  });
  const menu = element("div", { className: "menu" }, button, list);
  const open = (opened: boolean) => {
    list.hidden = !opened;
    button.ariaExpanded = String(opened);
  };
  const entries = items.map((item) => {
    const entry = element("button", { type: "button", role: "menuitem", textContent: item.label });
    entry.onclick = () => {
      open(false);
      button.focus();
      choose(item);
    };
    list.append(element("li", { role: "none" }, entry));
    return entry;
  });
  button.onclick = () => {
    open(list.hidden !== false);
    if (!list.hidden) entries[0]?.focus();
  };
  menu.onkeydown = (event) => {
    if (event.key === "Escape") {
      open(false);
      button.focus();
    }
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    if (list.hidden) open(true);
    const at = entries.indexOf(document.activeElement as HTMLButtonElement);
    entries[(at + step + entries.length) % entries.length]?.focus();
  };
  menu.addEventListener("focusout", (event) => {
    if (!(event.relatedTarget instanceof Node && menu.contains(event.relatedTarget))) open(false);
  });
  return menu;
}
