import type { DateOrder } from "../value/day-text";
import { unitOf } from "../value/units";
import type { Column } from "./column";
import type { RecognisedHeader } from "./recognise-header";

/** What the coach said of one column. */
export type ColumnAnswer = {
  /** From 1. */
  readonly column: number;
  /** A meaning of the table ("load", "rep 2"), or null: leave this column alone. Left out: as recognised. */
  readonly field?: string | null;
  readonly unit?: string;
  readonly dateOrder?: DateOrder;
};

/** The coach's answers about one table; they override what was recognised. */
export type ColumnAnswers = {
  /** From 1; left out: as recognised. */
  readonly headerRow?: number;
  readonly columns: readonly ColumnAnswer[];
};

/** The header with the answers put over it; an answered column loses its recognised meaning. */
export function withAnswers(
  header: RecognisedHeader,
  answers: ColumnAnswers | null,
  line: readonly unknown[],
): RecognisedHeader {
  if (answers === null || answers.columns.length === 0) return header;
  const fields: Record<string, Column> = { ...header.fields };
  let reps = [...header.repColumns];
  const unknown = new Set(header.unknown);
  for (const answer of answers.columns) {
    const index = answer.column - 1;
    const held = Object.keys(fields).find((field) => fields[field]!.index === index);
    const place = reps.findIndex((column) => column.index === index);
    const before = held === undefined ? reps[place] : fields[held];
    const column = answered(before ?? unheld(line, index), answer);
    const recognised = place >= 0 ? "rep 0" : (held ?? null);
    const field = answer.field === undefined ? recognised : answer.field;
    if (held !== undefined) delete fields[held];
    reps = reps.filter((rep) => rep.index !== index);
    // A unit or an order alone says nothing of the meaning.
    if (answer.field !== undefined) unknown.delete(index);
    const rep = field === null ? null : /^rep (\d+)$/.exec(field);
    if (rep !== null) reps.splice(rep[1] === "0" ? place : Number(rep[1]) - 1, 0, column);
    else if (field !== null) fields[field] = column;
  }
  return { fields, repColumns: reps, unknown: [...unknown] };
}

/** A column that no meaning was recognised for. */
function unheld(line: readonly unknown[], index: number): Column {
  const heading = String(line[index] ?? "").trim();
  return { index, unit: null, heading, words: heading.toLowerCase() };
}

const answered = (column: Column, { unit, dateOrder }: ColumnAnswer): Column => ({
  ...column,
  ...(unit !== undefined && { unit: unitOf(unit) }),
  ...(dateOrder !== undefined && { dateOrder }),
});
