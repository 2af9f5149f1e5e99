import { serveRequest } from "../actions/requests";
import { highlightSquad } from "../actions/squad/highlight-squad";
import { menuWords } from "../words/menu";
import { sheetWorkbook } from "./sheet-workbook";

/**
 * Runs what the menu or the sidebar asks for by name; nothing else can be reached from outside. The
 * script's first module, which the build writes, passes here whatever is neither a formula nor the
 * menu itself.
 */
export function serve(name: string, message: unknown): unknown {
  if (name !== "highlightNow") return serveRequest(sheetWorkbook(), name, message);
  SpreadsheetApp.getActive().toast(highlightSquad(sheetWorkbook()).said, menuWords.title);
  return null;
}
