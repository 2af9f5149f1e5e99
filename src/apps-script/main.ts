import { highlightSquad } from "../actions/highlight-squad";
import { serveRequest } from "../actions/requests";
import { catalogue } from "../catalogue";
import { menuWords } from "../words/menu";
import { sheetWorkbook } from "./sheet-workbook";

/** Computes a custom function by name; the wrappers in the bundle call it. */
export function compute(name: string, args: readonly unknown[]): unknown {
  const entry = catalogue.find((one) => one.name === name);
  if (!entry) throw new Error(`${name} is not in the catalogue`);
  return entry.compute(args);
}

/** Runs a function of the menu or the sidebar by name; nothing else can be reached from outside. */
export function serve(name: string, args: readonly unknown[]): unknown {
  switch (name) {
    case "onOpen":
    case "onInstall":
      // Runs before any permission is given: the menu is all that may be touched here.
      SpreadsheetApp.getUi()
        .createAddonMenu()
        .addItem(menuWords.openSidebar, "openSidebar")
        .addItem(menuWords.highlight, "highlightNow")
        .addToUi();
      return null;
    case "openSidebar":
      SpreadsheetApp.getUi().showSidebar(
        HtmlService.createHtmlOutputFromFile("Sidebar").setTitle(menuWords.title),
      );
      return null;
    case "highlightNow":
      SpreadsheetApp.getActive().toast(highlightSquad(sheetWorkbook()).said, menuWords.title);
      return null;
    default:
      return serveRequest(sheetWorkbook(), name, args[0]);
  }
}
