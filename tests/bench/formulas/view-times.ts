import { squadView } from "../../../src/actions/squad/squad-view";
import { weekView } from "../../../src/actions/week/week-view";
import { readDayArgument } from "../../../src/rows/argument/day-argument";
import { memoryWorkbook } from "../../actions/memory-workbook";
import { setRows } from "./set-rows";

/** A call from a formula may take 30 s, one from the sidebar 6 min. */
const limits = { formula: 30_000, sidebar: 360_000 } as const;

/** The sidebar's squad view and next week over so many rows, and how often they would fit into one call's limits. */
export function viewTimes(count: number): string {
  const { cells, athletes, asOf } = setRows(count);
  const today = readDayArgument(asOf);
  if (!today.ok) throw new Error(today.refusal.code);
  const small = memoryWorkbook({
    Athletes: [["athlete", "group"], ...athletes.map((name) => [name, "all"])],
    Sets: cells.slice(0, 2),
  });
  const { id } = small.tabNamed("Sets");
  const workbook = { ...small, values: (tab: number) => (tab === id ? cells : small.values(tab)) };
  const told = (view: string, lines: () => readonly unknown[]) => {
    const started = performance.now();
    const { length } = lines();
    const ms = performance.now() - started;
    return `The sidebar's ${view}: ${length} athletes, ${count} rows in ${(ms / 1000).toFixed(1)} s: 30 s hold it ${(limits.formula / ms).toFixed(1)} times, 6 min ${(limits.sidebar / ms).toFixed(1)} times`;
  };
  return [
    told("squad view", () => squadView(workbook, today.value).lines),
    told("next week", () => weekView(workbook, today.value, null, []).lines),
  ].join("\n");
}
