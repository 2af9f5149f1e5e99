import * as z from "zod/mini";
import { tabMatters } from "../../rows/layout/tab-question";
import { tableNames } from "../../rows/table-name";
import type { Workbook } from "../workbook";
import { kept } from "./kept";

const columnAnswer = z.object({
  /** Heading as it stood, and the column from 1 for one without a heading. */
  heading: z.string(),
  column: z.int().check(z.gte(1)),
  /** The tag put on the column. */
  tag: z.optional(z.string()),
  field: z.optional(z.nullable(z.string())),
  unit: z.optional(z.string()),
  dateOrder: z.optional(z.enum(["day first", "month first"])),
});
const tabAnswer = z.object({ about: z.enum(tabMatters), said: z.string(), answer: z.string() });
const pair = z.object({ written: z.string(), athlete: z.string() });
const stored = z.object({
  tables: z.array(z.tuple([z.int(), z.nullable(z.enum(tableNames))])),
  columns: z.array(z.tuple([z.int(), z.array(columnAnswer)])),
  tabs: z.optional(z.array(z.tuple([z.int(), z.array(tabAnswer)]))),
  /** Tags given so far; none is given twice, so that an old one never speaks for a new column. */
  tagsGiven: z.optional(z.int()),
  same: z.array(pair),
  different: z.array(pair),
  /** Sets far off all others that are right as they stand, by what they hold. */
  rightSets: z.optional(z.array(z.string())),
});

type Stored = z.infer<typeof stored>;
/** What was stored, with what the coach has not said of yet. */
export type StoredAnswers = { [Matter in keyof Stored]-?: Exclude<Stored[Matter], undefined> };
export type StoredColumnAnswer = z.infer<typeof columnAnswer>;
export type StoredTabAnswer = z.infer<typeof tabAnswer>;

const none: StoredAnswers = {
  tables: [],
  columns: [],
  tabs: [],
  tagsGiven: 0,
  same: [],
  different: [],
  rightSets: [],
};

/** What the coach said in the sidebar. */
export const answersKept = kept<StoredAnswers>("answers", stored, none);

/**
 * Changes what is remembered, while no other coach's answer can come between. Throws a sentence when
 * what stands there can no longer be read.
 */
export function changeAnswers(
  workbook: Workbook,
  change: (before: StoredAnswers) => Partial<StoredAnswers>,
): void {
  workbook.alone(() => {
    const before = answersKept.whole(workbook);
    answersKept.put(workbook, { ...before, ...change(before) });
  });
}

/** Entries with one replaced or added. */
export function replaced<Value>(
  entries: readonly (readonly [number, Value])[],
  at: number,
  value: Value,
): [number, Value][] {
  return [...new Map<number, Value>(entries).set(at, value)];
}
