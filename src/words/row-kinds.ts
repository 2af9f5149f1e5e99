import type { RowIssueCode } from "./row-issues";

/** A kind of problem in a few words, by code; like kinds share their words. */
const rowKinds = {
  "no-header": "no header row",
  "column-missing": "column missing",
  "needed-blank": "blank where needed",
  "load-blank": "load missing",
  "cell-error": "cell without result",
  "boxes-open": "done or planned?",
  "words-alone": "words alone in a row",
  "not-a-day": "date unreadable",
  "day-is-number": "date shown as a number",
  "day-implausible": "year hardly possible",
  "date-order-unsettled": "day or month first?",
  "year-missing": "year missing",
  "not-a-number": "no number",
  "date-in-number": "number turned into a date",
  implausible: "figure hardly possible",
  unsure: "figure in doubt",
  "comma-unsettled": "comma in doubt",
  "wrong-unit": "another unit",
  "unit-unsettled": "unit in doubt",
  "not-whole": "no whole number",
  "word-unknown": "word not known",
  "state-undated": "no day beside it",
  "not-yes-or-no": "neither yes nor no",
  "not-a-time": "time unreadable",
  "length-unsettled": "length of time in doubt",
  "distance-unsettled": "distance in doubt",
  "doubled-row": "row typed twice",
  "athlete-twice": "athlete listed twice",
  "name-letters": "name in doubt",
  "unknown-athlete": "name not among the athletes",
  "not-a-birth-year": "birth year unreadable",
  "supervisor-day": "supervisor's day unreadable",
  "ends-before-start": "ends before it starts",
  "no-figure": "test without a result",
  "stack-unreadable": "stack unreadable",
  "stack-count": "stack hardly possible",
  "athlete-missing": "athlete missing",
  "day-missing": "date missing",
  "exercise-missing": "exercise missing",
  "row-unread": "row without a header",
  "figures-in-rows": "one figure in a row",
  "bar-unsettled": "bar in doubt",
  "scheme-unread": "sets and repetitions unreadable",
  "scheme-order-unsettled": "sets or repetitions first?",
  "speeds-unsettled": "speeds a set or a repetition?",
  "meaning-twice": "figure typed twice",
  "heading-unknown": "heading not known",
  "figures-unread": "heading not known",
  "diary-question-missing": "question missing",
  "speeds-too-many": "too many speeds",
  "speeds-twice": "speeds typed twice",
  "run-figure-unsettled": "minutes or kilometres?",
  "run-figure-beside": "minutes or kilometres?",
  "run-unread": "run unreadable",
  "race-without-runner": "race without a runner",
  "nothing-to-repeat": "nothing to repeat",
  "copied-from-near-name": "copied from a near name",
  "jump-unread": "jump unreadable",
  "day-questioned": "odd day",
  "weekday-questioned": "odd day",
  "plate-twice": "plate listed twice",
  "rule-unknown": "rule not known",
  "rule-twice": "rule set twice",
  "rule-out-of-bounds": "rule out of bounds",
  "set-far-off": "far off all others",
  "lift-near": "name in doubt",
  "table-to-confirm": "table in doubt",
} as const satisfies Readonly<
  Record<RowIssueCode | "set-far-off" | "lift-near" | "table-to-confirm", string>
>;

/** Words of a code's kind. Throws for a code that is none: that is our own mistake. */
export function kindWords(code: string): string {
  const found = Object.entries(rowKinds).find(([known]) => known === code);
  if (!found) throw new Error(`no kind for the row issue ${code}`);
  return found[1];
}

/** How many problems there are of each kind, the most common first; a name not listed is one. */
export function kindCounts({
  problems,
  names,
}: {
  readonly problems: readonly { readonly kind: string }[];
  readonly names: readonly unknown[];
}): { readonly kind: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const code of [...problems.map(({ kind }) => kind), ...names.map(() => "unknown-athlete")])
    counts.set(kindWords(code), (counts.get(kindWords(code)) ?? 0) + 1);
  return [...counts]
    .map(([kind, count]) => ({ kind, count }))
    .sort((a, b) => b.count - a.count || a.kind.localeCompare(b.kind));
}
