import { accept, type Outcome, refuse } from "../../outcome";
import { foundText } from "../../rows/value/found-text";
import { speedList } from "../../rows/value/speed-list";
import { isBlank } from "./elementwise";

/** A bar moved by a person stays under this, m/s; more is a misplaced decimal point. */
const fastest = 4;

/**
 * A set's speeds from a row of cells, each with one speed or a list "0.62 0.60 0.57"; blank cells
 * after the last one are no repetitions.
 *
 * Refuses `argument-blank`, `speeds-unreadable`, `speed-missing` (a gap between repetitions) and
 * `speed-implausible`.
 */
export function speedsFromCells(row: readonly unknown[]): Outcome<readonly number[]> {
  let end = row.length;
  while (end > 0 && isBlank(row[end - 1])) end--;
  if (end === 0) return refuse("argument-blank", { name: "speeds" });
  const speeds: number[] = [];
  for (let at = 0; at < end; at++) {
    const cell = row[at];
    if (typeof cell === "number" && Number.isFinite(cell)) {
      speeds.push(cell);
      continue;
    }
    if (isBlank(cell)) return refuse("speed-missing", { rep: speeds.length + 1 });
    const found = foundText(cell);
    const list = typeof cell === "string" ? speedList(cell) : null;
    if (!list || list.unread.length > 0 || list.unsure.length > 0 || list.speeds.length === 0) {
      return refuse("speeds-unreadable", { found });
    }
    for (const speed of list.speeds) {
      if (speed === null) return refuse("speed-missing", { rep: speeds.length + 1 });
      speeds.push(speed);
    }
  }
  const wrong = speeds.findIndex((speed) => speed > fastest);
  if (wrong >= 0) return refuse("speed-implausible", { rep: wrong + 1, speed: speeds[wrong]! });
  return accept(speeds);
}
