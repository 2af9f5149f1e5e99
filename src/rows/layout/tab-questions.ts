import type { Cells } from "../cells";
import type { RowIssue } from "../reading";
import { isBlank } from "../value/blank";
import { foundText } from "../value/found-text";
import { type TabAsk, type TabMatter, type TabQuestion, tabChoices } from "./tab-question";

const byCode: Readonly<Record<string, TabMatter>> = {
  "scheme-order-unsettled": "scheme order",
  "speeds-unsettled": "speeds",
  "bar-unsettled": "bar",
  "exercise-missing": "exercise",
  "athlete-missing": "athlete",
  "run-figure-unsettled": "runs",
};
const shown = 3;

/** True for an issue that an answer about its whole tab settles. */
export const asksOfTab = (code: string): boolean => code in byCode;

/**
 * What has to be asked of the whole tab: what its issues leave open and what its cells raise, each
 * matter once, a doubtful bar once for each way it is written.
 */
export function tabQuestions(
  issues: readonly RowIssue[],
  asks: readonly TabAsk[],
  /** First filled cells of the rows, for a matter whose own cell is blank; none: not asked then. */
  rowSamples: readonly string[],
): TabQuestion[] {
  const asked = new Map<string, { question: TabQuestion; samples: string[] }>();
  const ask = (about: TabMatter, said: string, sample: string, guess: string | null) => {
    const key = `${about}|${said}`;
    const found = asked.get(key) ?? {
      question: { about, said, samples: [], guess, choices: choicesOf(about, guess) },
      samples: [],
    };
    asked.set(key, found);
    if (sample !== "" && found.samples.length < shown && !found.samples.includes(sample))
      found.samples.push(sample);
  };
  for (const { about, sample } of asks) ask(about, "", sample, null);
  for (const { code, found, facts } of issues) {
    const field = code === "column-missing" ? facts.field : undefined;
    const about = field === "exercise" || field === "athlete" ? field : byCode[code];
    if (about === undefined) continue;
    const bar = about === "bar";
    const guess = bar && facts.said !== undefined ? `${facts.said} kg` : null;
    const own = about === "exercise" || about === "athlete" ? "" : found;
    ask(about, bar ? found.trim() : "", own, guess);
  }
  return [...asked.values()]
    .map(({ question, samples }) => ({
      ...question,
      samples: samples.length > 0 ? samples : rowSamples,
    }))
    .filter(({ samples }) => samples.length > 0);
}

function choicesOf(about: TabMatter, guess: string | null): readonly string[] {
  return guess === null ? tabChoices[about] : [guess];
}

/** Three rows in a few words, for questions about rows that lack something. */
export function rowSamples(cells: Cells, first: number, end: number): string[] {
  const samples: string[] = [];
  for (let row = first; row < end && samples.length < shown; row++) {
    const filled = cells[row]!.filter((cell) => !isBlank(cell));
    if (filled.length > 1) samples.push(filled.slice(0, 4).map(foundText).join(" · "));
  }
  return samples;
}
