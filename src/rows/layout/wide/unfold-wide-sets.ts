import { plainWords } from "../../header/header-words";
import { unitOf } from "../../value/units";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { fullOrder, orderFromWords } from "../shorthand/scheme-order";
import { Unfolded } from "../unfolded";
import { blocksOf } from "./block-rows";
import { dateHeaders } from "./date-header";
import { setsRow } from "./sets-row";

/**
 * One row an athlete, dates across, sets in shorthand or in columns under each date. Null when dates
 * do not run across. Reports `exercise-missing` for a block that names no lift.
 */
export function unfoldWideSets(context: LayoutContext): Unfolded | null {
  const headers = dateHeaders(context);
  if (headers.length === 0) return null;
  const into = new Unfolded("Sets", context.cells, headers[0]?.firstRow ?? 0);
  for (const block of blocksOf(context, headers, into)) {
    for (const { row, column, code, facts } of block.header.unsettled)
      into.report(code, row, column, facts);
    const titles = [...block.titles, context.title];
    const words = plainWords(titles.join(" | "));
    const lift = titles.map(liftInWords).find((found) => found !== null) ?? null;
    if (lift === null && !block.known.has("exercise")) {
      into.report("exercise-missing", block.header.firstRow, 0);
      into.mark(block.header.firstRow, "heading");
      for (const { row } of block.rows) into.mark(row, "reported");
      continue;
    }
    into.describe("speed", { heading: "speed", words: speedWords(words) });
    into.describe("load", { heading: "load", words: "load" });
    const said = {
      order: fullOrder(titles.map(orderFromWords).find((parts) => parts !== null) ?? null),
      lift,
      unit: context.massUnit ?? unitOf(/\b(kg|lbs?)\b/.exec(words)?.[1] ?? ""),
    };
    for (const row of block.rows) setsRow(context.cells, into, block, row, said);
  }
  return into;
}

/** What the titles say of speeds written in the grid. */
function speedWords(words: string): string {
  if (/\b(best|fastest) rep\b/.test(words)) return "best speed";
  return /\bmean\b/.test(words) ? "mean speed" : "speed";
}
