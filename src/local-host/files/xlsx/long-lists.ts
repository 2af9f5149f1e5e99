import type { WorkbookData } from "../../workbook-data";
import { fitsInline } from "./lists";

/** In the first column of what the add-on remembers: a value of a list too long to stand with its cells. */
export const listKey = "=list";

/** Where each such list stands in that tab, by `keyOf` its values: its first row, from 1. */
export type LongLists = ReadonlyMap<
  string,
  { readonly row: number; readonly values: readonly string[] }
>;

export const keyOf = (values: readonly string[]) => JSON.stringify(values);

/**
 * Lists that a file has no room for beside their cells: more than 255 signs, or a comma in a value
 * (ECMA-376 part 1, 18.3.1.33). They stand at the top of the tab that no program shows.
 */
export function longLists({ tabs }: WorkbookData): LongLists {
  const lists = new Map<string, { row: number; values: readonly string[] }>();
  let row = 1;
  for (const { values } of tabs.flatMap(({ validations }) => validations)) {
    if (values.length === 0 || fitsInline(values) || lists.has(keyOf(values))) continue;
    lists.set(keyOf(values), { row, values });
    row += values.length;
  }
  return lists;
}
