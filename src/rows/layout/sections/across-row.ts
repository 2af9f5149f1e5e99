import { isBlank } from "../../value/blank";
import { holdsNothing } from "../../value/no-value";
import type { HeadedGroups } from "../across/header-of-groups";
import { namesSide } from "../across/names-over-figures";
import { type Walk, whoAbove } from "./above";
import { setRow, takeOwnContext } from "./set-row";
import { describeColumns } from "./title-lines";

/** A row in which several lifts or sets stand side by side: each that is filled is a set of its own. */
export function acrossRow(walk: Walk, line: readonly unknown[], row: number): void {
  const { above, into } = walk;
  const { groups } = above.across as HeadedGroups;
  const shared = above.columns;
  if (!takeOwnContext(walk, line, row)) return;
  const { exercise } = above;
  let filled = 0;
  for (const { columns, reps, exercise: named, athlete, set } of groups) {
    const cells = [...Object.values(columns), ...reps]
      .map(({ index }) => ({ index, cell: line[index] }))
      .filter(({ cell }) => !holdsNothing(cell));
    if (cells.length === 0) continue;
    filled++;
    if (athlete !== null) above.athlete = athlete;
    // "rest" or "sore" where figures would stand is a note.
    if (cells.every(({ cell }) => typeof cell === "string" && !/\d/.test(cell))) {
      for (const { index, cell } of cells) tellWords(walk, row, index, String(cell).trim());
      continue;
    }
    const { exercise: ofRow, ...others } = shared;
    above.columns = { ...others, ...(named === null && ofRow && { exercise: ofRow }), ...columns };
    above.reps = reps;
    above.set = set;
    if (named !== null)
      above.exercise =
        exercise !== null && namesSide(String(named[0]))
          ? [`${exercise[0]} ${named[0]}`, exercise[1]]
          : named;
    describeColumns(walk, above.columns, reps);
    setRow(walk, line, row, -1);
  }
  above.columns = shared;
  above.reps = [];
  above.set = null;
  above.exercise = exercise;
  if (filled > 0) return;
  const { load, note } = shared;
  if (load !== undefined && !holdsNothing(line[load.index])) setRow(walk, line, row, -1);
  else if (note !== undefined && !isBlank(line[note.index]))
    tellWords(walk, row, note.index, String(line[note.index]).trim());
  else into.mark(row, "data");
}

function tellWords({ above, into }: Walk, row: number, column: number, words: string): void {
  into.note(row, column, whoAbove(above), above.day?.day ?? null, "day", words);
  into.mark(row, "data");
}
