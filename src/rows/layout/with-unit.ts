import type { Unit } from "../value/units";

/** A cell with the unit its heading names written beside the number; words and dates stay as they are. */
export function withUnit(cell: unknown, unit: Unit | null): unknown {
  if (unit === null) return cell;
  const bare = /^\s*[\d.,]+\s*$/.test(String(cell));
  return bare ? `${String(cell).trim()} ${unit.name}` : cell;
}
