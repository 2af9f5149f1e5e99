import { type Understanding, understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { today } from "../layouts/short";

/** What a row of each table needs besides the column tried: headings, and its cells on a given day. */
const needed = {
  Sets: [["Date", "Athlete", "Exercise"], (day: unknown) => [day, "Ilka", "squat"]],
  Jumps: [["Date", "Athlete", "Test"], (day: unknown) => [day, "Ilka", "box jump"]],
  Runs: [["Date", "Athlete"], (day: unknown) => [day, "Ilka"]],
  Diary: [["Date", "Athlete"], (day: unknown) => [day, "Ilka"]],
} as const;

/**
 * A table of one column to be tried, a row a cell, each on a day of its own in May 2026. Sets carry a
 * load of 65 kg, unless the column itself is the load.
 */
export function oneColumn<T extends keyof typeof needed & TableName>(
  table: T,
  heading: string,
  cells: readonly unknown[],
): Understanding<T> {
  const [headings, row] = needed[table];
  const loaded = table === "Sets" && !/load|weight/i.test(heading);
  return understandTable(
    table,
    [
      [...headings, heading, ...(loaded ? ["Load (kg)"] : [])],
      ...cells.map((cell, at) => [
        ...row(`2026-05-${String(at + 1).padStart(2, "0")}`),
        cell,
        ...(loaded ? [65] : []),
      ]),
    ],
    { today },
  );
}

/** Row and code of each issue, with the mend where one is proposed. */
export const told = ({ reading }: Pick<Understanding<TableName>, "reading">): string[] =>
  reading.issues.map(({ row, code, facts }) =>
    [row, code, ...(facts.mend === undefined ? [] : [facts.mend])].join(" "),
  );
