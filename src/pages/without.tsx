import type { MadeWithout } from "../actions/page-messages";
import { paperSentences as sentences } from "../words/paper-sentences";

/** One short line of what a page was made without; nothing where all was read. */
export function Without({ without }: { readonly without: MadeWithout }) {
  const { damaged, rows, cells, deleted, ask } = without;
  const said = [
    ...(ask.length > 0 ? [sentences.askFirst(ask)] : []),
    ...damaged.map((what) => sentences.madeWithout[what]),
    ...(rows.length > 0 ? [sentences.rowsNotUsed(rows)] : []),
    ...(cells.length > 0 ? [sentences.cellsNotFollowed(cells)] : []),
    ...(deleted.length > 0 ? [sentences.rowsDeleted(deleted)] : []),
  ];
  return said.length === 0 ? null : <p class="without">{said.join(" ")}</p>;
}
