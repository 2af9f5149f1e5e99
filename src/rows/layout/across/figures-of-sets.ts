import type { Cells } from "../../cells";
import { sampleColumn, valueFit } from "../../header/value-fit";
import { noSense } from "../shorthand/scheme-order";
import { isShorthand, setCell } from "../shorthand/set-cell";
import type { HeadingParts } from "./heading-parts";

/** What stands under "Set 1", "Set 2", "Set 3" where no heading says it: told by all their values. */
export function figuresOfSets(
  cells: Cells,
  first: number,
  end: number,
  headings: readonly HeadingParts[],
): string | null {
  const sample = headings
    .filter(({ field }) => field === null)
    .flatMap(({ column }) => sampleColumn(cells, first, end, column.index));
  const headed = (name: string) => headings.some(({ field }) => field === name);
  const share = (looks: (cell: unknown) => boolean) => sample.filter(looks).length / sample.length;
  if (sample.length === 0) return null;
  if (share((cell) => typeof cell === "string" && isShorthand(setCell(cell, noSense))) >= 0.7)
    return "load";
  if (valueFit("speed", sample) >= 0.9) return "speed";
  const numbers = sample.filter((cell): cell is number => typeof cell === "number");
  const loads = numbers.filter((cell) => cell >= 20 && cell <= 400);
  // Jumps on plates and words stand among loads too.
  if (!headed("load") && 2 * numbers.length > sample.length && loads.length >= 0.9 * numbers.length)
    return "load";
  return headed("load") && !headed("reps") && valueFit("reps", sample) >= 0.9 ? "reps" : null;
}
