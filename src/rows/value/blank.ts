import { withoutUnseenSigns } from "../../coaching/record/unseen-signs";

/** True for a cell that holds nothing a reader could see. */
export function isBlank(cell: unknown): boolean {
  if (cell === "" || cell === null || cell === undefined) return true;
  if (typeof cell !== "string") return false;
  // Nearly every text begins with a plain sign: the patterns are for the rest.
  const first = cell.charCodeAt(0);
  return !(first > 0x20 && first < 0x7f) && withoutUnseenSigns(cell).trim() === "";
}
