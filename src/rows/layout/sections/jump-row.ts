import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import { saysNoValue } from "../../value/no-value";
import { jumpCell, tries } from "../wide/jump-cell";
import { reportLacking, type Walk, whoAbove } from "./above";

/** A row of a jump test among the sets: "5x15+5, o", "5x15+10, xo", "5x15+10+5, xx-, stop". */
export function jumpRow(
  walk: Walk,
  line: readonly unknown[],
  row: number,
  labelColumn: number,
): void {
  const { above, into } = walk;
  into.mark(row, into.table === "Jumps" ? "data" : "heading");
  const [first, second, ...others] = line
    .map((cell, column) => ({ cell, column }))
    .filter(({ cell, column }) => column > labelColumn && !isBlank(cell));
  if (into.table !== "Jumps" || first === undefined) return;
  const { athlete, day, test } = above;
  if (athlete === null || day === null) {
    reportLacking(walk, row);
    return;
  }
  const parsed = jumpCell(first.cell, []);
  if (parsed.problem !== null) into.report(parsed.problem, row, first.column);
  into.note(row, first.column, whoAbove(above), day.day, "day", parsed.note);
  const letters =
    typeof second?.cell === "string" ? /^([ox]{1,4})-?$/i.exec(second.cell.trim()) : null;
  const beside = (letters === null && second !== undefined ? [second, ...others] : others).filter(
    ({ cell }) => !saysNoValue(String(cell)),
  );
  const words = beside.map(({ cell }) => String(cell).trim()).join("; ");
  const wordsColumn = beside[0]?.column ?? first.column;
  into.note(row, wordsColumn, whoAbove(above), day.day, "day", words);
  const stack = parsed.attempts[0]?.stack;
  const attempts =
    letters !== null && stack !== undefined ? tries(stack, letters[1]!, false) : parsed.attempts;
  for (const { stack: plates, height, cleared } of attempts)
    into.emit(row, {
      day: [isoFromDay(day.day), first.column],
      athlete,
      test: test ?? undefined,
      stack: [plates, first.column],
      height: [height, first.column],
      cleared: [cleared, first.column],
      note: [words, wordsColumn],
    });
}
