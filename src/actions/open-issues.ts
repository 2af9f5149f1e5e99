import type { ReadWorkbook } from "./read-workbook";

type Issue = ReadWorkbook["issues"][number];

/** What a comment is remembered by once it is said to be right as it stands; null of what is to be mended. */
export const rightOf = ({ tab, issue }: Issue): string | null =>
  issue.code === "words-alone" ? `${tab.name}, ${issue.found}` : null;

/** Cells that could not be used, but for comments that were said to be right. */
export const openIssues = ({
  issues,
  answers,
}: Pick<ReadWorkbook, "issues" | "answers">): readonly Issue[] =>
  issues.filter((one) => !answers.rightSets.includes(rightOf(one) ?? ""));
