import type { Understanding } from "../read-table";
import type { TableName } from "../table-name";

/** Whether most columns of masses are in pounds. */
export function mostlyPounds(columns: Understanding<TableName>["columns"]): boolean {
  const masses = columns.filter(
    ({ field, unit }) => (field === "mass" || field === "load") && unit !== null,
  );
  return 2 * masses.filter(({ unit }) => unit === "lb").length > masses.length;
}
