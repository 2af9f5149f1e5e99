import { neededFields } from "../header/columns";
import { likelyAthlete } from "../layout/tab-athlete";
import type { TabQuestion } from "../layout/tab-question";
import { rowSamples, tabQuestions } from "../layout/tab-questions";
import type { Reading } from "../reading";
import { unread } from "../table/unread";
import type { LieOfRange } from "./lie-of-range";

type Unrecognised = {
  readonly reading: Reading<never>;
  readonly tabQuestions: readonly TabQuestion[];
};

/**
 * A range that no layout fits: no row is read, what is missing is reported, and the coach is asked
 * what would hold for the whole tab.
 */
export function unrecognised({ context, found, missing, log }: LieOfRange): Unrecognised {
  const { table, cells, end, title } = context;
  if (end > 0) {
    if (found === null)
      log.add("no-header", 0, -1, cells[0]![0], { needed: neededFields[table].join(", ") }, true);
    else for (const field of missing) log.add("column-missing", found.row, -1, "", { field }, true);
  }
  const reading = unread(log, cells, found?.row ?? -1);
  const samples = rowSamples(cells, found?.first ?? 0, end);
  const questions = tabQuestions(reading.issues, [], samples).map((question) =>
    question.about === "athlete" ? { ...question, guess: likelyAthlete(title) } : question,
  );
  return { reading, tabQuestions: questions };
}
