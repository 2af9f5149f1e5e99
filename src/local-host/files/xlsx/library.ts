import type * as Excel from "exceljs";

export type Book = Excel.Workbook;
export type Sheet = Excel.Worksheet;

/** The spreadsheet file library, loaded when first needed: it takes a third of a second. */
export async function newBook(): Promise<Book> {
  const library = await import("exceljs");
  return new library.default.Workbook();
}

/** Conditional formats of a tab, which the library's own types leave out. */
export type RuleOfFile = {
  readonly type: string;
  readonly formulae?: readonly string[];
  readonly priority?: number;
  readonly style?: Partial<Excel.Style>;
};
export type RulesOfFile = { ref: string; rules: RuleOfFile[] };

export function rulesOf(sheet: Sheet): RulesOfFile[] {
  return (
    (sheet as unknown as { conditionalFormattings?: RulesOfFile[] }).conditionalFormattings ?? []
  );
}

export function setRules(sheet: Sheet, rules: RulesOfFile[]): void {
  (sheet as unknown as { conditionalFormattings: RulesOfFile[] }).conditionalFormattings = rules;
}

/** The tab of the file that holds what the add-on remembers. */
export const memoryTab = "_holdline";
/** In its first column: the row tells which values are a formula's; no property has such a name. */
export const fillsKey = "=fills";
/** Width of the file's unit: one digit of 7 pixels, and 5 pixels of padding. */
export const pixelsOf = (width: number) => Math.round(width * 7 + 5);
export const widthOf = (pixels: number) => Math.max(0, (pixels - 5) / 7);
