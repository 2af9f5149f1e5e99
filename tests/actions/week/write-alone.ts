import { putWeek } from "../../../src/actions/week/write-week";
import type { Workbook } from "../../../src/actions/workbook";

/** Writes a week into the `Next week` tab as the request does, one coach at a time. */
export const writeWeek = (workbook: Workbook, week: Parameters<typeof putWeek>[1]) =>
  workbook.alone(() => putWeek(workbook, week));
