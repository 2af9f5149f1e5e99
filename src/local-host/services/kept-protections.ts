import { type Rectangle, rangeName, rectangle } from "../a1";
import { type Shift, shiftedPlace } from "../engine/shift";
import type { KeptProtection } from "../engine/tab-memory";

/** A protection a script put on a range, or on the whole tab (`at` null). */
export type Protection = { description: string; warningOnly: boolean; at: Rectangle | null };

/** Protections after rows or columns came or went; one goes with the last of its cells. */
export function shiftedProtections(protections: readonly Protection[], shift: Shift): Protection[] {
  return protections.flatMap((protection) => {
    if (protection.at === null) return [protection];
    const at = shiftedPlace(protection.at, shift);
    return at ? [{ ...protection, at }] : [];
  });
}

export function keptProtection({ description, warningOnly, at }: Protection): KeptProtection {
  return { description, warningOnly, range: at && rangeName(at) };
}

/** A protection of a file put back in its place; none when the place cannot be read. */
export function placedProtection(
  { description, warningOnly, range }: KeptProtection,
  size: { readonly rows: number; readonly columns: number },
): Protection[] {
  if (range === null) return [{ description, warningOnly, at: null }];
  const at = rectangle(range, size);
  return at ? [{ description, warningOnly, at }] : [];
}

/** What is said of a cell that a script asked to be left alone; null for any other. */
export function protectionAt(
  protections: readonly Protection[],
  row: number,
  column: number,
): Protection | null {
  const holds = ({ at }: Protection) =>
    at === null ||
    (row >= at.startRow && row <= at.endRow && column >= at.startColumn && column <= at.endColumn);
  return protections.find(holds) ?? null;
}
