import type { CellData } from "../workbook-data";

export const usualRowHeight = 22;
export const usualColumnWidth = 88;
const lineHeight = 16;
/** Pixels of an average letter at 10 points, plain and bold; generous, so that no line is cut. */
const letterWidth = { plain: 6.6, bold: 7.4 } as const;

/** Height in pixels that shows every line of a row's wrapped cells; null when no cell wraps. */
export function wrappedRowHeight(
  line: readonly (CellData | null)[],
  widths: readonly (number | null)[],
): number | null {
  let most = 0;
  line.forEach((cell, column) => {
    if (!cell?.style?.wrap || typeof cell.value !== "string") return;
    const letter = cell.style.bold ? letterWidth.bold : letterWidth.plain;
    const room = Math.max(1, Math.floor(((widths[column] ?? usualColumnWidth) - 6) / letter));
    most = Math.max(most, lines(cell.value, room));
  });
  return most > 1 ? most * lineHeight + 6 : null;
}

/** Lines of a text broken between words; a word longer than a line takes several. */
function lines(text: string, room: number): number {
  let count = 0;
  for (const paragraph of text.split("\n")) {
    let used = 0;
    count += 1;
    for (const word of paragraph.split(/\s+/)) {
      const length = Math.max(1, word.length);
      if (used > 0 && used + 1 + length <= room) used += 1 + length;
      else {
        if (used > 0) count += 1;
        count += Math.floor((length - 1) / room);
        used = ((length - 1) % room) + 1;
      }
    }
  }
  return count;
}
