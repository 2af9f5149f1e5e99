/**
 * A workbook as this program holds it between file and grid: plain data, no library's types. Dates
 * are serial days since 30 December 1899 with a date format, as spreadsheets keep them.
 */
export type WorkbookData = {
  readonly name: string;
  readonly tabs: readonly TabData[];
  readonly names: readonly NamedRange[];
  /** What the add-on remembers with this workbook. */
  readonly properties: Readonly<Record<string, string>>;
};

export type TabData = {
  readonly name: string;
  /** Row by row from A1; rows may differ in length, null is an empty cell. */
  readonly cells: readonly (readonly (CellData | null)[])[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** Width of each column in pixels, null for the usual. */
  readonly columnWidths: readonly (number | null)[];
  /** Heights set by hand in pixels, by row from 0; every other row measures itself. */
  readonly rowHeights?: Readonly<Record<number, number>>;
  /** Rows and columns that are there and not shown, from 0. */
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  readonly conditionalFormats: readonly ConditionalFormat[];
  readonly validations: readonly Validation[];
  readonly hidden?: boolean;
  /** Ranges shown as one cell, "A1:D1". */
  readonly merged?: readonly string[];
};

export type CellData = {
  /** Plain value, or the last calculated one beside a formula. */
  readonly value: number | string | boolean | null;
  /** With its leading "=". */
  readonly formula?: string;
  /** Last calculated values of all the cells the formula fills, its own first; absent when it fills one. */
  readonly fills?: readonly (readonly (number | string | boolean | null)[])[];
  /** Number format pattern, such as "yyyy-mm-dd". */
  readonly format?: string;
  readonly note?: string;
  readonly style?: CellStyle;
};

export type CellStyle = {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly colour?: string;
  readonly background?: string;
  readonly align?: "left" | "center" | "right";
  /** Where a text stands in a row higher than it; absent for the bottom, as is usual. */
  readonly upright?: "top" | "middle";
  readonly wrap?: boolean;
};

/** Cells that take a look when a formula holds, as seen from the range's first cell. */
export type ConditionalFormat = {
  readonly ranges: readonly string[];
  readonly formula: string;
  readonly background?: string;
  readonly colour?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
};

/** A list of values a range takes. */
export type Validation = {
  readonly range: string;
  readonly values: readonly string[];
  /** Whether any other value is turned away (the usual) or only marked. */
  readonly refusesOthers?: boolean;
  readonly help?: string;
};

export type NamedRange = { readonly name: string; readonly ref: string };

/** A tab with cells and nothing else. */
export function plainTab(name: string, cells: TabData["cells"]): TabData {
  return {
    name,
    cells,
    frozenRows: 0,
    frozenColumns: 0,
    columnWidths: [],
    conditionalFormats: [],
    validations: [],
  };
}
