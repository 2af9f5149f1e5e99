import type { RowProblem } from "../actions/messages";

/** So many of one kind in one column are one thing to look at, not as many. */
const many = 6;

/** Problems of one kind in one column of a tab; the first stands for all of them where they are many. */
export type LikeProblems = {
  readonly column: string;
  readonly first: RowProblem;
  /** The others, when they are too many to be listed one by one. */
  readonly more: readonly RowProblem[];
};

/** The problems in their order, those of one kind in one column gathered at the first once they are many. */
export function likeProblems(problems: readonly RowProblem[]): readonly LikeProblems[] {
  const columnOf = ({ cell }: RowProblem) => cell.replace(/\d+$/, "");
  const groups = new Map<string, RowProblem[]>();
  for (const problem of problems) {
    const key = `${problem.tabId}|${columnOf(problem)}|${problem.kind}`;
    const like = groups.get(key);
    if (like) like.push(problem);
    else groups.set(key, [problem]);
  }
  const gathered = [...groups.values()].flatMap((like) =>
    like.length < many
      ? like.map((first) => ({ first, more: [] }))
      : [{ first: like[0]!, more: like.slice(1) }],
  );
  const order = new Map(problems.map((problem, at) => [problem, at]));
  return gathered
    .map((one) => ({ ...one, column: columnOf(one.first) }))
    .sort((a, b) => order.get(a.first)! - order.get(b.first)!);
}
