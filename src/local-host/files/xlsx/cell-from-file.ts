import type * as Excel from "exceljs";
import { hexColour } from "../../hex-colour";
import { isDayFormat } from "../../spreadsheet-date";
import type { CellData, CellStyle } from "../../workbook-data";
import { formulaFromFile } from "./formula-text";

/** Days between the two day counts a file may use. */
export const daysBetweenSystems = 1462;
const dayMs = 86_400_000;
const serialOfEpoch = 25_569;

/**
 * Spreadsheet programs show days in numbers 14 and 22 of a file's own formats (ECMA-376 part 1, 18.8.30)
 * in the order of the machine's region (common practice, no source); the library gives the American one.
 * Here they stand year first, so that 3 February is not taken for 2 March; in the file they stay what
 * they are.
 */
const leftToRegion = new Map([
  ["mm-dd-yy", "yyyy-mm-dd"],
  ['m/d/yy "h":mm', "yyyy-mm-dd h:mm"],
]);

type Value = CellData["value"];

/** A cell of a file as the grid's; null when it holds nothing. */
export function cellFromFile(cell: Excel.Cell): CellData | null {
  const { value: found, formula } = content(cell);
  const note = noteOf(cell);
  const style = styleOf(cell);
  const written = cell.numFmt && cell.numFmt !== "General" ? cell.numFmt : undefined;
  const format = leftToRegion.get(written ?? "") ?? written;
  const value = isMovedTime(cell, found) ? found - daysBetweenSystems : found;
  const empty = value === null && formula === undefined && note === "";
  if (empty && format === undefined && style === null) return null;
  return {
    value,
    ...(formula !== undefined && { formula }),
    ...(format !== undefined && { format }),
    ...(note !== "" && { note }),
    ...(style && { style }),
  };
}

/** In a file that counts days from 1904 the library moves times of day and durations as if they were days. */
function isMovedTime(cell: Excel.Cell, value: Value): value is number {
  const asDate = cell.value instanceof Date || cell.result instanceof Date;
  return asDate && cell.workbook.properties.date1904 && !isDayFormat(cell.numFmt);
}

function content(cell: Excel.Cell): { readonly value: Value; readonly formula?: string } {
  const held = cell.value;
  if (cell.isMerged && cell.master !== cell) return { value: null };
  if (held !== null && typeof held === "object" && ("formula" in held || "sharedFormula" in held)) {
    return { value: plain(cell.result), formula: formulaFromFile(cell.formula) };
  }
  return { value: plain(held) };
}

/** Dates become serial days, rich text plain text, an error its sign. */
export function plain(held: unknown): Value {
  if (held === null || held === undefined) return null;
  if (held instanceof Date) {
    return Math.round((held.getTime() / dayMs + serialOfEpoch) * 1e9) / 1e9;
  }
  if (typeof held !== "object") return held as number | string | boolean;
  if ("richText" in held) {
    return (held.richText as { text: string }[]).map(({ text }) => text).join("");
  }
  if ("text" in held) return plain(held.text);
  return "error" in held ? String(held.error) : null;
}

function noteOf({ note }: Excel.Cell): string {
  if (!note) return "";
  if (typeof note === "string") return note;
  return (note.texts ?? []).map(({ text }) => text).join("");
}

/** The looks the grid shows; everything else of a style stays in the file. */
export function styleOf({ font, fill, alignment }: Partial<Excel.Style>): CellStyle | null {
  const background =
    fill?.type === "pattern" && fill.pattern === "solid"
      ? (colourOf(fill.fgColor) ?? colourOf(fill.bgColor))
      : undefined;
  const colour = colourOf(font?.color);
  const align = (["left", "center", "right"] as const).find((one) => one === alignment?.horizontal);
  const upright = (["top", "middle"] as const).find((one) => one === alignment?.vertical);
  const style: CellStyle = {
    ...(font?.bold && { bold: true }),
    ...(font?.italic && { italic: true }),
    ...(colour !== undefined && colour !== "#000000" && { colour }),
    ...(background !== undefined && { background }),
    ...(align && { align }),
    ...(upright && { upright }),
    ...(alignment?.wrapText && { wrap: true }),
  };
  return Object.keys(style).length > 0 ? style : null;
}

function colourOf(colour: Partial<Excel.Color> | undefined): string | undefined {
  const argb = colour?.argb;
  return argb === undefined ? undefined : `#${argb.slice(-6).toLowerCase()}`;
}

export const argbOf = (colour: string) => `FF${hexColour(colour).replace("#", "").toUpperCase()}`;
