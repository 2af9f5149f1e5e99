import { plainWords } from "../../header/header-words";
import { speedNotSaid } from "../../table/set-kinds";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { massInWords } from "../mass-in-words";
import { plannedWords } from "../planned-words";
import { noSense, orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import type { TabAnswers } from "../tab-answers";
import type { Unfolded } from "../unfolded";
import { gridOf } from "./grid-blocks";
import { setsRow } from "./sets-row";

/**
 * One row an athlete, dates across, sets in shorthand or in columns under each date. Null when dates
 * do not run across. Reports `exercise-missing` for a block that names no lift.
 */
export function unfoldWideSets(context: LayoutContext): Unfolded | null {
  const grid = gridOf(context);
  if (grid === null) return null;
  const { into, blocks } = grid;
  for (const block of blocks) {
    const titles = [...block.titles, context.title];
    const words = plainWords(titles.join(" | "));
    const titled = titles.map(liftInWords).find((found) => found !== null) ?? null;
    // Under "Squat plan" or "Squat % of 1RM" nothing was lifted.
    if (titles.some((title) => liftInWords(title) !== null && planned.test(plainWords(title)))) {
      for (const { row, nameColumn } of block.rows) into.report("row-unread", row, nameColumn);
      continue;
    }
    const lift = titled ?? context.tab.exercise ?? null;
    const { days } = block.header;
    const named = days.length > 0 && days.every(({ exercise }) => exercise !== undefined);
    if (lift === null && !block.known.has("exercise") && !named) {
      into.report("exercise-missing", block.header.firstRow, 0);
      into.mark(block.header.firstRow, "heading");
      for (const { row } of block.rows) {
        into.mark(row, "reported");
        for (const { column, field } of days) {
          const cell = context.cells[row]![column];
          const said = setCell(cell, noSense);
          const sets = said.is === "sets" && (said.groups[0]!.reps !== null || field === "load");
          if (sets || said.is === "order-unsettled") into.ask("exercise", cell);
        }
      }
      continue;
    }
    const speed = speedWords(words, context.tab);
    into.describe("speed", { heading: "speed", words: speed });
    const said = {
      sense: schemeSense(
        titles.map(orderFromWords).find((parts) => parts !== null) ?? null,
        context.tab.setsFirst,
      ),
      speeds: context.tab.speeds ?? null,
      asksSpeed: speed === speedNotSaid,
      lift,
      unit: context.massUnit ?? massInWords(words),
    };
    for (const row of block.rows) setsRow(context.cells, into, block, row, said);
  }
  return into;
}

/** A title's end. */
const planned = new RegExp(String.raw`(?:\b(?:e?\d*rm|${plannedWords})|%[^|]*)\)?$`);

/** What the titles say of one speed written beside a load, or the coach where they say nothing. */
function speedWords(words: string, { setSpeed }: TabAnswers): string {
  if (/\b(best|fastest) rep\b/.test(words)) return "best speed";
  if (/\bmean\b/.test(words)) return "mean speed";
  return setSpeed === undefined ? speedNotSaid : setSpeed === "best rep" ? "best speed" : "speed";
}
