import { type Unit, unitOf } from "../../value/units";
import type { SchemeSense } from "./scheme-order";

/** Equal sets written together: "85x3x5" is one group of three sets. */
export type SetGroup = {
  /** As written, in `unit`; null when the cell gives none. */
  readonly load: number | null;
  readonly unit: Unit | null;
  readonly reps: number | null;
  readonly sets: number;
};

/** From this on a number in a scheme is a load, not a count. */
export const leastLoad = 16;
const mostSets = 12;

/** "105x5x4+1x3" to groups; "unsettled" when sets and repetitions could be either. */
export function schemeGroups(
  text: string,
  sense: SchemeSense,
  speedCount: number,
): SetGroup[] | "unsettled" | null {
  const [head, ...rest] = text.split("+");
  let unit: Unit | null = null;
  const numbers = head!.split("x").map((piece) => {
    const parts = /^(\d+(?:[.,]\d+)?|[.,]\d+)(kg|lbs?)?$/.exec(piece);
    if (parts === null) return Number.NaN;
    unit = unitOf(parts[2]) ?? unit;
    return Number(parts[1]!.replace(",", "."));
  });
  if (numbers.some(Number.isNaN)) return null;
  const first =
    numbers.length === 3
      ? triple(numbers, sense, rest.length === 0 ? speedCount : 0)
      : pair(numbers, sense);
  if (first === null || first === "unsettled") return first;
  const groups: SetGroup[] = [{ ...first, unit }];
  for (const piece of rest) {
    // What is added is written as sets × repetitions, the way blocks are spoken of.
    const more = /^(\d{1,2})x(\d{1,2})$/.exec(piece);
    if (more === null) return null;
    const added = { sets: Number(more[1]), reps: Number(more[2]) };
    const swapped = speedCount === first.sets + added.reps;
    const { sets, reps } = swapped ? { sets: added.reps, reps: added.sets } : added;
    if (sets < 1 || sets > mostSets) return null;
    groups.push({ load: first.load, unit, reps, sets });
  }
  return groups;
}

type Counted = { load: number | null; reps: number | null; sets: number };

function triple(
  numbers: readonly number[],
  { order, setsFirst }: SchemeSense,
  speedCount: number,
): Counted | "unsettled" | null {
  const [a = 0, b = 0, c = 0] = numbers;
  if (order !== null) {
    const said = { load: 0, sets: 0, reps: 0 };
    order.forEach((name, at) => {
      said[name] = numbers[at]!;
    });
    return counted(said.load, said.sets, said.reps);
  }
  const loads = numbers.filter((number) => number >= leastLoad || !Number.isInteger(number));
  if (loads.length !== 1) return null;
  const load = loads[0]!;
  const [x = 0, y = 0] = a === load ? [b, c] : b === load ? [a, c] : [a, b];
  if (setsFirst !== null) return setsFirst ? counted(load, x, y) : counted(load, y, x);
  if (x === y || (speedCount === x && speedCount > 1)) return counted(load, x, y);
  if (speedCount === y && speedCount > 1) return counted(load, y, x);
  return "unsettled";
}

function pair(numbers: readonly number[], { setsFirst }: SchemeSense): Counted | null {
  const [a = 0, b = 0] = numbers;
  if (numbers.length !== 2) return null;
  if (a >= leastLoad && b < leastLoad) return counted(a, 1, b);
  if (b >= leastLoad && a < leastLoad) return counted(b, 1, a);
  // Without a word on it, the way blocks are spoken of: 5×3 is five sets of three.
  const blocks = setsFirst === false ? counted(0, b, a) : counted(0, a, b);
  return blocks === null ? null : { ...blocks, load: null };
}

function counted(load: number, sets: number, reps: number): Counted | null {
  if (
    !Number.isInteger(sets) ||
    !Number.isInteger(reps) ||
    sets < 1 ||
    sets > mostSets ||
    reps < 1 ||
    reps > 60
  )
    return null;
  return { load, sets, reps };
}
