import type { Cells } from "../cells";
import type { TableName } from "../table-name";
import { minuteOfDay } from "../value/minute-of-day";
import type { Column } from "./column";
import type { ColumnAnswers } from "./column-answers";
import { tableColumns } from "./columns";
import { contradictedColumns } from "./contradicted-columns";
import { headerWords } from "./header-words";
import type { RecognisedHeader } from "./recognise-header";
import { nearMeaning, settledAlone } from "./unknown-column";
import { anyOfColumn, bestFit, sampleColumn, threeSamples, valueFit } from "./value-fit";

/** What was decided of one column, and how surely. */
export type ColumnDecision = {
  /** From 1. */
  readonly column: number;
  readonly heading: string;
  /** A meaning of the table, "rep 1"…, or null when the column is left alone. */
  readonly field: string | null;
  readonly unit: string | null;
  /** 0–1: the heading says it 1, a near heading that the values bear out 0.85, dates alone 0.9. */
  readonly sureness: number;
  readonly by: "heading" | "near heading" | "values" | "answer" | "nothing";
  readonly samples: readonly string[];
  /** Blank cells were taken to repeat what stands above, as under merged cells. */
  readonly carried?: boolean;
};

/** A question for the coach about one column. */
export type ColumnQuestion = {
  readonly column: number;
  readonly heading: string;
  readonly about: "meaning" | "unit" | "date order";
  /** Three values of the column. */
  readonly samples: readonly string[];
  /** What it most likely is; null when nothing fits. */
  readonly guess: string | null;
  readonly choices: readonly string[];
};

export type DecidedColumns = {
  readonly header: RecognisedHeader;
  readonly decisions: readonly ColumnDecision[];
  readonly questions: readonly ColumnQuestion[];
};

/**
 * Settles every column of a header: by its heading, by a near spelling its values bear out, a column
 * of dates by its values alone. Anything less sure is left alone and becomes a question.
 */
export function decideColumns(
  table: TableName,
  cells: Cells,
  first: number,
  end: number,
  header: RecognisedHeader,
  headLine: readonly unknown[],
  answers: ColumnAnswers | null,
): DecidedColumns {
  const fields: Record<string, Column> = { ...header.fields };
  const unknown: number[] = [];
  const decisions: ColumnDecision[] = [];
  const questions: ColumnQuestion[] = [];
  const answered = new Set(answers?.columns.map(({ column }) => column - 1));
  if (table === "Runs") takeLengths(fields, cells, { first, end, answered });
  const all = Object.keys(tableColumns[table]);
  const say = (
    column: Column,
    field: string | null,
    by: ColumnDecision["by"],
    sureness: number,
    sample: readonly unknown[],
  ) =>
    decisions.push({
      column: column.index + 1,
      heading: column.heading,
      field,
      unit: column.unit?.name ?? null,
      sureness,
      by,
      samples: threeSamples(sample),
    });

  // Ratings under "form" are no yes or no: left alone and asked. Two swapped columns are asked about,
  // and their cells are reported one by one as implausible until the answer.
  for (const { field, column, sample, guess } of contradictedColumns(cells, first, end, fields)) {
    if (answered.has(column.index) || (guess === null && field !== "movedWell")) continue;
    if (field === "movedWell") delete fields[field];
    questions.push({
      column: column.index + 1,
      heading: column.heading,
      about: "meaning",
      samples: threeSamples(sample),
      guess,
      choices: all,
    });
  }
  for (const [field, column] of Object.entries(fields)) {
    const sample = sampleColumn(cells, first, end, column.index);
    const sure = answered.has(column.index) || valueFit(field, sample) >= 0.2;
    say(column, field, answered.has(column.index) ? "answer" : "heading", sure ? 1 : 0.5, sample);
  }
  header.repColumns.forEach((column, at) => {
    say(column, `rep ${at + 1}`, "heading", 1, sampleColumn(cells, first, end, column.index));
  });

  const known = new Set(
    [...Object.values(header.fields), ...header.repColumns].map(({ index }) => index),
  );
  const untitled = [...headLine.keys()].filter(
    (index) => !known.has(index) && !header.unknown.includes(index) && !answered.has(index),
  );

  for (const index of [...header.unknown, ...untitled]) {
    const sample = anyOfColumn(cells, first, end, index);
    if (sample.length === 0) continue;
    const { words, unit } = headerWords(headLine[index]);
    const heading = String(headLine[index] ?? "").trim();
    const column: Column = { index, unit, heading, words };
    const free = all.filter((field) => fields[field] === undefined);
    const asked = { table, words, sample, free, hasDays: fields.day !== undefined };
    const settled = settledAlone(asked);
    if (settled !== null) {
      const { field, by, sureness } = settled;
      if (field !== null) fields[field] = column;
      say(column, field, by, sureness, sample);
      continue;
    }
    unknown.push(index);
    say(column, null, "nothing", 0, sample);
    questions.push({
      column: index + 1,
      heading,
      about: "meaning",
      samples: threeSamples(sample),
      guess: nearMeaning(asked) ?? bestFit(free, sample)?.field ?? null,
      choices: free,
    });
  }
  return { header: { fields, repColumns: header.repColumns, unknown }, decisions, questions };
}

/** The time of a run is how long it took as well as when it began: lengths are taken as such. */
function takeLengths(
  fields: Record<string, Column>,
  cells: Cells,
  {
    first,
    end,
    answered,
  }: { readonly first: number; readonly end: number; readonly answered: ReadonlySet<number> },
): void {
  const { minute } = fields;
  if (minute?.words !== "time" || fields.minutes !== undefined || answered.has(minute.index))
    return;
  const sample = sampleColumn(cells, first, end, minute.index);
  if (2 * sample.filter(isRunLength).length <= sample.length) return;
  delete fields.minute;
  fields.minutes = minute;
}

const startsAt = 4 * 60;

/** A length sooner than a time of day: "45:00", "1:10:00", "30 min", 45; nobody begins a run before four. */
function isRunLength(cell: unknown): boolean {
  const minute = minuteOfDay(cell);
  if (minute !== null) return minute < startsAt;
  return /^\s*\d/.test(String(cell));
}
