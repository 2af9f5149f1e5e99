/** "C33" as row and column from 1. Throws on anything else: addresses come from our own reading. */
export function cellPlace(cell: string): { row: number; column: number } {
  const parts = /^([A-Z]{1,3})(\d{1,7})$/.exec(cell);
  if (!parts) throw new Error(`${cell} is not a cell.`);
  let column = 0;
  for (const letter of parts[1]!) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(parts[2]), column };
}
