import type { Understanding } from "../read-table";
import type { TableName } from "../table-name";
import { type FoundTable, toBeAsked } from "./found-table";

/** Tables that are also looked for without a plain header. */
export const wideTables: readonly TableName[] = [
  "Availability",
  "Races",
  "Runs",
  "Diary",
  "Sets",
  "Jumps",
];

/** Tables read from a layout without a plain header; as sure as the share of rows read. */
export function ownLayouts(
  tab: string,
  tables: readonly TableName[],
  read: (table: TableName) => Understanding<TableName>,
): FoundTable[] {
  const found = tables.flatMap((table) => {
    const understanding = read(table);
    const { records, rowsRead, rowsReported } = understanding.reading;
    const own = understanding.layout !== "plain rows" && understanding.layout !== "not recognised";
    if (!own) return [];
    const useful =
      records.filter((record) => !("heightCm" in record) || hasFigure(record)).length /
      Math.max(records.length, 1);
    const share = 0.9 * useful * shareRead({ rowsRead, rowsReported });
    // Jumps are read from any grid of numbers; the others only where it speaks of them.
    const speaks =
      table !== "Jumps" &&
      understanding.reading.issues.every(({ code }) => code !== "exercise-missing");
    const asks =
      understanding.tabQuestions.length > 0 ||
      // What rows that only lack their day, or columns, want is said once the tab counts.
      understanding.reading.issues.some(({ code }) =>
        /^(?:day-missing|figures-in-rows)$/.test(code),
      ) ||
      // A column nobody explains is no row waiting for its answer.
      (speaks && understanding.questions.some(({ about }) => about !== "meaning"));
    // An answer may settle every row at once: such a tab is not passed over.
    // So is one that speaks of availability in words or letters nobody explains.
    const sureness = share < 0.3 && (asks || table === "Availability") ? toBeAsked : share;
    return sureness < 0.27 ? [] : [{ tab, table, sureness, understanding }];
  });
  // Under a header of dates stands one table, not several.
  const grids = found.filter(isGrid);
  // What is more surely another table, as a log of jumps with a column of y and n, is no calendar of races.
  if (grids.length < 2)
    return found.filter(
      ({ table, sureness }) =>
        table !== "Races" || found.every((other) => other.sureness <= sureness),
    );
  // Availability, runs and diary are read from a grid only where it speaks of them; a number is a height or a load as well.
  const spoken = grids.find(({ table }) => /^(?:Availability|Races|Runs|Diary)$/.test(table));
  if (spoken !== undefined) return [spoken];
  return [grids.reduce((best, one) => (one.sureness > best.sureness ? one : best))];
}

/** Share of the rows with something in them that were read, 0–1. */
export function shareRead({
  rowsRead,
  rowsReported,
}: {
  rowsRead: number;
  rowsReported: number;
}): number {
  return rowsRead / Math.max(rowsRead + rowsReported, 1);
}

/** True for a table under a header of dates. */
export const isGrid = ({ understanding }: FoundTable) => understanding.layout === "dates across";

function hasFigure(record: {
  readonly heightCm: number | null;
  readonly stackKg: readonly number[];
  readonly contactS: number | null;
  readonly flightS: number | null;
}): boolean {
  return (
    record.heightCm !== null ||
    record.stackKg.length > 0 ||
    record.contactS !== null ||
    record.flightS !== null
  );
}
