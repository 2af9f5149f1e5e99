import type { ReadWorkbook } from "../read-workbook";

type Issue = ReadWorkbook["issues"][number];

/**
 * What a comment, or an athlete's state of now, is remembered by once it is said to be right as it stands;
 * null of what is to be mended.
 */
export function rightOf({ tab, issue, athlete }: Issue): string | null {
  if (issue.code === "words-alone") return `${tab.name}, ${issue.found}`;
  return issue.code === "state-undated" ? `${tab.name}, ${athlete}: ${issue.found}` : null;
}

/** Cells that could not be used, but for words that were said to be right. */
export const openIssues = ({
  issues,
  answers,
}: Pick<ReadWorkbook, "issues" | "answers">): readonly Issue[] =>
  issues.filter((one) => !answers.rightSets.includes(rightOf(one) ?? ""));
