import type { AsWritten } from "../column/as-written";
import type { NumberBounds } from "../column/number-column";
import { plausible } from "../column/quantity";
import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import { mostEffort } from "../value/reserve-in-words";

/** What the counted numbers of a set can be. Bounds outside which a value is rather a slip; common practice, no source. */
export const setBounds = {
  set: { low: 1, high: 60, whole: true },
  rep: { low: 1, high: 100, whole: true },
  reps: { low: 0, high: 100, whole: true },
  reserve: { low: 0, high: 20, rangeLowEnd: true },
  effort: { low: 1, high: mostEffort, rangeHighEnd: true },
} as const satisfies Readonly<Record<string, NumberBounds>>;

/** The number columns of the Sets table, each with the bounds in which a number means itself. */
export type SetNumbers = {
  readonly load: AsWritten | null;
  readonly speed: AsWritten | null;
  readonly repSpeeds: readonly AsWritten[];
  readonly bar: AsWritten | null;
  /** Every column of a number that may be left blank, but for the speeds. */
  readonly others: readonly AsWritten[];
};

/** The bounds before any cell is read: the readers shut those of columns in another unit. */
export function setNumbers({ fields, repColumns }: TableView): SetNumbers {
  const bar = asWritten(fields.bar, plausible.barKg);
  const others = [
    asWritten(fields.set, setBounds.set),
    asWritten(fields.reps, setBounds.reps),
    asWritten(fields.reserve, setBounds.reserve),
    asWritten(fields.effort, setBounds.effort),
    bar,
  ];
  return {
    load: asWritten(fields.load, plausible.loadKg),
    speed: asWritten(fields.speed, plausible.speed),
    repSpeeds: repColumns.map((column) => asWritten(column, plausible.speed)!),
    bar,
    others: others.filter((one) => one !== null),
  };
}

function asWritten(column: Column | undefined, bounds: NumberBounds): AsWritten | null {
  if (column === undefined) return null;
  const { low, high, whole = false } = bounds;
  return { index: column.index, low, high, whole };
}
