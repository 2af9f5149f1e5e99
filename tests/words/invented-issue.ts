import type { RowIssue } from "../../src/rows/reading";

/** An issue of one code in the cell G2 of Sets, which holds 62. */
export function issue(
  code: string,
  facts: RowIssue["facts"] = {},
  over: Partial<RowIssue> = {},
): RowIssue {
  return {
    table: "Sets",
    code,
    row: 2,
    column: 7,
    cell: "G2",
    found: "62",
    facts,
    dropsRow: false,
    ...over,
  };
}
