import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { holdsNothing, illnessIn } from "../../value/no-value";
import type { HeadedGroups } from "../across/header-of-groups";
import { namesSide } from "../across/names-over-figures";
import { jumpCell } from "../wide/jump-cell";
import { reportLacking, type Walk, whoAbove } from "./above";
import { noteOf, setRow, takeOwnContext } from "./set-row";
import { describeColumns } from "./title-lines";

/** A row in which several lifts or sets stand side by side: each that is filled is a set of its own. */
export function acrossRow(walk: Walk, line: readonly unknown[], row: number): void {
  const { above, into } = walk;
  if (into.table === "Jumps") {
    into.mark(row, "heading");
    return;
  }
  const { groups, isOpen } = above.across as HeadedGroups;
  const shared = above.columns;
  if (!takeOwnContext(walk, line, row)) return;
  const { exercise } = above;
  let filled = 0;
  for (const { columns, reps, exercise: named, athlete, set } of groups) {
    const cells = [...Object.values(columns), ...reps]
      .map(({ index }) => ({ index, cell: line[index] }))
      .filter(({ cell }) => !holdsNothing(cell) || illnessIn(String(cell)) !== "");
    if (cells.length === 0) continue;
    filled++;
    if (athlete !== null) above.athlete = athlete;
    // "rest" or "sore" where figures would stand is a note.
    if (cells.every(({ cell }) => typeof cell === "string" && !/\d/.test(cell))) {
      for (const { index, cell } of cells) tellWords(walk, row, index, String(cell).trim());
      continue;
    }
    if (isOpen) {
      into.report("speeds-unsettled", row, cells[0]!.index, {}, true);
      return;
    }
    // The row's own lift is known by now.
    const { exercise: _, ...others } = shared;
    above.columns = { ...others, ...columns };
    above.reps = reps;
    above.set = set;
    if (named !== null)
      above.exercise =
        exercise !== null && namesSide(String(named[0]))
          ? [`${exercise[0]} ${named[0]}`, exercise[1]]
          : named;
    describeColumns(walk, above.columns, reps);
    setRow(walk, line, row, cells[0]!.index);
  }
  above.columns = shared;
  above.reps = [];
  above.set = null;
  above.exercise = exercise;
  if (filled > 0) return;
  const { load } = shared;
  if (load !== undefined && !holdsNothing(line[load.index])) setRow(walk, line, row, -1);
  else tellNotes(walk, line, row);
}

/** A row in which nothing was lifted: what is noted of it is of the athlete's day. */
export function tellNotes(walk: Walk, line: readonly unknown[], row: number): void {
  const { above, into } = walk;
  const { note } = above.columns;
  // Sets and jumps of one tab are each read by themselves.
  into.mark(row, into.table === "Jumps" ? "heading" : "data");
  if (into.table === "Jumps") return;
  noteOf(walk, line, row);
  if (note !== undefined && !isBlank(line[note.index]))
    tellWords(walk, row, note.index, String(line[note.index]).trim());
}

/** A row of a jump among the lifts: each set is a jump of it. */
export function acrossJumps(
  walk: Walk,
  line: readonly unknown[],
  row: number,
  test: unknown,
): void {
  const { above, into } = walk;
  into.mark(row, into.table === "Jumps" ? "data" : "heading");
  if (into.table !== "Jumps" || !takeOwnContext(walk, line, row)) return;
  const { athlete, day, columns } = above;
  if (athlete === null || day === null) {
    reportLacking(walk, row);
    return;
  }
  const { note, exercise } = columns;
  for (const { columns: own } of above.across!.groups) {
    const column = own.load ?? own.speed ?? own.reps;
    const cell = column && line[column.index];
    if (column === undefined || holdsNothing(cell)) continue;
    const said = jumpCell(cell, []);
    into.note(row, column.index, whoAbove(above), day.day, "day", said.note);
    // Under kilograms a number is no height.
    const stands = said.attempts.every(({ stack }) => stack !== undefined) || column.unit === null;
    if (said.problem !== null || !stands) into.report("jump-unread", row, column.index);
    else
      for (const { stack, height, cleared } of said.attempts)
        into.emit(row, {
          day: [isoFromDay(day.day), -1],
          athlete,
          test: [test, exercise!.index],
          stack: [stack, column.index],
          height: [height, column.index],
          cleared: [cleared, column.index],
          note: note && [line[note.index], note.index],
        });
  }
}

function tellWords({ above, into }: Walk, row: number, column: number, words: string): void {
  into.note(row, column, whoAbove(above), above.day?.day ?? null, "day", words);
  into.mark(row, "data");
}
