import { columnName } from "../../rows/value/cell-address";
import { highlightSaid, squadHighlights } from "../../words/squad-highlights";
import { ownTabNames } from "../../words/tabs";
import type { Done } from "../messages";
import type { Workbook } from "../workbook";

/**
 * Highlights that follow the words on the Squad tab, wherever its formula puts them: orange and bold
 * for a loss, blue for a rise, grey italics for too few rows. They live: change a row and the word
 * and its look change. The coach's own rules stay, and running it again changes nothing.
 */
export function highlightSquad(workbook: Workbook): Done {
  const tab = workbook.tabs().find(({ name }) => name === ownTabNames.squad);
  if (!tab) throw new Error(highlightSaid.noTab(ownTabNames.squad));
  return workbook.alone(() => {
    const columns = Math.max(6, ...workbook.values(tab.id).map((row) => row.length));
    workbook.highlight(tab.id, squadHighlights(`A1:${columnName(columns)}200`));
    return { said: highlightSaid.done(tab.name) };
  });
}
