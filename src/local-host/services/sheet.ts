import type { FWorksheet } from "@univerjs/sheets/facade";
import { rectangle } from "../a1";
import type { GridEngine } from "../engine/grid-engine";
import { ConditionalFormatRule } from "./conditional-format-rule";
import { MetadataFinder } from "./metadata-finder";
import type { Range } from "./range";
import type { ServiceCalls } from "./service-calls";
import { SheetInside, type TabExtras } from "./sheet-inside";
import type { Spreadsheet } from "./spreadsheet";

/** The platform's Sheet: one tab. */
export class Sheet {
  /** What the other services here need and a script must not touch. */
  readonly inside: SheetInside;

  constructor(
    spreadsheet: Spreadsheet,
    engine: GridEngine,
    grid: FWorksheet,
    calls: ServiceCalls,
    extras: TabExtras,
  ) {
    this.inside = new SheetInside(this, spreadsheet, engine, grid, calls, extras);
  }

  getName(): string {
    return this.inside.grid.getSheetName();
  }
  setName(name: string): this {
    this.inside.grid.setName(name);
    return this;
  }
  getSheetId(): number {
    return this.inside.number();
  }
  getIndex(): number {
    return this.inside.grid.getIndex() + 1;
  }
  getParent(): Spreadsheet {
    return this.inside.spreadsheet;
  }
  getMaxRows(): number {
    return this.inside.grid.getMaxRows();
  }
  getMaxColumns(): number {
    return this.inside.grid.getMaxColumns();
  }
  getLastRow(): number {
    return this.inside.extent().rows;
  }
  getLastColumn(): number {
    return this.inside.extent().columns;
  }
  getDataRange(): Range {
    const { rows, columns } = this.inside.extent();
    return this.inside.range({
      startRow: 0,
      startColumn: 0,
      endRow: Math.max(1, rows) - 1,
      endColumn: Math.max(1, columns) - 1,
    });
  }
  getRange(first: string | number, column?: number, rows = 1, columns = 1): Range {
    if (typeof first === "string") {
      const size = { rows: this.getMaxRows(), columns: this.getMaxColumns() };
      const at = rectangle(first.slice(first.lastIndexOf("!") + 1), size);
      if (!at) throw new Error("Range not found");
      return this.inside.range(at);
    }
    if (column === undefined)
      throw new Error(
        "The parameters (number) don't match the method signature for Sheet.getRange.",
      );
    for (const part of [first, column, rows, columns]) {
      if (!Number.isInteger(part) || part < 1) {
        throw new Error("The coordinates of the range are outside the dimensions of the sheet.");
      }
    }
    if (first + rows - 1 > this.getMaxRows() || column + columns - 1 > this.getMaxColumns()) {
      throw new Error("The coordinates of the range are outside the dimensions of the sheet.");
    }
    return this.inside.range({
      startRow: first - 1,
      startColumn: column - 1,
      endRow: first + rows - 2,
      endColumn: column + columns - 2,
    });
  }
  appendRow(values: readonly unknown[]): this {
    const row = this.getLastRow();
    this.inside.ensure(row + 1, values.length);
    this.inside
      .range({ startRow: row, endRow: row, startColumn: 0, endColumn: values.length - 1 })
      .setValues([values]);
    return this;
  }
  insertRowsAfter(after: number, count: number): this {
    this.inside.grid.insertRowsAfter(after - 1, count);
    return this;
  }
  insertColumnsAfter(after: number, count: number): this {
    this.inside.grid.insertColumnsAfter(after - 1, count);
    return this;
  }
  deleteRows(first: number, count: number): this {
    this.inside.grid.deleteRows(first - 1, count);
    return this;
  }
  deleteRow(row: number): this {
    return this.deleteRows(row, 1);
  }
  setFrozenRows(rows: number): this {
    this.inside.grid.setFrozenRows(rows);
    return this;
  }
  getFrozenRows(): number {
    return Math.max(0, this.inside.grid.getFrozenRows());
  }
  setFrozenColumns(columns: number): this {
    this.inside.grid.setFrozenColumns(columns);
    return this;
  }
  setColumnWidth(column: number, pixels: number): this {
    this.inside.grid.setColumnWidth(column - 1, pixels);
    return this;
  }
  activate(): this {
    this.inside.grid.activate();
    return this;
  }
  hideSheet(): this {
    this.inside.grid.hideSheet();
    return this;
  }
  isSheetHidden(): boolean {
    return this.inside.grid.isSheetHidden();
  }
  setConditionalFormatRules(rules: readonly ConditionalFormatRule[]): void {
    this.inside.setRules(
      rules.map((rule) => ({
        ...rule.look,
        ranges: rule.getRanges().map((range) => range.getA1Notation()),
      })),
    );
  }
  getConditionalFormatRules(): ConditionalFormatRule[] {
    return this.inside.rules().map(
      ({ ranges, ...look }) =>
        new ConditionalFormatRule(
          ranges.map((range) => this.getRange(range)),
          look,
        ),
    );
  }
  getProtections(type: "RANGE" | "SHEET") {
    return this.inside.protections(type);
  }
  protect() {
    return this.inside.protectRange(null);
  }
  addDeveloperMetadata(key: string, value?: string): this {
    this.inside.addMetadata(null, key, value ?? "");
    return this;
  }
  getDeveloperMetadata() {
    return this.inside.metadataOf(null);
  }
  createDeveloperMetadataFinder(): MetadataFinder {
    return new MetadataFinder(this.inside);
  }
  moveColumns(columns: Range, before: number): void {
    this.inside.moveColumns(columns.getColumn() - 1, columns.getNumColumns(), before - 1);
  }
}
