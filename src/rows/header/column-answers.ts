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
    const held = Object.entries(fields).find(([, column]) => column.index === index);
    const heldRep = reps.find((column) => column.index === index);
    const heading = String(line[index] ?? "").trim();
    const before = held?.[1] ??
      heldRep ?? { index, unit: null, heading, words: heading.toLowerCase() };
    const column: Column = {
      ...before,
      ...(answer.unit === undefined ? {} : { unit: unitOf(answer.unit) }),
      ...(answer.dateOrder === undefined ? {} : { dateOrder: answer.dateOrder }),
    };
    const field =
      answer.field === undefined
        ? heldRep === undefined
          ? (held?.[0] ?? null)
          : "rep 0"
        : answer.field;
    if (held !== undefined) delete fields[held[0]];
    const place = reps.indexOf(heldRep as Column);
    reps = reps.filter((rep) => rep.index !== index);
    // A unit or an order alone says nothing of the meaning.
    if (answer.field !== undefined) unknown.delete(index);
    const rep = field === null ? null : /^rep (\d+)$/.exec(field);
    if (rep !== null) reps.splice(rep[1] === "0" ? place : Number(rep[1]) - 1, 0, column);
    else if (field !== null) fields[field] = column;
  }
  return { fields, repColumns: reps, unknown: [...unknown] };
}
