import { isOwnTab, type ReadWorkbook } from "./read-workbook";

/** Tabs no table was found in, but for our own and those said to be none. */
export function leftAlone({ otherTabs, answers }: ReadWorkbook): string[] {
  return otherTabs.flatMap(({ id, name }) =>
    answers.tables.has(id) || isOwnTab(name) ? [] : [name],
  );
}
