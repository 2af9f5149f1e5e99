import { menuWords } from "../words/menu";

/**
 * What the spreadsheet calls as it opens. It runs before any permission is given: the menu is all
 * that may be touched, and nothing else of the script is made ready for it.
 */
function addMenu(): null {
  SpreadsheetApp.getUi()
    .createAddonMenu()
    .addItem(menuWords.openSidebar, "openSidebar")
    .addItem(menuWords.highlight, "highlightNow")
    .addToUi();
  return null;
}

function openSidebar(): null {
  SpreadsheetApp.getUi().showSidebar(
    HtmlService.createHtmlOutputFromFile("Sidebar").setTitle(menuWords.title),
  );
  return null;
}

/** Functions that need nothing but the menu's words. */
export const menu: Readonly<Record<string, () => null>> = {
  onOpen: addMenu,
  onInstall: addMenu,
  openSidebar,
};
