import { hasHeadings } from "../../rows/header/has-headings";
import { rowCheckColumns } from "../../words/row-check-columns";
import { isOwnTab } from "../read-tab";
import type { ReadWorkbook } from "../read-workbook";

/** Tabs no table was found in, but for our own, those with a row check, and those said to be none. */
export function leftAlone({ otherTabs, answers, cells }: ReadWorkbook): string[] {
  return otherTabs.flatMap(({ id, name }) =>
    answers.tables.has(id) || isOwnTab(name) || hasHeadings(cells(id), rowCheckColumns)
      ? []
      : [name],
  );
}
