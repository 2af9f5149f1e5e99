const marks = new Set(
  `"|""|''|”|“|″|〃|do.|dto|dto.|detto|idem|ditto|as above|same|same as above|wie oben|dito|s.o.|^`.split(
    "|",
  ),
);

/** True for a mark that repeats the cell above (or, across a wide row, the cell to the left). */
export function isDitto(cell: unknown): boolean {
  return typeof cell === "string" && marks.has(cell.trim().toLowerCase());
}
