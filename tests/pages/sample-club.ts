import { tableNames } from "../../src/rows/table-name";
import type { MemoryWorkbook } from "../actions/memory-workbook";
import { sampleClub as actionsClub, sampleCells } from "../actions/sample-club";

/** The invented club's sample tables in memory; tabs given replace the sample's. */
export function sampleClub(
  instead: Readonly<Record<string, (sample: unknown[][]) => unknown[][]>> = {},
): MemoryWorkbook {
  const changed = tableNames.flatMap((name) => {
    const change = instead[name];
    return change ? [[name, change(sampleCells(name))] as const] : [];
  });
  return actionsClub(Object.fromEntries(changed));
}
