/** A rectangle of cells; rows and columns from 0, both ends included. */
export type Rectangle = {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
};

/** 0 → A, 25 → Z, 26 → AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26)) {
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  }
  return letters;
}

/** A → 0, AA → 26. */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

export function rangeName(at: Rectangle): string {
  const start = cellName(at.startRow, at.startColumn);
  const end = cellName(at.endRow, at.endColumn);
  return start === end ? start : `${start}:${end}`;
}

/**
 * "B2", "B2:C9", "A:C", "2:3" or "A2:C" as a rectangle; open ends run to the tab's size.
 * Null for anything else.
 */
export function rectangle(text: string, size: { rows: number; columns: number }): Rectangle | null {
  const parts = /^\$?([A-Za-z]{0,3})\$?(\d*)(?::\$?([A-Za-z]{0,3})\$?(\d*))?$/.exec(text.trim());
  if (!parts || text.trim() === "") return null;
  const [, fromLetters = "", fromRow = "", toLetters, toRow] = parts;
  const single = !text.includes(":");
  if (single && (fromLetters === "" || fromRow === "")) return null;
  const rows = [fromRow === "" ? 0 : Number(fromRow) - 1, rowEnd()];
  const columns = [fromLetters === "" ? 0 : columnNumber(fromLetters), columnEnd()];
  return {
    startRow: Math.min(...rows),
    endRow: Math.max(...rows),
    startColumn: Math.min(...columns),
    endColumn: Math.max(...columns),
  };

  function rowEnd(): number {
    if (single) return Number(fromRow) - 1;
    return toRow ? Number(toRow) - 1 : size.rows - 1;
  }
  function columnEnd(): number {
    if (single) return columnNumber(fromLetters);
    return toLetters ? columnNumber(toLetters) : size.columns - 1;
  }
}
