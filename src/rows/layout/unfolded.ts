import type { Day } from "../../coaching/calendar/day";
import type { Cells } from "../cells";
import { IssueLog } from "../issue-log";
import type { Reading, RowIssue } from "../reading";
import type { TableName } from "../table-name";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { cellAddress } from "../value/cell-address";
import { foundText } from "../value/found-text";
import { FlatRows, type PlacedFields, type Prepared } from "./flat-rows";
import { Chapters, type Meaning, type Meanings } from "./meanings";
import { type RowFate, RowFates } from "./row-fates";
import type { RowNote } from "./row-note";
import type { TabAsk, TabMatter } from "./tab-question";
import { UnreadColumns } from "./unread-columns";

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
  private readonly flat = new FlatRows();
  private readonly chapters = new Chapters();
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
    return this.flat.count === 0;
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
  prepare(values: PlacedFields): Prepared {
    return this.flat.prepare(values);
  }

  /** One flat row, found in the coach's row `row` (from 0). Repetitions go under rep1, rep2 … */
  emit(row: number, values: PlacedFields, shared?: Prepared, meanings = this.meanings()): void {
    this.flat.add(row, values, shared, meanings);
    this.mark(row, "data");
  }

  /** Says what a coach's row is; a row once found to hold data stays so. */
  mark(row: number, fate: RowFate): void {
    this.fates.mark(row, fate);
  }

  /** The rows above the first one of data. */
  markHeadings(first: number): void {
    for (let row = 0; row < first; row++) this.mark(row, "heading");
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
    const { table, log, flat } = this;
    // The records were made for this reading alone, so their rows are set in place.
    const records = flat.arrange(this.chapters.all).flatMap((chapter) => {
      const read = reader({ table, headerRow: -1 - chapter.first, ...chapter, year, log });
      for (const { row, column, athlete, day, span, words } of read.notes ?? []) {
        const at = this.place(row - 1, column - 1);
        this.note(at.row, at.column, athlete, day, span, words);
      }
      return read.records as (Row & { row: number })[];
    });
    for (const record of records) record.row = flat.rowOf(record.row - 1) + 1;
    records.sort((a, b) => a.row - b.row);
    return {
      records,
      issues: onceEach(this.log.issues),
      notes: this.notes,
      ...this.count(),
    };
  }

  private count(): ReturnType<RowFates["count"]> {
    const kept = new Set<number>();
    const dropped = new Set<number>();
    for (let flat = 0; flat < this.flat.count; flat++)
      (this.log.dropped.has(flat) ? dropped : kept).add(this.flat.rowOf(flat));
    return this.fates.count(this.source, kept, dropped);
  }

  /** The heading over the first flat row, from `first` on, that has something in this column. */
  private headingOf(first: number, column: number): { row: number; column: number } {
    const found = this.flat.firstPlace(first, column);
    let { row } = found;
    while (
      row > this.headerRow &&
      (!this.fates.isHeading(row) || isBlank(this.source[row]![found.column]))
    )
      row--;
    return { row: Math.max(row, 0), column: found.column };
  }

  private place(row: number, column: number): { row: number; column: number } {
    return row < 0 ? this.headingOf(-1 - row, column) : this.flat.placeOf(row, column);
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
