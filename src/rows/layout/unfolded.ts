import type { Day } from "../../coaching/calendar/day";
import type { Cells } from "../cells";
import type { Column } from "../header/column";
import { IssueLog } from "../issue-log";
import type { Reading, RowIssue } from "../reading";
import type { TableName } from "../table-name";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { cellAddress } from "../value/cell-address";
import { foundText } from "../value/found-text";
import { Chapters, type Meaning, type Meanings } from "./meanings";
import { type RowFate, RowFates } from "./row-fates";
import type { RowNote } from "./row-note";
import type { TabAsk, TabMatter } from "./tab-question";
import { UnreadColumns } from "./unread-columns";

/** A value for the flat row, and the coach's column (from 0) it was found in; −1 for none. */
export type Placed = readonly [cell: unknown, column: number];

/** Cells of a flat row by place, and the coach's columns they came from. */
type Prepared = { readonly line: unknown[]; readonly columns: number[] };

/**
 * A messy layout turned into plain rows of one table. Every flat cell remembers where it was found,
 * so issues and records carry the coach's own addresses.
 */
export class Unfolded {
  readonly notes: RowNote[] = [];
  /** What the coach should be asked of the whole tab, with the cells it is about. */
  readonly asks: TabAsk[] = [];
  readonly log: IssueLog;
  readonly unread: UnreadColumns;
  /**
   * Whether the layout has no use for a column (from 0) whose heading the table does not know: it is
   * asked about. Null where the table's own header is not the one that was looked through.
   */
  passesOver: ((column: number) => boolean) | null = null;
  private readonly noted = new Set<string>();
  private readonly flat: unknown[][] = [];
  private readonly rows: number[] = [];
  private readonly columns: (readonly number[])[] = [];
  private readonly fieldAt = new Map<string, number>();
  private readonly chapters = new Chapters();
  private readonly chapterOf: Meanings[] = [];
  private readonly fates = new RowFates();

  constructor(
    readonly table: TableName,
    readonly source: Cells,
    readonly headerRow: number,
    leftAlone: readonly number[] = [],
  ) {
    this.log = new IssueLog(table, (row, column) => this.place(row, column), source);
    this.unread = new UnreadColumns(source, this.log, leftAlone);
  }

  /** Nothing was found that is a record. */
  get isEmpty(): boolean {
    return this.flat.length === 0;
  }

  /** Unit and heading a field of the flat rows is read with from here on. */
  describe(field: string, meaning: Meaning): void {
    this.chapters.describe(field, meaning);
  }

  /** What holds for rows found here. */
  meanings(): Meanings {
    return this.chapters.now();
  }

  /** Fields that several flat rows share, laid out once. */
  prepare(values: Readonly<Record<string, Placed | undefined>>): Prepared {
    const prepared: Prepared = { line: [], columns: [] };
    this.lay(values, prepared);
    return prepared;
  }

  /** One flat row, found in the coach's row `row` (from 0). Repetitions go under rep1, rep2 … */
  emit(
    row: number,
    values: Readonly<Record<string, Placed | undefined>>,
    shared?: Prepared,
    meanings = this.meanings(),
  ): void {
    const flat = { line: shared?.line.slice() ?? [], columns: shared?.columns ?? [] };
    this.lay(values, flat);
    this.flat.push(flat.line);
    this.rows.push(row);
    this.columns.push(flat.columns);
    this.chapterOf.push(meanings);
    this.mark(row, "data");
  }

  private lay(
    values: Readonly<Record<string, Placed | undefined>>,
    { line, columns }: Prepared,
  ): void {
    for (const field in values) {
      const placed = values[field];
      if (placed === undefined) continue;
      let at = this.fieldAt.get(field);
      if (at === undefined) {
        at = this.fieldAt.size;
        this.fieldAt.set(field, at);
      }
      line[at] = placed[0];
      columns[at] = placed[1];
    }
  }

  /** Says what a coach's row is; a row once found to hold data stays so. */
  mark(row: number, fate: RowFate): void {
    this.fates.mark(row, fate);
  }

  /** Reports a cell of the coach's range, counted from 0; it alone is left out, or its row with it. */
  report(
    code: string,
    row: number,
    column: number,
    facts: Record<string, string | number> = {},
    dropsRow = false,
  ): void {
    this.log.addAtSource(code, row, column, facts, dropsRow);
    this.mark(row, "reported");
  }

  /** A question that the cells raise without being wrong; blank cells raise none. */
  ask(about: TabMatter, cell: unknown): void {
    if (!isBlank(cell)) this.asks.push({ about, sample: foundText(cell) });
  }

  note(
    row: number,
    column: number,
    athlete: string,
    day: Day | null,
    span: RowNote["span"],
    words: string,
  ): void {
    const cell = cellAddress(row + 1, column + 1);
    // Words beside several sets of one row are said once.
    const key = `${cell}|${words}`;
    if (words === "" || this.noted.has(key)) return;
    this.noted.add(key);
    this.notes.push({ cell, row: row + 1, column: column + 1, athlete, day, span, words });
  }

  /** Reads the flat rows with the table's own reader and counts the coach's rows. */
  read<Row extends { readonly row: number }>(
    reader: (view: TableView) => Reading<Row>,
    year: number | null,
  ): Reading<Row> {
    this.meanings();
    this.byChapter();
    let first = 0;
    // The records were made for this reading alone, so their rows are set in place.
    const records = this.chapters.all.flatMap((chapter) => {
      let end = first;
      while (this.chapterOf[end] === chapter) end++;
      const { table, flat: cells, log } = this;
      const columns = this.columnsOf(chapter);
      const view = { table, cells, headerRow: -1 - first, first, end, ...columns, year, log };
      first = end;
      const read = reader(view);
      for (const { row, column, athlete, day, span, words } of read.notes ?? []) {
        const at = this.place(row - 1, column - 1);
        this.note(at.row, at.column, athlete, day, span, words);
      }
      return read.records as (Row & { row: number })[];
    });
    for (const record of records) record.row = this.rows[record.row - 1]! + 1;
    records.sort((a, b) => a.row - b.row);
    return {
      records,
      issues: onceEach(this.log.issues),
      notes: this.notes,
      ...this.count(),
    };
  }

  /** Rows of equal meanings one after another. */
  private byChapter(): void {
    const { all } = this.chapters;
    if (all.length === 1) return;
    const order = all.flatMap((chapter) =>
      this.chapterOf.flatMap((one, at) => (one === chapter ? [at] : [])),
    );
    const arranged = <One>(list: One[]) => {
      const before = [...list];
      order.forEach((at, place) => {
        list[place] = before[at]!;
      });
    };
    arranged(this.flat);
    arranged(this.rows);
    arranged(this.columns);
    arranged(this.chapterOf);
  }

  private columnsOf(chapter: Meanings): Pick<TableView, "fields" | "repColumns"> {
    const fields: Record<string, Column> = {};
    // Repetitions are laid out from the first on, so their columns are in order.
    const repColumns: Column[] = [];
    for (const [field, index] of this.fieldAt) {
      const said = chapter.get(field);
      const column = { unit: null, heading: field, words: field, ...said, index };
      if (/^rep\d+$/.test(field)) repColumns.push(column);
      else fields[field] = column;
    }
    return { fields, repColumns };
  }

  private count(): ReturnType<RowFates["count"]> {
    const kept = new Set<number>();
    const dropped = new Set<number>();
    for (const [flat, row] of this.rows.entries())
      (this.log.dropped.has(flat) ? dropped : kept).add(row);
    return this.fates.count(this.source, kept, dropped);
  }

  /** The heading over the first flat row, from `first` on, that has something in this column. */
  private headingOf(first: number, column: number): { row: number; column: number } {
    const flat = this.columns.findIndex((columns, at) => at >= first && columns[column]! >= 0);
    const at = this.columns[flat]![column]!;
    let row = this.rows[flat]!;
    while (row > this.headerRow && (!this.fates.isHeading(row) || isBlank(this.source[row]![at])))
      row--;
    return { row: Math.max(row, 0), column: at };
  }

  private place(row: number, column: number): { row: number; column: number } {
    if (row < 0) return this.headingOf(-1 - row, column);
    return {
      row: this.rows[row]!,
      column: this.columns[row]![column] ?? -1,
    };
  }
}

/** A cell that several flat rows share is wrong once. */
function onceEach(issues: readonly RowIssue[]): RowIssue[] {
  const said = new Set<string>();
  return issues.filter(({ code, cell, facts }) => {
    const about = `${code}|${cell}|${JSON.stringify(facts)}`;
    return !said.has(about) && said.add(about);
  });
}
