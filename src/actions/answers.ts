import * as z from "zod/mini";
import { nameKey } from "../coaching/record/name-key";
import type { Cells } from "../rows/cells";
import type { ColumnAnswers } from "../rows/header/column-answers";
import type { NameAnswers } from "../rows/name/name-answers";
import { type TableName, tableNames } from "../rows/table-name";
import { recallLong, rememberLong } from "./remember-long";
import type { Workbook } from "./workbook";

/**
 * What the coach has answered, remembered with the workbook. Tabs are known by id and columns by
 * their heading, so answers outlive renaming and moving tabs, moving and inserting columns.
 */
export type Answers = {
  /** The table a tab is; null: none of ours. */
  readonly tables: ReadonlyMap<number, TableName | null>;
  readonly columns: {
    readonly of: (tabId: number, cells: Cells) => ColumnAnswers;
    /** As remembered, for showing and changing. */
    readonly said: (tabId: number) => readonly StoredColumnAnswer[];
  };
  readonly names: NameAnswers;
};

const key = "answers";
const columnAnswer = z.object({
  /** Heading as it stood, and the column from 1 for one without a heading. */
  heading: z.string(),
  column: z.int().check(z.positive()),
  field: z.optional(z.nullable(z.string())),
  unit: z.optional(z.string()),
  dateOrder: z.optional(z.enum(["day first", "month first"])),
});
const pair = z.object({ written: z.string(), athlete: z.string() });
const stored = z.object({
  tables: z.array(z.tuple([z.int(), z.nullable(z.enum(tableNames))])),
  columns: z.array(z.tuple([z.int(), z.array(columnAnswer)])),
  same: z.array(pair),
  different: z.array(pair),
});
type Stored = z.infer<typeof stored>;
export type StoredColumnAnswer = z.infer<typeof columnAnswer>;
const none: Stored = { tables: [], columns: [], same: [], different: [] };

export function recallAnswers(workbook: Workbook): Answers {
  const { tables, columns, same, different } = recalled(workbook);
  const byTab = new Map(columns);
  return {
    tables: new Map(tables),
    columns: {
      said: (tabId) => byTab.get(tabId) ?? [],
      of: (tabId, cells) => ({
        columns: (byTab.get(tabId) ?? []).map(({ heading, column, ...answer }) => ({
          column: columnOf(heading, column, cells),
          ...answer,
        })) as ColumnAnswers["columns"],
      }),
    },
    names: { same, different },
  };
}

const rowsSearched = 40;

/** Where the heading stands now; its old place when it has none. */
function columnOf(heading: string, column: number, cells: Cells): number {
  if (heading === "") return column;
  const wanted = nameKey(heading);
  for (const row of cells.slice(0, rowsSearched)) {
    if (nameKey(String(row[column - 1] ?? "")) === wanted) return column;
    const at = row.findIndex((cell) => typeof cell === "string" && nameKey(cell) === wanted);
    if (at >= 0) return at + 1;
  }
  return column;
}

/** Remembers which table a tab is, or that it is none. */
export function answerTable(workbook: Workbook, tabId: number, table: TableName | null): void {
  const before = recalled(workbook);
  store(workbook, { ...before, tables: replaced(before.tables, tabId, table) });
}

/** Remembers what a column means, in what unit, or how its dates are written. */
export function answerColumn(workbook: Workbook, tabId: number, answer: StoredColumnAnswer): void {
  const before = recalled(workbook);
  const columns = new Map(before.columns).get(tabId) ?? [];
  const isSame = (one: StoredColumnAnswer) =>
    answer.heading === "" ? one.column === answer.column : one.heading === answer.heading;
  const next = [...columns.filter((one) => !isSame(one)), { ...columns.find(isSame), ...answer }];
  store(workbook, { ...before, columns: replaced(before.columns, tabId, next) });
}

/** Forgets what a column was said to be: it is recognised, or asked about, again. */
export function forgetColumn(
  workbook: Workbook,
  tabId: number,
  { heading, column }: Pick<StoredColumnAnswer, "heading" | "column">,
): void {
  const before = recalled(workbook);
  const kept = (new Map(before.columns).get(tabId) ?? []).filter((one) =>
    heading === "" ? one.heading !== "" || one.column !== column : one.heading !== heading,
  );
  store(workbook, { ...before, columns: replaced(before.columns, tabId, kept) });
}

/** Remembers that a spelling means an athlete, or that it is somebody else. */
export function answerName(
  workbook: Workbook,
  written: string,
  athlete: string,
  same: boolean,
): void {
  const before = recalled(workbook);
  const others = (pairs: Stored["same"]) =>
    pairs.filter((one) => nameKey(one.written) !== nameKey(written));
  store(workbook, {
    ...before,
    same: same ? [...others(before.same), { written, athlete }] : others(before.same),
    different: same
      ? before.different
      : [
          ...before.different.filter(
            (one) => one.athlete !== athlete || nameKey(one.written) !== nameKey(written),
          ),
          { written, athlete },
        ],
  });
}

/** Forgets that a spelling means an athlete. */
export function forgetName(workbook: Workbook, written: string): void {
  const before = recalled(workbook);
  const same = before.same.filter((one) => nameKey(one.written) !== nameKey(written));
  store(workbook, { ...before, same });
}

function replaced<Key, Value>(
  entries: readonly (readonly [Key, Value])[],
  at: Key,
  value: Value,
): [Key, Value][] {
  return [...new Map<Key, Value>(entries).set(at, value)];
}

function recalled(workbook: Workbook): Stored {
  const text = recallLong(workbook, key);
  if (text === null) return none;
  try {
    return stored.parse(JSON.parse(text));
  } catch {
    // Answers of another version, or edited by hand: asking again is safe, guessing is not.
    return none;
  }
}

function store(workbook: Workbook, answers: Stored): void {
  rememberLong(workbook, key, JSON.stringify(answers));
}
