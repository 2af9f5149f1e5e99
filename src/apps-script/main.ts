import { catalogue } from "../catalogue";

/** Computes a custom function by name; the wrappers in the bundle call it. */
export function compute(name: string, args: readonly unknown[]): unknown {
  const entry = catalogue.find((one) => one.name === name);
  if (!entry) throw new Error(`${name} is not in the catalogue`);
  return entry.compute(args);
}

/** Runs a function of the menu or the sidebar by name. */
export function serve(name: string, _args: readonly unknown[]): unknown {
  if (name === "openSidebar") {
    const page = HtmlService.createHtmlOutputFromFile("Sidebar").setTitle("Holdline");
    SpreadsheetApp.getUi().showSidebar(page);
    return null;
  }
  SpreadsheetApp.getUi().createAddonMenu().addItem("Open Holdline", "openSidebar").addToUi();
  return null;
}
