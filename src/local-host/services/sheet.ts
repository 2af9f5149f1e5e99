import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { cellName, type Rectangle, rectangle } from "../a1";
import { addConditionalFormats } from "../engine/conditional-formats";
import type { GridEngine } from "../engine/grid-engine";
import type { ConditionalFormat } from "../workbook-data";
import { ConditionalFormatRule } from "./conditional-format-rule";
import type { DataValidation } from "./data-validation";
import { Range } from "./range";
import type { ServiceCalls } from "./service-calls";
import type { Spreadsheet } from "./spreadsheet";

export type Metadata = {
  readonly key: string;
  readonly value: string;
  readonly at: Rectangle | null;
};

/** What is kept of a tab beside the grid: by tab id, one for the life of the workbook. */
export type TabExtras = {
  metadata: Metadata[];
  rules: ConditionalFormat[];
  validations: { at: Rectangle; rule: DataValidation }[];
  protections: { description: string; warningOnly: boolean; at: Rectangle | null }[];
};

export const noExtras = (): TabExtras => ({
  metadata: [],
  rules: [],
  validations: [],
  protections: [],
});

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
    return this.inside.extras.rules.map(
      ({ ranges, ...look }) =>
        new ConditionalFormatRule(
          ranges.map((range) => this.getRange(range)),
          look,
        ),
    );
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
}

class SheetInside {
  constructor(
    private readonly sheet: Sheet,
    readonly spreadsheet: Spreadsheet,
    private readonly engine: GridEngine,
    readonly grid: FWorksheet,
    private readonly calls: ServiceCalls,
    readonly extras: TabExtras,
  ) {}

  readonly range = (at: Rectangle): Range =>
    this.calls.counted("Range", new Range(this.calls.counted("Sheet", this.sheet), at));

  /** A stable number for the tab, as the platform gives one. */
  number(): number {
    return this.spreadsheet.inside.tabNumber(this.grid.getSheetId());
  }

  /** A cell with its own content, without what a formula elsewhere puts there. */
  readonly ownCell = (row: number, column: number): Nullable<ICellData> =>
    this.grid.getSheet().getCellMatrix().getValue(row, column);

  readonly cellAt = (row: number, column: number): Nullable<ICellData> => {
    const own = this.ownCell(row, column);
    if (own && hasContent(own)) return own;
    const spilled = this.engine.spilled(this.grid.getSheetId())?.[row]?.[column];
    return spilled ? { ...spilled, ...(own?.s !== undefined && { s: own.s }) } : own;
  };

  readonly styleOf = (cell: Nullable<ICellData>): IStyleData =>
    (cell ? this.grid.getWorkbook().getStyles().getStyleByCell(cell) : null) ?? {};

  readonly formatOf = (cell: ICellData): string => this.styleOf(cell).n?.pattern ?? "";

  /** Last row and column with content, counted from 1; 0 for an empty tab. */
  extent(): { rows: number; columns: number } {
    let rows = 0;
    let columns = 0;
    const reach = (row: number, column: number) => {
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    };
    this.grid
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (cell && hasContent(cell)) reach(row, column);
      });
    const spilled = this.engine.spilled(this.grid.getSheetId()) ?? {};
    for (const [row, line] of Object.entries(spilled)) {
      for (const [column, cell] of Object.entries(line ?? {})) {
        if (cell && hasContent(cell as ICellData)) reach(Number(row), Number(column));
      }
    }
    return { rows, columns };
  }

  /** Makes the tab at least so large. */
  ensure(rows: number, columns: number): void {
    if (rows > this.grid.getMaxRows()) this.grid.setRowCount(rows + 200);
    if (columns > this.grid.getMaxColumns()) this.grid.setColumnCount(columns);
  }

  /** The bare mutation: fast for many cells, and not part of undo. */
  writeLarge(at: Rectangle, cells: readonly (readonly ICellData[])[]): void {
    const cellValue = Object.fromEntries(
      cells.map((line, i) => [
        at.startRow + i,
        Object.fromEntries(line.map((cell, j) => [at.startColumn + j, cell])),
      ]),
    );
    this.engine.api.syncExecuteCommand("sheet.mutation.set-range-values", {
      unitId: this.engine.unitId,
      subUnitId: this.grid.getSheetId(),
      cellValue,
    });
  }

  select(at: Rectangle): void {
    this.engine.book.setActiveRange(
      this.grid.getRange(
        at.startRow,
        at.startColumn,
        at.endRow - at.startRow + 1,
        at.endColumn - at.startColumn + 1,
      ),
    );
  }

  note(row: number, column: number): string {
    return this.spreadsheet.inside.notes.get(this.place(row, column)) ?? "";
  }
  setNote(row: number, column: number, note: string): void {
    const { notes } = this.spreadsheet.inside;
    if (note === "") notes.delete(this.place(row, column));
    else notes.set(this.place(row, column), note);
  }
  private place(row: number, column: number): string {
    return `${this.grid.getSheetId()}|${cellName(row, column)}`;
  }

  setRules(rules: ConditionalFormat[]): void {
    this.extras.rules = rules;
    this.grid.clearConditionalFormatRules();
    addConditionalFormats(this.grid, rules);
  }

  setValidation(at: Rectangle, rule: DataValidation | null): void {
    const apart = this.extras.validations.filter(({ at: other }) => !sameCells(at, other));
    this.extras.validations = rule ? [...apart, { at, rule }] : apart;
    const range = this.grid.getRange(
      at.startRow,
      at.startColumn,
      at.endRow - at.startRow + 1,
      at.endColumn - at.startColumn + 1,
    );
    range.setDataValidation(
      rule
        ? this.engine.api
            .newDataValidation()
            .requireValueInList([...rule.values])
            .setOptions({ showErrorMessage: rule.refusesOthers })
            .build()
        : null,
    );
  }

  addMetadata(at: Rectangle | null, key: string, value: string): void {
    this.extras.metadata.push({ key, value, at });
  }
  metadataOf(at: Rectangle | null) {
    const { extras } = this;
    return extras.metadata
      .filter((one) => (at === null ? one.at === null : one.at !== null && sameCells(one.at, at)))
      .map((one) => ({
        getKey: () => one.key,
        getValue: () => one.value,
        remove: () => {
          extras.metadata = extras.metadata.filter((other) => other !== one);
        },
      }));
  }

  protectRange(at: Rectangle | null) {
    const made = { description: "", warningOnly: false, at };
    this.extras.protections.push(made);
    const protection = {
      setDescription: (description: string) => {
        made.description = description;
        return protection;
      },
      setWarningOnly: (warningOnly: boolean) => {
        made.warningOnly = warningOnly;
        return protection;
      },
    };
    return protection;
  }
}

function hasContent(cell: ICellData): boolean {
  return (
    Boolean(cell.f || cell.si || cell.p) ||
    (cell.v !== undefined && cell.v !== null && cell.v !== "")
  );
}

function sameCells(a: Rectangle, b: Rectangle): boolean {
  return (
    a.startRow === b.startRow &&
    a.endRow === b.endRow &&
    a.startColumn === b.startColumn &&
    a.endColumn === b.endColumn
  );
}
