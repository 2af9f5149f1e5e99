import { plainWords } from "../../header/header-words";
import { speedNotSaid } from "../../table/set-kinds";
import { namesSide } from "../across/names-over-figures";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { massInWords } from "../mass-in-words";
import { plannedWords } from "../planned-words";
import { noSense, orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import type { TabAnswers } from "../tab-answers";
import type { Unfolded } from "../unfolded";
import { type Block, gridOf } from "./grid-blocks";
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
    const titled = titles.map(liftInWords).find((found) => found !== null) ?? null;
    const lift = titled ?? context.tab.exercise ?? null;
    if (titles.some(titlesPlan))
      for (const { row, nameColumn } of block.rows) into.report("row-unread", row, nameColumn);
    else if (lift === null && !namesLifts(block)) reportLiftless(context, into, block);
    else {
      const said = saidOf(context, titles, lift);
      into.describe("speed", { heading: "speed", words: said.speed });
      for (const row of block.rows) setsRow(context.cells, into, block, row, said);
    }
  }
  return into;
}

/** Under "Squat plan" or "Squat % of 1RM" nothing was lifted. */
const titlesPlan = (title: string) =>
  liftInWords(title) !== null && planned.test(plainWords(title));

/** Whether each row, or each of the columns under the dates, says its own lift. */
const namesLifts = ({ known, header: { days } }: Block) =>
  known.has("exercise") ||
  (days.length > 0 && days.every(({ exercise }) => exercise !== undefined && !namesSide(exercise)));

/** The coach is asked for the lift where there are sets to ask for. */
function reportLiftless({ cells }: LayoutContext, into: Unfolded, block: Block): void {
  const { firstRow, days } = block.header;
  into.report("exercise-missing", firstRow, 0);
  into.mark(firstRow, "heading");
  for (const { row } of block.rows) {
    into.mark(row, "reported");
    for (const { column, field } of days) {
      const cell = cells[row]![column];
      const said = setCell(cell, noSense);
      const sets = said.is === "sets" && (said.groups[0]!.reps !== null || field === "load");
      if (sets || said.is === "order-unsettled") into.ask("exercise", cell);
    }
  }
}

/** What titles and answers say of all sets of a block. */
function saidOf({ tab, massUnit }: LayoutContext, titles: readonly string[], lift: string | null) {
  const words = plainWords(titles.join(" | "));
  const speed = speedWords(words, tab);
  const order = titles.map(orderFromWords).find((parts) => parts !== null) ?? null;
  return {
    sense: schemeSense(order, tab.setsFirst),
    speed,
    speeds: tab.speeds ?? null,
    asksSpeed: speed === speedNotSaid,
    lift,
    unit: massUnit ?? massInWords(words),
  };
}

/** A title's end. */
const planned = new RegExp(String.raw`(?:\b(?:e?\d*rm|${plannedWords})|%[^|]*)\)?$`);

/** What the titles say of one speed written beside a load, or the coach where they say nothing. */
function speedWords(words: string, { setSpeed }: TabAnswers): string {
  if (/\b(best|fastest) rep\b/.test(words)) return "best speed";
  if (/\bmean\b/.test(words)) return "mean speed";
  return setSpeed === undefined ? speedNotSaid : setSpeed === "best rep" ? "best speed" : "speed";
}
