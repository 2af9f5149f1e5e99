import { squadView } from "../../../src/actions/squad-view";
import { readDayArgument } from "../../../src/rows/argument/day-argument";
import { memoryWorkbook } from "../../actions/memory-workbook";
import { setRows } from "./set-rows";

/** A call from a formula may take 30 s, one from the sidebar 6 min. */
const limits = { formula: 30_000, sidebar: 360_000 } as const;

/** The sidebar's squad view over so many rows, and how often it would fit into one call's limits. */
export function squadViewTime(count: number): string {
  const { cells, athletes, asOf } = setRows(count);
  const today = readDayArgument(asOf);
  if (!today.ok) throw new Error(today.refusal.code);
  const small = memoryWorkbook({
    Athletes: [["athlete", "group"], ...athletes.map((name) => [name, "all"])],
    Sets: cells.slice(0, 2),
  });
  const { id } = small.tabNamed("Sets");
  const workbook = { ...small, values: (tab: number) => (tab === id ? cells : small.values(tab)) };
  const started = performance.now();
  const { lines } = squadView(workbook, today.value);
  const ms = performance.now() - started;
  return `The sidebar's squad view: ${lines.length} athletes, ${count} rows in ${(ms / 1000).toFixed(1)} s: 30 s hold it ${(limits.formula / ms).toFixed(1)} times, 6 min ${(limits.sidebar / ms).toFixed(1)} times`;
}
