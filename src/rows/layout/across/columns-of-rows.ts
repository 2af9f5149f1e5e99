import type { Cells } from "../../cells";
import type { Column } from "../../header/column";
import { sampleColumn, valueFit } from "../../header/value-fit";
import { liftInWords } from "../lift-in-words";

/** The only column of whole days left of the figures that no heading explains holds the days. */
export function dateColumn(
  cells: Cells,
  { first, end, left }: { first: number; end: number; left: number },
  shared: Record<string, Column>,
  known: Set<number>,
): void {
  const [only, ...others] = [...Array(left).keys()].filter((index) => {
    const sample = known.has(index) ? [] : sampleColumn(cells, first, end, index);
    return sample.length > 0 && valueFit("day", sample) >= 0.9;
  });
  if (only === undefined || others.length > 0 || shared.day !== undefined) return;
  shared.day = { index: only, unit: null, heading: "day", words: "day" };
  known.add(only);
}

/** The only column of words left of the figures that no heading explains holds the names, or the lifts. */
export function nameColumn(
  cells: Cells,
  { first, end, left }: { first: number; end: number; left: number },
  shared: Record<string, Column>,
  liftsAcross: boolean,
  known: Set<number>,
): void {
  const words = [...Array(left).keys()].flatMap((index) => {
    const sample = known.has(index) ? [] : sampleColumn(cells, first, end, index);
    return valueFit("athlete", sample) >= 0.8 && sample.length > 0 ? [{ index, sample }] : [];
  });
  const [only] = words;
  if (only === undefined || words.length > 1) return;
  const lifts = only.sample.filter((cell) => liftInWords(cell) !== null).length;
  const field = 2 * lifts > only.sample.length ? "exercise" : "athlete";
  if (shared[field] !== undefined || (field === "exercise" ? liftsAcross : lifts > 0)) return;
  shared[field] = { index: only.index, unit: null, heading: field, words: field };
  known.add(only.index);
}
