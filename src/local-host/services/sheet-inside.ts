import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { type Rectangle, rangeName } from "../a1";
import { addConditionalFormats, conditionalFormats } from "../engine/conditional-formats";
import type { GridEngine } from "../engine/grid-engine";
import { notesByPlace, writeNote } from "../engine/notes";
import { lists, setList } from "../engine/validations";
import type { ConditionalFormat, Validation } from "../workbook-data";
import { Range } from "./range";
import type { ServiceCalls } from "./service-calls";
import type { Sheet } from "./sheet";
import type { Spreadsheet } from "./spreadsheet";

/** A script's tag on a tab (`at` null) or on whole rows or columns. */
export type PlacedTag = {
  readonly key: string;
  readonly value: string;
  readonly at: Rectangle | null;
};

/** What is kept of a tab beside the grid: by tab id, one for the life of the workbook. */
export type TabExtras = {
  tags: PlacedTag[];
  protections: { description: string; warningOnly: boolean; at: Rectangle | null }[];
};

/** What the other services need of a tab and a script must not touch. */
export class SheetInside {
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

  /** Last row and column with content, a look or a note, counted from 1. */
  usedExtent(): { rows: number; columns: number } {
    let { rows, columns } = this.extent();
    const reach = (row: number, column: number) => {
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    };
    this.grid
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (cell?.s !== undefined && cell.s !== null) reach(row, column);
      });
    for (const { row, col } of this.grid.getNotes()) reach(row, col);
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

  /** Notes by "row|column" from 0. */
  notes(): ReadonlyMap<string, string> {
    return notesByPlace(this.grid);
  }
  setNote(row: number, column: number, note: string): void {
    writeNote(this.grid, row, column, note);
  }

  rules(): ConditionalFormat[] {
    return conditionalFormats(this.grid);
  }
  setRules(rules: readonly ConditionalFormat[]): void {
    this.grid.clearConditionalFormatRules();
    addConditionalFormats(this.grid, rules);
  }

  lists(): Validation[] {
    return lists(this.grid);
  }
  setList(at: Rectangle, list: Omit<Validation, "range"> | null): void {
    setList(this.engine.api, this.grid, rangeName(at), list);
  }

  /** The formula of a cell, filled-down ones included. */
  readonly formulaAt = (row: number, column: number): string => {
    const own = this.ownCell(row, column);
    if (own?.f) return own.f;
    if (!own?.si) return "";
    const { injector, unitId } = this.engine;
    const found = injector
      .get(FormulaDataModel)
      .getFormulaStringByCell(row, column, this.grid.getSheetId(), unitId);
    return found ?? "";
  };

  addMetadata(at: Rectangle | null, key: string, value: string): void {
    this.extras.tags.push({ key, value, at });
  }
  metadataOf(at: Rectangle | null) {
    const { extras } = this;
    return extras.tags
      .filter((one) => (at === null ? one.at === null : one.at !== null && sameCells(one.at, at)))
      .map((one) => ({
        getKey: () => one.key,
        getValue: () => one.value,
        remove: () => {
          extras.tags = extras.tags.filter((other) => other !== one);
        },
      }));
  }

  /** Protections of ranges, or of the whole tab. */
  protections(type: "RANGE" | "SHEET") {
    return this.extras.protections
      .filter(({ at }) => (at === null) === (type === "SHEET"))
      .map(({ description, warningOnly, at }) => ({
        getDescription: () => description,
        isWarningOnly: () => warningOnly,
        getRange: () => this.range(at ?? { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 }),
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

export function hasContent(cell: ICellData): boolean {
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
