/** A function of the script that the menu or the sidebar calls by name. */
export type ServerFunction = { readonly name: string; readonly summary: string };

export const serverFunctions: readonly ServerFunction[] = [
  { name: "onOpen", summary: "Adds the menu when the spreadsheet opens." },
  { name: "onInstall", summary: "Adds the menu when the add-on is installed." },
  { name: "openSidebar", summary: "Opens the sidebar." },
];
