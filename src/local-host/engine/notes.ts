import type { FWorksheet } from "@univerjs/sheets/facade";
import "@univerjs/sheets-note/facade";

/** Notes by place, "row|column" from 0. */
export function notesByPlace(sheet: FWorksheet): ReadonlyMap<string, string> {
  return new Map(sheet.getNotes().map(({ row, col, note }) => [`${row}|${col}`, note]));
}

/** Writes a cell's note; empty text takes it away. */
export function writeNote(sheet: FWorksheet, row: number, column: number, note: string): void {
  const range = sheet.getRange(row, column);
  if (note !== "") {
    const lines = note.split("\n").length + Math.floor(note.length / 34);
    const height = Math.min(260, 40 + 20 * lines);
    const known = range.getNote();
    const id = known?.id ?? `note-${crypto.randomUUID()}`;
    range.createOrUpdateNote({ id, row, col: column, width: 240, height, note });
  } else if (range.getNote()) range.deleteNote();
}
