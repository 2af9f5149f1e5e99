import { limits } from "../limits";
import { attribute } from "./xml-text";

/** Heights set by hand, in pixels, by row from 0. */
export type RowHeights = Readonly<Record<number, number>>;

const pixelsOfPoint = 4 / 3;
const rowTag = /<row\b[^<>]*>/g;
const byHand = /\scustomHeight="(?:1|true)"/;

/** Heights that a tab's text says were set by hand; the measured ones stay in the file. */
export function handHeights(text: string): RowHeights {
  const heights: Record<number, number> = {};
  if (!byHand.test(text)) return heights;
  for (const [tag] of text.matchAll(rowTag)) {
    if (!byHand.test(tag)) continue;
    const row = Number(attribute(tag, "r"));
    const points = Number(attribute(tag, "ht"));
    if (row >= 1 && row <= limits.rows && points > 0) {
      heights[row - 1] = Math.round(points * pixelsOfPoint);
    }
  }
  return heights;
}

/** The library calls every height it writes one set by hand: only those that are stay so. */
export function withHandHeights(text: string, heights: RowHeights): string {
  if (!byHand.test(text)) return text;
  return text.replace(rowTag, (tag) =>
    heights[Number(attribute(tag, "r")) - 1] === undefined ? tag.replace(byHand, "") : tag,
  );
}

/** Rows whose height is another: in points, undefined for the usual one. */
export function changedHeights(
  before: RowHeights,
  after: RowHeights,
): readonly { readonly row: number; readonly points: number | undefined }[] {
  const rows = new Set([...Object.keys(before), ...Object.keys(after)].map(Number));
  return [...rows].flatMap((row) => {
    const [was, is] = [before[row], after[row]];
    if (was !== undefined && is !== undefined && Math.abs(was - is) <= 1) return [];
    if (was === is) return [];
    return [{ row, points: is === undefined ? undefined : is / pixelsOfPoint }];
  });
}
