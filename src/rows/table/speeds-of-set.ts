import { plausible } from "../column/quantity";
import { quantityColumn } from "../column/quantity-column";
import { speedColumn } from "../column/speed-column";
import type { CellReader, TableView } from "../table-view";
import type { SetNumbers } from "./set-numbers";

export type SpeedsOfSet = {
  readonly repSpeeds: readonly (number | null)[];
  /** The set's one speed, where no repetition's was kept. */
  readonly single: number | null;
};

/** Reader of a set's speeds: each in a column of its own, or all in one. Reports `speeds-twice`. */
export function speedsOfSet(view: TableView, numbers: SetNumbers): CellReader<SpeedsOfSet> {
  const { speed } = view.fields;
  const inOne = speedColumn(view, speed, numbers.speed);
  const apartReaders = view.repColumns.map((column, rep) =>
    quantityColumn(view, column, plausible.speed, null, false, numbers.repSpeeds[rep]),
  );
  return (line, row) => {
    const { reps, single } = inOne(line, row);
    const apart = upToLastRead(apartReaders.map((rep) => rep(line, row)));
    const twice = apart.length > 0 && reps.length > 0 && `${apart}` !== `${reps}`;
    if (twice) view.log.add("speeds-twice", row, speed!.index, line[speed!.index]);
    const repSpeeds = twice ? [] : apart.length > 0 ? apart : reps;
    return { repSpeeds, single: repSpeeds.length > 0 ? null : single };
  };
}

function upToLastRead(speeds: readonly (number | null)[]): readonly (number | null)[] {
  let end = speeds.length;
  while (end > 0 && speeds[end - 1] === null) end--;
  return speeds.slice(0, end);
}
