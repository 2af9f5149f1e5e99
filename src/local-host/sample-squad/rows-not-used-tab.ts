import { rowCheckColumns } from "../../words/row-check-columns";
import type { SampleTable } from "./table";

/** Cells of the Sets table that could not be used, in a tab of its own where the sentences have room. */
export function rowsNotUsedTab(): SampleTable {
  return {
    name: "Rows not used",
    rows: [
      ["Rows of Sets with a cell not used. Rows in the sidebar lists those of every table."],
      [...rowCheckColumns],
      ['=ROW_CHECK(Sets!A:Q, "Sets", Athletes!A:J)'],
    ],
  };
}
