import { grouped } from "../../coaching/series/grouped";
import type { RowIssue } from "../../rows/reading";

/** Of what is wrong in one row of a tab the first thing alone. */
export const onceARow = <
  Found extends { readonly tab: { readonly name: string }; readonly issue: RowIssue },
>(
  found: readonly Found[],
): readonly Found[] =>
  [...grouped(found, ({ tab, issue }) => `${issue.row} ${tab.name}`).values()].map(
    ([first]) => first!,
  );
