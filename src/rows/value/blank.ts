/** True for a cell that holds nothing a reader could see. */
export function isBlank(cell: unknown): boolean {
  if (cell === "" || cell === null || cell === undefined) return true;
  return typeof cell === "string" && cell.trim() === "";
}
