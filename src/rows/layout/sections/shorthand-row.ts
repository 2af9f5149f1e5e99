import { isBlank } from "../../value/blank";
import { saysNoValue } from "../../value/no-value";
import { type SpeedList, speedList } from "../../value/speed-list";
import { emitSets } from "../shorthand/emit-sets";
import { orderFromWords, schemeSense } from "../shorthand/scheme-order";
import { setCell } from "../shorthand/set-cell";
import { figuresFor, type SpeedsSaid } from "../shorthand/spread-speeds";
import type { Placed } from "../unfolded";
import type { Walk } from "./above";

/** Sets in shorthand in the scheme or load column; false when the row holds none. */
export function shorthandRow(
  { above, into, tab }: Walk,
  line: readonly unknown[],
  row: number,
  shared: Readonly<Record<string, Placed | undefined>>,
  load: Placed,
): boolean {
  const { scheme } = above.columns;
  const sense = schemeSense(orderFromWords(scheme?.heading), tab.setsFirst);
  const said = setCell(scheme === undefined ? load[0] : line[scheme.index], sense);
  const column = scheme?.index ?? load[1];
  if (said.is === "order-unsettled") {
    into.report("scheme-order-unsettled", row, column);
    return true;
  }
  if (said.is !== "sets" || said.groups[0]?.reps == null) return false;
  const { note, scheme: _, ...rest } = shared;
  const beside = said.speeds.length > 0 ? null : speedsBeside(above, line);
  const speedColumn = beside?.column ?? column;
  const { shorthandSets } = above;
  const place = { row, schemeColumn: column, speedColumn, shared: rest, note, shorthandSets };
  // Of a doubtful bar the load is not known, however it is written.
  const groups = above.barDoubtful
    ? said.groups.map((group) => ({ ...group, load: null }))
    : said.groups;
  const speeds = beside?.list.speeds ?? said.speeds;
  emitSets(into, place, groups, speeds, beside?.said ?? tab.speeds ?? null);
  above.shorthandSets += groups.reduce((sum, { sets }) => sum + sets, 0);
  const heading = above.columns.speed?.heading ?? "";
  for (const piece of beside?.list.unread ?? [])
    into.log.addAtSource("not-a-number", row, speedColumn, { piece, heading });
  for (const piece of beside?.list.unsure ?? [])
    into.log.addAtSource("unsure", row, speedColumn, { piece, heading });
  return true;
}

type SpeedsBeside = {
  readonly list: SpeedList;
  readonly column: number;
  readonly said: SpeedsSaid;
};

/** Speeds in a column of their own beside shorthand, or one repetition a column. */
function speedsBeside(
  { columns: { speed }, reps }: Walk["above"],
  line: readonly unknown[],
): SpeedsBeside | null {
  const stands = ({ index }: { readonly index: number }) =>
    !isBlank(line[index]) && !saysNoValue(String(line[index]));
  if (speed !== undefined && stands(speed)) {
    const list = speedList(String(line[speed.index]));
    return { list, column: speed.index, said: figuresFor(speed.words) };
  }
  let last = reps.length - 1;
  while (last >= 0 && !stands(reps[last]!)) last--;
  if (last < 0) return null;
  // A repetition left out keeps its place.
  const cells = reps.slice(0, last + 1).map((rep) => (stands(rep) ? String(line[rep.index]) : "-"));
  return { list: speedList(cells.join(" / ")), column: reps[0]!.index, said: null };
}
