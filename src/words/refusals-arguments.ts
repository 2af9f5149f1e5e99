import type { Refusal } from "../outcome";

type Facts = Refusal["facts"];

/** What is wrong with one argument of a formula, and what to give instead. */
export const argumentRefusals = {
  "argument-blank": ({ name }: Facts) =>
    `${name} is blank: point it at a filled cell, or type a value.`,
  "argument-not-number": ({ name, found }: Facts) =>
    `${name} is not a number (${found}): give one number.`,
  "argument-unsure": ({ name, found }: Facts) =>
    `${name} is not certain (${found}): type the number without the question mark or a thousands separator.`,
  "argument-not-yes-or-no": ({ name, found }: Facts) =>
    `${name} should be yes or no (${found}): type yes or no, or leave the cell blank when it was not recorded.`,
  "argument-not-one-cell": ({ name }: Facts) => `${name} is a range: give one cell.`,
  "argument-one-cell": ({ name, table }: Facts) =>
    `${name} is one cell: give the whole ${table} range with its header row, for example ${table}!A:Z.`,
  "argument-other-table": ({ name, table, other }: Facts) =>
    `${name} reads like the ${other} table: give the ${table} range here. Are two arguments swapped?`,
  "argument-no-header": ({ name, table, needed }: Facts) =>
    `${name} has no header row: give the ${table} range with the row that names its columns (needed: ${needed}).`,
  "argument-column-missing": ({ name, table, missing }: Facts) =>
    `${name} has no column for ${missing}: add it to the ${table} table, or widen the range so that it is inside.`,
  "argument-table-empty": ({ name, table }: Facts) =>
    `${name} is blank: give the ${table} range with its header row, for example ${table}!A:Z.`,
  "columns-differ": ({ name, rows, other, otherRows }: Facts) =>
    `${name} has ${rows} rows and ${other} has ${otherRows}: give columns of the same length, or one cell.`,
  "column-too-wide": ({ name }: Facts) =>
    `${name} is more than one column wide: give one column or one cell.`,
  "table-unknown": ({ found, known }: Facts) =>
    `table is not one the add-on knows (${found}): use one of ${known}.`,
  "table-is-other": ({ table, other }: Facts) =>
    `rows read like the ${other} table, not ${table}: write "${other}" as table, or give the range of ${table}.`,
  "as-of-missing": ({ name }: Facts) =>
    name === "as_of"
      ? "as_of is blank: point it at a date cell, such as today's date at the top of the tab. Where a table before it is left out, leave its place empty."
      : `${name} is blank: point it at a date cell.`,
  "as-of-not-one-cell": ({ name }: Facts) => `${name} is a range: point it at one date cell.`,
  "as-of-not-a-day": ({ found, name }: Facts) =>
    `${name} is not a date (${found}): point it at a date cell, or type the day as 2026-05-12.`,
  "as-of-no-year": ({ found, name }: Facts) =>
    `${name} has no year (${found}): type the day as 2026-05-12.`,
  "as-of-ambiguous": ({ found, name }: Facts) =>
    `${name} could be two days (${found}): use a date cell, or type the day as 2026-05-12.`,
  "block-unreadable": ({ found }: Facts) =>
    `block is not sets × repetitions (${found}): write it as 5x5, 3x5, 5x3 or 3x3.`,
  "block-not-in-rotation": ({ found }: Facts) =>
    `block ${found} is not in the rotation: use 5x5, 3x5, 5x3 or 3x3.`,
} as const;
