import type { Cells } from "../cells";
import { isBlank } from "../value/blank";
import { dayOfCell } from "../value/day-of-cell";
import { foundText } from "../value/found-text";
import { isDate } from "../value/is-date";
import { numberFromText } from "../value/number-text";
import { speedList } from "../value/speed-list";
import { yesNo } from "../value/yes-no";

const rowsSampled = 200;

/** Up to 200 filled cells of a column, from the first data row on. */
export function sampleColumn(cells: Cells, first: number, end: number, index: number): unknown[] {
  const sample: unknown[] = [];
  for (
    let row = first;
    row < end && sample.length < rowsSampled && row < first + 5 * rowsSampled;
    row++
  ) {
    const cell = cells[row]?.[index];
    if (!isBlank(cell) && cell !== false) sample.push(cell);
  }
  return sample;
}

/** The values of a column that nothing names yet: as sampled, or the first of all, however late it begins. */
export function anyOfColumn(cells: Cells, first: number, end: number, index: number): unknown[] {
  const sample = sampleColumn(cells, first, end, index);
  for (let row = first; row < end && sample.length === 0; row++) {
    const cell = cells[row]?.[index];
    if (!isBlank(cell) && cell !== false) sample.push(cell);
  }
  return sample;
}

/** Three different values of a column, as a coach would recognise it. */
export function threeSamples(sample: readonly unknown[]): string[] {
  const found = new Set<string>();
  for (const cell of sample) if (found.add(foundText(cell)).size === 3) break;
  return [...found];
}

const numberOf = (cell: unknown): number => {
  if (typeof cell === "number") return cell;
  return typeof cell === "string" ? (numberFromText(cell)?.value ?? Number.NaN) : Number.NaN;
};
const between = (low: number, high: number) => (cell: unknown) =>
  numberOf(cell) >= low && numberOf(cell) <= high;
const whole = (high: number) => (cell: unknown) =>
  Number.isInteger(numberOf(cell)) && numberOf(cell) >= 1 && numberOf(cell) <= high;
const words = (cell: unknown) =>
  typeof cell === "string" && /\p{L}{2}/u.test(cell) && dayOfCell(cell) === null;
const day = (cell: unknown) => isDate(cell) || dayOfCell(cell) !== null;

/** What a value of each meaning looks like; meanings not listed take anything. */
const looks: Readonly<Record<string, (cell: unknown) => boolean>> = {
  day,
  from: day,
  until: day,
  athlete: words,
  exercise: words,
  test: words,
  race: words,
  load: between(15, 200),
  speed: (cell) => {
    if (typeof cell !== "string") return between(0.2, 1.7)(cell) && !Number.isInteger(cell);
    const { speeds } = speedList(cell);
    return (
      speeds.length > 0 && speeds.every((speed) => speed !== null && speed > 0.1 && speed < 2.5)
    );
  },
  set: whole(12),
  reps: whole(20),
  height: between(10, 90),
  contact: (cell) => between(0.12, 0.4)(cell) || between(120, 400)(cell),
  flight: (cell) => between(0.3, 0.75)(cell) || between(300, 750)(cell),
  movedWell: (cell) => yesNo(cell) !== null,
  sleepH: between(3, 12),
};

/** Share of a sample that looks like the meaning, 0–1; 1 for meanings that take anything. */
export function valueFit(field: string, sample: readonly unknown[]): number {
  const look = looks[field];
  if (look === undefined || sample.length === 0) return 1;
  // The same words stand down a column: each is looked at once.
  const seen = new Map<unknown, boolean>();
  let fitting = 0;
  for (const cell of sample) {
    const fits = seen.get(cell) ?? look(cell);
    seen.set(cell, fits);
    if (fits) fitting++;
  }
  return fitting / sample.length;
}

/** The meaning whose look fits a sample best, and how well; null when nothing fits nine in ten. */
export function bestFit(
  fields: readonly string[],
  sample: readonly unknown[],
): { field: string; fit: number } | null {
  let best: { field: string; fit: number } | null = null;
  for (const field of fields) {
    if (looks[field] === undefined) continue;
    const fit = valueFit(field, sample);
    if (sample.length >= 3 && fit >= 0.9 && fit > (best?.fit ?? 0)) best = { field, fit };
  }
  return best;
}
