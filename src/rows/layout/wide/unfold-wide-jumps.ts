import { isoFromDay } from "../../../coaching/calendar/day";
import { isBlank } from "../../value/blank";
import type { LayoutContext } from "../layout-context";
import { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { type Block, type BlockRow, blocksOf } from "./block-rows";
import { dateHeaders } from "./date-header";
import { jumpCell } from "./jump-cell";
import { type JumpPart, type JumpTitle, jumpTitle } from "./jump-title";

/** Test days across, one row an athlete, one block a test. Null when it is not that. */
export function unfoldWideJumps(context: LayoutContext): Unfolded | null {
  const headers = dateHeaders(context);
  if (headers.length === 0) return null;
  const into = new Unfolded("Jumps", context.cells, headers[0]!.firstRow);
  for (const block of blocksOf(context, headers, into)) {
    const named =
      [...block.titles].reverse().find((title) => /[a-z]{3}/i.test(title)) ?? context.title;
    const title = jumpTitle(named);
    // Seconds and milliseconds settle themselves cell by cell; heights need their block's unit.
    for (const part of ["height", "contact", "flight"])
      into.describe(part, { heading: part, words: part });
    for (const row of block.rows) unfoldRow(context, into, block, row, title);
  }
  return into;
}

function unfoldRow(
  { cells }: LayoutContext,
  into: Unfolded,
  block: Block,
  { row, athlete, nameColumn }: BlockRow,
  title: JumpTitle,
): void {
  const line = cells[row]!;
  const testColumn = block.known.get("test");
  const test =
    testColumn !== undefined && !isBlank(line[testColumn]) ? line[testColumn] : title.test;
  const heightUnit = title.parts.find(({ part }) => part === "height")?.unit ?? title.unit;
  into.mark(row, "data");
  for (const { column, monday } of block.header.noteColumns)
    if (!isBlank(line[column]))
      into.note(row, column, athlete, monday, "week", String(line[column]).trim());
  for (const { column, day, field, unit } of block.header.days) {
    const parts: readonly JumpPart[] =
      field !== null && isPart(field) ? [field] : title.parts.map(({ part }) => part);
    const said = jumpCell(line[column], parts);
    const footnote = block.footnotes.get(said.mark) ?? "";
    const note = [said.note, footnote].filter(Boolean).join("; ");
    if (said.problem !== null) {
      const mend =
        typeof line[column] === "string"
          ? Number((line[column] as string).replace(/\?|\s/g, "").replace(",", "."))
          : Number.NaN;
      into.report(
        said.problem,
        row,
        column,
        said.problem === "unsure" && Number.isFinite(mend) ? { mend, heading: title.test } : {},
      );
      into.mark(row, "data");
    }
    into.note(row, column, athlete, day, "day", said.note);
    for (const attempt of said.attempts)
      into.emit(row, {
        day: [isoFromDay(day), column],
        athlete: [athlete, nameColumn],
        test: [test, nameColumn],
        height:
          attempt.height === undefined
            ? undefined
            : [withUnit(attempt.height, unit ?? heightUnit), column],
        stack:
          attempt.stack !== undefined
            ? [attempt.stack, column]
            : title.landingStack === null
              ? undefined
              : [title.landingStack, column],
        cleared: attempt.cleared === undefined ? undefined : [attempt.cleared, column],
        contact: attempt.contact === undefined ? undefined : [attempt.contact, column],
        flight: attempt.flight === undefined ? undefined : [attempt.flight, column],
        drop: title.dropCm === null ? undefined : [title.dropCm, column],
        landing: title.landingCm === null ? undefined : [title.landingCm, column],
        note: note === "" ? undefined : [note, column],
      });
  }
}

function isPart(field: string): field is JumpPart {
  return field === "contact" || field === "flight" || field === "height" || field === "stack";
}
