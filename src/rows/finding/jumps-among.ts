import type { Cells } from "../cells";
import type { ColumnQuestion } from "../header/decide-columns";
import { headingParts, isFigure } from "../layout/across/heading-parts";
import { isJumpColumn } from "../layout/wide/test-heading";
import { understandTable } from "../read-table";
import type { TableName } from "../table-name";
import type { ReadOptions } from "../understanding/read-options";
import type { FoundTable } from "./found-table";
import { ownLayouts } from "./own-layouts";

/** Sets, and the jumps kept among them; a column that one of the two reads is not asked about for the other. */
export function withJumpsAmong(
  sets: readonly FoundTable[],
  ...[tab, cells, options]: Parameters<typeof jumpsAmong>
): FoundTable[] {
  const jumps = jumpsAmong(tab, cells, options);
  // Until the order of its days is said no jump can be read either.
  if (jumps.length === 0 && !sets.some(asksOfDays)) return [...sets];
  const ofSets = fieldsOf(sets);
  const ofJumps = fieldsOf(jumps);
  return [
    ...sets.map((one) =>
      asking(one, ({ column, heading }) => !ofJumps.has(column) && !isJumpColumn(heading)),
    ),
    ...jumps.map((one) =>
      asking(
        one,
        ({ column, heading }) =>
          !ofSets.has(column) && !isFigure(headingParts(heading, column - 1)),
      ),
    ),
  ];
}

const asksOfDays = ({ understanding }: FoundTable) =>
  understanding.questions.some(({ about }) => about === "date order");

/** Columns that the tables of a tab read, from 1. */
const fieldsOf = (found: readonly FoundTable[]) =>
  new Set(
    found.flatMap(({ understanding }) =>
      understanding.columns.flatMap(({ field, column }) => (field === null ? [] : [column])),
    ),
  );

/** The table with what a column means asked, and told to be open, only where it is. */
function asking(
  found: FoundTable,
  isOpen: (question: Pick<ColumnQuestion, "column" | "heading">) => boolean,
): FoundTable {
  const { understanding } = found;
  const { reading } = understanding;
  const issues = reading.issues.filter(
    ({ code, column, found: heading }) => code !== "heading-unknown" || isOpen({ column, heading }),
  );
  const questions = understanding.questions.filter((one) => one.about !== "meaning" || isOpen(one));
  return {
    ...found,
    understanding: { ...understanding, questions, reading: { ...reading, issues } },
  };
}

/** The jumps kept among the sets of a tab. */
function jumpsAmong(tab: string, cells: Cells, options: Omit<ReadOptions, "title">): FoundTable[] {
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
