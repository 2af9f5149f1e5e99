/** Letters of a column from 1: 27 is AA. */
export function columnName(column: number): string {
  let name = "";
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26))
    name = String.fromCharCode(65 + ((left - 1) % 26)) + name;
  return name;
}

/** `C33` for column 3, row 33, both counted from 1. */
export const cellAddress = (row: number, column: number): string => `${columnName(column)}${row}`;
