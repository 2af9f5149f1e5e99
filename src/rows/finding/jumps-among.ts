import type { Cells } from "../cells";
import { isJumpColumn } from "../layout/wide/test-heading";
import { understandTable } from "../read-table";
import type { TableName } from "../table-name";
import type { ReadOptions } from "../understanding/read-options";
import type { FoundTable } from "./found-table";
import { ownLayouts } from "./own-layouts";

/** The jumps kept among the sets of a tab. */
export function jumpsAmong(
  tab: string,
  cells: Cells,
  options: Omit<ReadOptions, "title">,
): FoundTable[] {
  return ownLayouts(tab, ["Jumps"], (table) =>
    understandTable<TableName>(table, cells, { ...options, title: tab }),
  );
}

/** A diary with columns of jump tests is both; what is a jump is not asked about. */
export function withJumpsBeside(
  found: FoundTable,
  cells: Cells,
  options: Omit<ReadOptions, "title">,
): FoundTable[] {
  const { understanding } = found;
  const questions = understanding.questions.filter(({ heading }) => !isJumpColumn(heading));
  if (questions.length === understanding.questions.length) return [found];
  const jumps = jumpsAmong(found.tab, cells, options);
  const rest = { ...found, understanding: { ...understanding, questions } };
  return jumps.length === 0 ? [found] : [rest, ...jumps];
}
