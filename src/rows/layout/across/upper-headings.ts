import { longestHeading } from "../../header/header-words";
import { isBlank } from "../../value/blank";
import { dayOfCell } from "../../value/day-of-cell";
import { type HeadingParts, headingParts } from "./heading-parts";

/** Words, or a number of a set. */
export function isHeading(cell: unknown): boolean {
  if (isBlank(cell)) return true;
  if (typeof cell === "number") return Number.isInteger(cell) && cell >= 1 && cell <= 20;
  return (
    typeof cell === "string" &&
    cell.length <= longestHeading &&
    (/^\s*\d{1,2}\s*$/.test(cell) || (/\p{L}/u.test(cell) && !/\d\s*[x×]\s*\d/i.test(cell))) &&
    !startsWithFigure(cell) &&
    dayOfCell(cell) === null
  );
}

/** "85 kg" and "0.62 m/s" are loads and speeds; "1 kg" may head the first set's. */
function startsWithFigure(cell: string): boolean {
  const figure = /^\s*(\d*[.,]?\d+)/.exec(cell)?.[1];
  return figure !== undefined && !(Number(figure) <= 20 && /^\d+$/.test(figure));
}

/** A row of headings above, carried right as under merged cells over `width` columns; null when it is none. */
export function upperHeadings(
  line: readonly unknown[],
  left: number,
  width: number,
): HeadingParts[] | null {
  const filled = [...line.entries()].filter(([at, cell]) => at >= left && !isBlank(cell));
  const numbers = filled.filter(([, cell]) => typeof cell === "number");
  const counted = numbers.every(([, cell], at) => cell === at + 1);
  if (filled.length === 0 || !counted || !filled.every(([, cell]) => isHeading(cell))) return null;
  let carried: unknown = "";
  return Array.from({ length: width }, (_, at) => {
    const cell = line[at];
    if (at < left) return headingParts(cell, at);
    if (!isBlank(cell)) carried = cell;
    return headingParts(carried, at);
  });
}

/** A heading with the one above it; beside the figures the upper one only fills in. */
export function under(own: HeadingParts, upper: HeadingParts): HeadingParts {
  const { column } = own;
  const unit = column.unit ?? upper.column.unit;
  // Numbers alone under speeds are repetitions, as under any other heading of speeds.
  if (upper.field === "speed" && upper.set === "" && /^\d+$/.test(column.heading))
    return { ...upper, field: `rep ${own.set}`, column: { ...upper.column, index: column.index } };
  // "Sets" over 1, 2, 3 counts none of them.
  const above = /^set(?:Count)?$/.test(upper.field ?? "") ? null : upper.field;
  return {
    field: own.field ?? above,
    set: own.set || upper.set,
    label: [upper.label, own.label].filter(Boolean).join(" "),
    column:
      own.field === null ? { ...upper.column, unit, index: column.index } : { ...column, unit },
  };
}
