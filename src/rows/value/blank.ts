/** True for a cell that holds nothing a reader could see. */
export function isBlank(cell: unknown): boolean {
  if (cell === "" || cell === null || cell === undefined) return true;
  if (typeof cell !== "string") return false;
  // Nearly every text begins with a plain sign: the pattern is for the rest.
  const first = cell.charCodeAt(0);
  return !(first > 0x20 && first < 0x7f) && unseenOnly.test(cell);
}

// Spaces of every kind, and joiners and breaks without width.
const unseenOnly = /^[\s\u00AD\u200B-\u200F\u2060]*$/;
