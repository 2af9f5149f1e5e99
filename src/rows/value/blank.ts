/** True for a cell that holds nothing a reader could see. */
export function isBlank(cell: unknown): boolean {
  if (cell === "" || cell === null || cell === undefined) return true;
  return typeof cell === "string" && unseenOnly.test(cell);
}

// Spaces of every kind, and joiners and breaks without width.
const unseenOnly = /^[\s\u00AD\u200B-\u200F\u2060]*$/;
