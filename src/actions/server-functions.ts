import { requestSummaries } from "./request-summaries";

/** A function of the script that the menu or the sidebar calls by name. */
export type ServerFunction = { readonly name: string; readonly summary: string };

/** Called by the spreadsheet itself or from the menu, without a message. */
export const menuFunctions: readonly ServerFunction[] = [
  { name: "onOpen", summary: "Adds the menu when the spreadsheet opens." },
  { name: "onInstall", summary: "Adds the menu when the add-on is installed." },
  { name: "openSidebar", summary: "Opens the sidebar." },
  { name: "highlightNow", summary: "Highlights the words on the Squad tab." },
];

/** Everything of the script that can be called from outside, beside the formulas. */
export const serverFunctions: readonly ServerFunction[] = [
  ...menuFunctions,
  ...Object.entries(requestSummaries).map(([name, summary]) => ({ name, summary })),
];
