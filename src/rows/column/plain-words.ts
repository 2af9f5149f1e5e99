import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isErrorCell } from "../value/error-cell";
import { trimmed } from "./text-column";

const mostRemembered = 4096;

/** A column of words, told cell by cell whether the cell is read exactly as it stands. */
export class PlainWords {
  private last: unknown = "";
  private readonly known = new Set<unknown>();

  constructor(readonly index: number) {}

  /** Words without a stray space, no mark that repeats another cell and no formula's error. */
  stand(cell: unknown): boolean {
    if (cell === this.last && cell !== "") return true;
    if (!this.known.has(cell)) {
      if (typeof cell !== "string" || isBlank(cell) || isDitto(cell)) return false;
      if (isErrorCell(cell) || trimmed(cell) !== cell) return false;
      // Names and lifts are few; notes may all differ, and are not all kept.
      if (this.known.size < mostRemembered) this.known.add(cell);
    }
    this.last = cell;
    return true;
  }
}
