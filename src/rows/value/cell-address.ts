/** `C33` for column 3, row 33, both counted from 1. */
export function cellAddress(row: number, column: number): string {
  let letters = "";
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26))
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  return `${letters}${row}`;
}
