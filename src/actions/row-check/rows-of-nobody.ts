import { checkNames } from "../../rows/name/check-names";
import type { ReadWorkbook } from "../read-workbook";

/** Rows that were read and count for nobody: their name is not among the athletes. */
export function rowsOfNobody({ rows }: Pick<ReadWorkbook, "rows">): number {
  const { athletes, sets, jumps, diary, runs, availability } = rows;
  if (athletes.length === 0) return 0;
  return [sets, jumps, diary, runs, availability]
    .flatMap((records) => checkNames(records, athletes))
    .reduce((sum, unknown) => sum + unknown.rows, 0);
}
