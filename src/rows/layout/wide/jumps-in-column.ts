import { isBlank } from "../../value/blank";
import type { Placed } from "../flat-rows";
import type { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { jumpCell } from "./jump-cell";
import { jumpTitle } from "./jump-title";
import type { TestColumn, Who } from "./test-column";

/** Reads a cell under a test's name into the jumps of its row, by test and try. */
export function jumpsInColumn(
  into: Unfolded,
  row: number,
  line: readonly unknown[],
  { index, test, part, unit, attempt: tryAt }: TestColumn,
  shared: Readonly<Record<string, Placed | undefined>>,
  groups: Map<string, Record<string, Placed | undefined>>,
  { athlete, day }: Who,
): void {
  const said = jumpCell(line[index], [part]);
  const { dropCm } = jumpTitle(test);
  const ofHeading: Record<string, Placed> = {
    ...(test !== "" && { test: [test, index] as Placed }),
    ...(dropCm !== null && isBlank(shared.drop?.[0]) && { drop: [dropCm, index] as Placed }),
  };
  if (said.problem !== null)
    into.log.addAtSource(
      said.problem,
      row,
      index,
      said.problem === "unsure" ? { mend: String(line[index]).replace(/[?\s]/g, "") } : {},
    );
  into.note(row, index, athlete, day, "day", said.note);
  said.attempts.forEach((attempt, first) => {
    // The same figure once more is another jump.
    let at = tryAt + first;
    const taken = (figure: string) => groups.get(`${test}|${at}`)?.[figure] !== undefined;
    while (Object.keys(attempt).some(taken)) at++;
    const key = `${test}|${at}`;
    const flat = groups.get(key) ?? { ...shared, ...ofHeading };
    groups.set(key, flat);
    // Each column has its own unit: inches here, centimetres in the next; plates have none.
    for (const [figure, value] of Object.entries(attempt))
      flat[figure] = [figure === "stack" ? value : withUnit(value, unit), index];
  });
}
