import type { RowProblem } from "../actions/messages";
import type { RowIssueCode } from "../words/row-issues";

/** So many of one kind in one column are one thing to look at, not as many. */
const many = 6;

/** Kinds that say nothing of a heading, however often they stand under it: their cells are read as it says. */
const underRightHeading: ReadonlySet<string> = new Set<RowIssueCode | "set-far-off" | "lift-near">([
  "doubled-row",
  "athlete-twice",
  "plate-twice",
  "rule-twice",
  "meaning-twice",
  "speeds-twice",
  "cell-error",
  "nothing-to-repeat",
  "copied-from-near-name",
  "year-missing",
  "day-questioned",
  "weekday-questioned",
  "ends-before-start",
  "no-figure",
  "row-unread",
  "race-without-runner",
  "words-alone",
  "state-undated",
  "set-far-off",
  "lift-near",
]);

/** Problems of one kind in one column of a tab; the first stands for all of them where they are many. */
export type LikeProblems = {
  readonly column: string;
  /** Whether a wrong heading could be why they are many. */
  readonly headingInDoubt: boolean;
  readonly first: RowProblem;
  /** The others, when they are too many to be listed one by one. */
  readonly more: readonly RowProblem[];
};

const columnOf = ({ cell }: RowProblem) => cell.replace(/\d+$/, "");
const keyOf = (problem: RowProblem) => `${problem.tabId}|${columnOf(problem)}|${problem.kind}`;

/** The problems in their order, those of one kind in one column gathered at the first once they are many. */
export function likeProblems(problems: readonly RowProblem[]): readonly LikeProblems[] {
  const groups = new Map<string, RowProblem[]>();
  for (const problem of problems)
    groups.set(keyOf(problem), [...(groups.get(keyOf(problem)) ?? []), problem]);
  return problems.flatMap((problem) => {
    const like = groups.get(keyOf(problem))!;
    const gather = like.length >= many;
    if (gather && like[0] !== problem) return [];
    return [
      {
        column: columnOf(problem),
        headingInDoubt: gather && !underRightHeading.has(problem.kind),
        first: problem,
        more: gather ? like.slice(1) : [],
      },
    ];
  });
}
