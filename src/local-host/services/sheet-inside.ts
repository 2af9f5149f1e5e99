import { type ICellData, type IStyleData, IUndoRedoService, type Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import {
  getPrimaryForRange,
  SetRangeValuesUndoMutationFactory,
  SetSelectionsOperation,
} from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { type Rectangle, rangeName } from "../a1";
import { addConditionalFormats, conditionalFormats } from "../engine/conditional-formats";
import type { GridEngine } from "../engine/grid-engine";
import { notesByPlace, writeNote } from "../engine/notes";
import { lists, setList } from "../engine/validations";
import type { ConditionalFormat, Validation } from "../workbook-data";
import { type Protection, protectionAt } from "./kept-protections";
import { type PlacedTag, wholeLine } from "./placed-tags";
import { Range } from "./range";
import type { ServiceCalls } from "./service-calls";
import type { Sheet } from "./sheet";
import type { Spreadsheet } from "./spreadsheet";

/** What is kept of a tab beside the grid: by tab id, one for the life of the workbook. */
export type TabExtras = {
  tags: PlacedTag[];
  protections: Protection[];
};

/** How far a tab reaches: last row and column, counted from 1. */
type Extent = { rows: number; columns: number };

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
  extent(): Extent {
    const extent = this.extentOf(hasContent);
    const spilled = this.engine.spilled(this.grid.getSheetId()) ?? {};
    for (const [row, line] of Object.entries(spilled)) {
      for (const [column, cell] of Object.entries(line ?? {})) {
        if (cell && hasContent(cell as ICellData)) reach(extent, Number(row), Number(column));
      }
    }
    return extent;
  }

  /** Last row and column with content, a look or a note, counted from 1. */
  usedExtent(): Extent {
    const extent = this.extent();
    const looked = this.extentOf(({ s }) => s !== undefined && s !== null);
    reach(extent, looked.rows - 1, looked.columns - 1);
    for (const { row, col } of this.grid.getNotes()) reach(extent, row, col);
    return extent;
  }

  /** Last row and column whose own cell is of a kind. */
  private extentOf(counts: (cell: ICellData) => boolean): Extent {
    const extent = { rows: 0, columns: 0 };
    this.grid
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (cell && counts(cell)) reach(extent, row, column);
      });
    return extent;
  }

  /** Makes the tab at least so large. */
  ensure(rows: number, columns: number): void {
    if (rows > this.grid.getMaxRows()) this.grid.setRowCount(rows + 200);
    if (columns > this.grid.getMaxColumns()) this.grid.setColumnCount(columns);
  }

  /** The bare mutation: fast for many cells, as it measures no row. */
  writeLarge(at: Rectangle, cells: readonly (readonly ICellData[])[]): void {
    const id = "sheet.mutation.set-range-values";
    const { api, injector, unitId } = this.engine;
    const params = {
      unitId,
      subUnitId: this.grid.getSheetId(),
      cellValue: Object.fromEntries(
        cells.map((line, i) => [
          at.startRow + i,
          Object.fromEntries(line.map((cell, j) => [at.startColumn + j, cell])),
        ]),
      ),
    };
    const before = injector.invoke((accessor) =>
      SetRangeValuesUndoMutationFactory(accessor, params),
    );
    api.syncExecuteCommand(id, params);
    injector.get(IUndoRedoService).pushUndoRedo({
      unitID: unitId,
      undoMutations: [{ id, params: before }],
      redoMutations: [{ id, params }],
    });
  }

  moveColumns(from: number, count: number, before: number): void {
    this.grid.moveColumns(this.grid.getRange(0, from, this.grid.getMaxRows(), count), before);
  }

  /** Selects cells and brings them into sight, which the facade's own way does not. */
  select(at: Rectangle): void {
    const { api, unitId } = this.engine;
    const primary = getPrimaryForRange(at, this.grid.getSheet());
    api.syncExecuteCommand(SetSelectionsOperation.id, {
      unitId,
      subUnitId: this.grid.getSheetId(),
      selections: [{ range: at, primary, style: null }],
      reveal: true,
    });
    this.spreadsheet.inside.hooks.selected?.();
  }

  /** Notes by "row|column" from 0. */
  notes(): ReadonlyMap<string, string> {
    return notesByPlace(this.grid);
  }
  setNote(row: number, column: number, note: string): void {
    const { injector, unitId } = this.engine;
    const held = () => this.grid.getRange(row, column).getNote() ?? null;
    const place = { unitId, sheetId: this.grid.getSheetId(), row, col: column };
    const step = (kept: ReturnType<typeof held>) =>
      kept
        ? { id: "sheet.mutation.update-note", params: { ...place, note: { ...kept } } }
        : { id: "sheet.mutation.remove-note", params: place };
    const before = step(held());
    writeNote(this.grid, row, column, note);
    injector.get(IUndoRedoService).pushUndoRedo({
      unitID: unitId,
      undoMutations: [before],
      redoMutations: [step(held())],
    });
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
    const size = { rows: this.grid.getMaxRows(), columns: this.grid.getMaxColumns() };
    this.extras.tags.push({ key, value, at, along: at && wholeLine(at, size) });
  }
  metadataOf(at: Rectangle | null) {
    return this.tagsWhere((one) =>
      at === null ? one.at === null : one.at !== null && sameCells(one.at, at),
    );
  }
  /** The tags that fit, as scripts see them. */
  tagsWhere(fits: (tag: PlacedTag) => boolean) {
    const { extras } = this;
    return extras.tags.filter(fits).map((one) => ({
      getKey: () => one.key,
      getValue: () => one.value,
      getLocation: () => ({
        getColumn: () => (one.at && one.along === "column" ? this.range(one.at) : null),
        getRow: () => (one.at && one.along === "row" ? this.range(one.at) : null),
        getSheet: () => this.calls.counted("Sheet", this.sheet),
      }),
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

  /** What a protection says of a cell, null where there is none. */
  protectedAt(row: number, column: number): string | null {
    return protectionAt(this.extras.protections, row, column)?.description ?? null;
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

/** Makes an extent hold a cell, counted from 0. */
function reach(extent: Extent, row: number, column: number): void {
  extent.rows = Math.max(extent.rows, row + 1);
  extent.columns = Math.max(extent.columns, column + 1);
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
