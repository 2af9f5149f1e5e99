import { accept, type Outcome, refuse } from "../../outcome";
import { foundText } from "../../rows/value/found-text";
import { isDate } from "../../rows/value/is-date";
import { numberFromText } from "../../rows/value/number-text";
import { inBase, unitOf } from "../../rows/value/units";
import { yesNo } from "../../rows/value/yes-no";
import { isBlank } from "./elementwise";

/**
 * A number from a cell, with decimal point or comma.
 * Refuses `argument-blank`, `argument-not-number` and `argument-unsure`, each with `name` and `found`.
 */
export function numberCell(cell: unknown, name: string): Outcome<number> {
  if (isBlank(cell)) return refuse("argument-blank", { name });
  if (typeof cell === "number" && Number.isFinite(cell)) return accept(cell);
  const found = isDate(cell) ? `a date, ${foundText(cell)}` : foundText(cell);
  const read = typeof cell === "string" ? numberFromText(cell.trim()) : null;
  if (!read) return refuse("argument-not-number", { name, found });
  if (read.unsure) return refuse("argument-unsure", { name, found });
  return accept(read.value);
}

/** A number, or null for a blank cell. */
export function optionalNumberCell(cell: unknown, name: string): Outcome<number | null> {
  return isBlank(cell) ? accept(null) : numberCell(cell, name);
}

/**
 * Reads a quantity in its base unit, which a bare number is in; a cell may name its own: "155 lb", "0.3 m".
 * Refuses what `numberCell` does; another quantity's unit makes no number.
 */
const quantityCell =
  (base: "kg" | "cm" | "m/s") =>
  (cell: unknown, name: string): Outcome<number> => {
    const text = typeof cell === "string" ? /^(.*\d)\s*(\D+)$/.exec(cell.trim()) : null;
    const unit = unitOf(text?.[2]);
    if (unit?.quantity !== unitOf(base)!.quantity) return numberCell(cell, name);
    const read = numberCell(text![1], name);
    return read.ok ? accept(inBase(read.value, unit)) : read;
  };

export const massCell = quantityCell("kg");
export const lengthCell = quantityCell("cm");
export const barSpeedCell = quantityCell("m/s");

/** Yes, no, or null for a blank cell: not recorded. Refuses `argument-not-yes-or-no`. */
export function yesNoCell(cell: unknown, name: string): Outcome<boolean | null> {
  if (isBlank(cell)) return accept(null);
  const answer = yesNo(cell);
  return answer === null
    ? refuse("argument-not-yes-or-no", { name, found: foundText(cell) })
    : accept(answer);
}

/** The one text of a cell. Refuses `argument-blank` and `argument-not-one-cell`. */
export function textCell(argument: unknown, name: string): Outcome<string> {
  const cells = Array.isArray(argument) ? argument.flat() : [argument];
  if (cells.length > 1) return refuse("argument-not-one-cell", { name });
  return isBlank(cells[0])
    ? refuse("argument-blank", { name })
    : accept(foundText(cells[0]).trim());
}

/** A number from each cell, named in the same order; the first that is none refuses. */
export function numbersOf<Read = number>(
  cells: readonly unknown[],
  names: readonly string[],
  read: (cell: unknown, name: string) => Outcome<number | Read> = numberCell,
): Outcome<readonly (number | Read)[]> {
  const numbers: (number | Read)[] = [];
  for (const [at, name] of names.entries()) {
    const number = read(cells[at], name);
    if (!number.ok) return number;
    numbers.push(number.value);
  }
  return accept(numbers);
}
