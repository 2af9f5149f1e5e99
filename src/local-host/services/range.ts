import { BooleanNumber, type ICellData, type IStyleData } from "@univerjs/core";
import { type Rectangle, rangeName } from "../a1";
import { platformValue } from "../engine/platform-value";
import { alignments, uprights } from "../engine/snapshot";
import { hexColour } from "../hex-colour";
import { isDateFormat } from "../spreadsheet-date";
import type { DataValidation } from "./data-validation";
import type { Sheet } from "./sheet";
import { typedIn } from "./typed-in";

/** Past this many cells the command, which also measures row heights, costs seconds in the browser. */
const mostCellsByCommand = 2000;

/** The platform's Range: a rectangle of one tab. Rows and columns count from 1 towards the script. */
export class Range {
  constructor(
    /** The watched sheet, as scripts see it. */
    private readonly sheet: Sheet,
    private readonly at: Rectangle,
  ) {}

  getRow(): number {
    return this.at.startRow + 1;
  }
  getColumn(): number {
    return this.at.startColumn + 1;
  }
  getNumRows(): number {
    return this.at.endRow - this.at.startRow + 1;
  }
  getNumColumns(): number {
    return this.at.endColumn - this.at.startColumn + 1;
  }
  getLastRow(): number {
    return this.at.endRow + 1;
  }
  getLastColumn(): number {
    return this.at.endColumn + 1;
  }
  getSheet(): Sheet {
    return this.sheet;
  }
  getA1Notation(): string {
    return rangeName(this.at);
  }

  offset(rows: number, columns: number, height?: number, width?: number): Range {
    const startRow = this.at.startRow + rows;
    const startColumn = this.at.startColumn + columns;
    return this.sheet.inside.range({
      startRow,
      startColumn,
      endRow: startRow + (height ?? this.getNumRows()) - 1,
      endColumn: startColumn + (width ?? this.getNumColumns()) - 1,
    });
  }

  getValues(): unknown[][] {
    const { cellAt, formatOf } = this.sheet.inside;
    return this.mapped((row, column) => platformValue(cellAt(row, column), formatOf));
  }
  getValue(): unknown {
    const { cellAt, formatOf } = this.sheet.inside;
    return platformValue(cellAt(this.at.startRow, this.at.startColumn), formatOf);
  }

  getDisplayValues(): string[][] {
    const shown = this.cells().getDisplayValues();
    return this.mapped((row, column) => {
      const value = platformValue(
        this.sheet.inside.cellAt(row, column),
        this.sheet.inside.formatOf,
      );
      if (value === "") return "";
      if (typeof value === "boolean") return String(value).toUpperCase();
      const text = shown[row - this.at.startRow]?.[column - this.at.startColumn];
      return text === undefined || text === null ? String(value) : String(text);
    });
  }
  getDisplayValue(): string {
    return this.getDisplayValues()[0]?.[0] ?? "";
  }
  getFormulas(): string[][] {
    return this.mapped(this.sheet.inside.formulaAt);
  }
  getFormula(): string {
    return this.getFormulas()[0]?.[0] ?? "";
  }

  setValues(values: readonly (readonly unknown[])[]): this {
    this.mustFit(values);
    this.sheet.inside.ensure(this.at.endRow + 1, this.at.endColumn + 1);
    const cells = values.map((line, i) =>
      line.map((value, j) => {
        const row = this.at.startRow + i;
        const column = this.at.startColumn + j;
        const own = this.sheet.inside.ownCell(row, column);
        const format = own ? this.sheet.inside.formatOf(own) : "";
        const typed = typedIn(value, format);
        const keeps = typed.format === null || (typed.format !== "@" && isDateFormat(format));
        return keeps
          ? typed.cell
          : {
              ...typed.cell,
              s: { ...this.sheet.inside.styleOf(own), n: { pattern: typed.format! } },
            };
      }),
    );
    this.write(cells);
    return this;
  }
  setValue(value: unknown): this {
    return this.setValues(this.mapped(() => value));
  }
  setFormula(formula: string): this {
    return this.setValue(formula.startsWith("=") ? formula : `=${formula}`);
  }
  setFormulas(formulas: readonly (readonly string[])[]): this {
    return this.setValues(formulas);
  }
  clearContent(): this {
    return this.setValues(this.mapped(() => ""));
  }

  getNumberFormats(): string[][] {
    return this.mapped((row, column) => {
      const own = this.sheet.inside.ownCell(row, column);
      return own ? this.sheet.inside.formatOf(own) : "";
    });
  }
  getNumberFormat(): string {
    return this.getNumberFormats()[0]?.[0] ?? "";
  }
  setNumberFormat(pattern: string): this {
    return this.restyle(() => ({ n: { pattern } }));
  }
  setNumberFormats(patterns: readonly (readonly string[])[]): this {
    this.mustFit(patterns);
    return this.restyle((i, j) => ({ n: { pattern: patterns[i]![j]! } }));
  }
  getBackgrounds(): string[][] {
    return this.mapped((row, column) =>
      hexColour(
        this.sheet.inside.styleOf(this.sheet.inside.ownCell(row, column))?.bg?.rgb ?? "#ffffff",
      ),
    );
  }
  getBackground(): string {
    return this.getBackgrounds()[0]?.[0] ?? "#ffffff";
  }
  setBackground(colour: string | null): this {
    return this.restyle(() => ({ bg: colour === null ? null : { rgb: colour } }));
  }
  setBackgrounds(colours: readonly (readonly (string | null)[])[]): this {
    this.mustFit(colours);
    return this.restyle((i, j) => ({ bg: colours[i]![j] ? { rgb: colours[i]![j]! } : null }));
  }
  setFontColor(colour: string | null): this {
    return this.restyle(() => ({ cl: colour === null ? null : { rgb: colour } }));
  }
  setFontWeight(weight: "bold" | "normal" | null): this {
    return this.restyle(() => ({
      bl: weight === "bold" ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    }));
  }
  setFontWeights(weights: readonly (readonly ("bold" | "normal" | null)[])[]): this {
    this.mustFit(weights);
    return this.restyle((i, j) => ({
      bl: weights[i]![j] === "bold" ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    }));
  }
  setHorizontalAlignment(alignment: keyof typeof alignments): this {
    return this.restyle(() => ({ ht: alignments[alignment] }));
  }
  setVerticalAlignment(alignment: "top" | "middle" | "bottom" | null): this {
    const places = { ...uprights, bottom: null };
    return this.restyle(() => ({ vt: alignment === null ? null : places[alignment] }));
  }
  setWrap(wrap: boolean): this {
    return this.restyle(() => ({ tb: wrap ? 3 : 1 }));
  }

  getNotes(): string[][] {
    const notes = this.sheet.inside.notes();
    return this.mapped((row, column) => notes.get(`${row}|${column}`) ?? "");
  }
  getNote(): string {
    return this.getNotes()[0]?.[0] ?? "";
  }
  setNotes(notes: readonly (readonly (string | null)[])[]): this {
    this.mustFit(notes);
    this.mapped((row, column) => {
      const note = notes[row - this.at.startRow]![column - this.at.startColumn] ?? "";
      this.sheet.inside.setNote(row, column, note);
    });
    return this;
  }
  setNote(note: string | null): this {
    return this.setNotes(this.mapped(() => note));
  }

  setDataValidation(rule: DataValidation | null): this {
    this.sheet.inside.setList(
      this.at,
      rule && {
        values: rule.values,
        refusesOthers: rule.refusesOthers,
        ...(rule.helpText !== "" && { help: rule.helpText }),
      },
    );
    return this;
  }
  activate(): this {
    this.sheet.activate();
    this.sheet.inside.select(this.at);
    return this;
  }
  protect(): ReturnType<Sheet["protect"]> {
    return this.sheet.inside.protectRange(this.at);
  }
  addDeveloperMetadata(key: string, value?: string): this {
    this.sheet.inside.addMetadata(this.at, key, value ?? "");
    return this;
  }
  getDeveloperMetadata(): ReturnType<Sheet["getDeveloperMetadata"]> {
    return this.sheet.inside.metadataOf(this.at);
  }

  private cells() {
    const { startRow, startColumn } = this.at;
    return this.sheet.inside.grid.getRange(
      startRow,
      startColumn,
      this.getNumRows(),
      this.getNumColumns(),
    );
  }

  private mapped<T>(make: (row: number, column: number) => T): T[][] {
    const rows: T[][] = [];
    for (let row = this.at.startRow; row <= this.at.endRow; row++) {
      const line: T[] = [];
      for (let column = this.at.startColumn; column <= this.at.endColumn; column++) {
        line.push(make(row, column));
      }
      rows.push(line);
    }
    return rows;
  }

  private mustFit(values: readonly (readonly unknown[])[]): void {
    const rows = this.getNumRows();
    const columns = this.getNumColumns();
    if (values.length !== rows) {
      throw new Error(
        `The number of rows in the data does not match the number of rows in the range. The data has ${values.length} but the range has ${rows}.`,
      );
    }
    for (const line of values) {
      if (line.length !== columns) {
        throw new Error(
          `The number of columns in the data does not match the number of columns in the range. The data has ${line.length} but the range has ${columns}.`,
        );
      }
    }
  }

  private restyle(style: (row: number, column: number) => IStyleData): this {
    this.sheet.inside.ensure(this.at.endRow + 1, this.at.endColumn + 1);
    this.write(
      this.mapped((row, column) => ({
        s: {
          ...this.sheet.inside.styleOf(this.sheet.inside.ownCell(row, column)),
          ...style(row - this.at.startRow, column - this.at.startColumn),
        },
      })),
    );
    return this;
  }

  private write(cells: ICellData[][]): void {
    if (this.getNumRows() * this.getNumColumns() <= mostCellsByCommand) {
      this.cells().setValues(cells);
      return;
    }
    this.sheet.inside.writeLarge(this.at, cells);
  }
}
