import { accept, type Outcome } from "../../outcome";
import { numberCell } from "./number-cell";

/** Flights and contacts of a jump last less than this many seconds, and more than so many ms. */
const mostSeconds = 3;

/**
 * A time in seconds from a cell in s or ms: 520, 0.52 and "520 ms" are the same. No jump's flight or
 * contact lasts 3 s or as little as 3 ms, so the size settles the unit.
 */
export function secondsCell(cell: unknown, name: string): Outcome<number> {
  const text = typeof cell === "string" ? /^(.*\d)\s*(ms|s)$/i.exec(cell.trim()) : null;
  const read = numberCell(text ? text[1] : cell, name);
  if (!read.ok) return read;
  const unit = text?.[2]?.toLowerCase() ?? (read.value > mostSeconds ? "ms" : "s");
  return accept(unit === "ms" ? read.value / 1000 : read.value);
}
