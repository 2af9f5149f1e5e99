import { answerWords } from "../../words/set-up";
import type { Workbook } from "../workbook";
import { columnPlace, headingPlace } from "./column-place";
import { changeAnswers, replaced, type StoredColumnAnswer } from "./stored-answers";

/**
 * Remembers what a column means, in what unit, or how its dates are written, and tags the column.
 * Throws a sentence when the heading shown is no longer in the tab.
 */
export function answerColumn(
  workbook: Workbook,
  tabId: number,
  { heading, column, ...said }: Omit<StoredColumnAnswer, "tag">,
): void {
  changeAnswers(workbook, ({ columns, tagsGiven }) => {
    const cells = workbook.values(tabId);
    const tagged = workbook.taggedColumns(tabId);
    const at = heading === "" ? column : headingPlace(heading, column, cells);
    if (at === null) throw new Error(answerWords.columnGone(heading));
    const before = new Map(columns).get(tabId) ?? [];
    const same = before.find((one) => columnPlace(one, cells, tagged) === at);
    const known = same?.tag !== undefined && tagged.get(same.tag) === at;
    const tag = known ? same.tag : `c${tagsGiven + 1}`;
    if (!known && tag !== undefined) workbook.tagColumn(tabId, at, tag);
    const next = { ...same, ...said, heading, column: at, tag };
    return {
      columns: replaced(columns, tabId, [...before.filter((one) => one !== same), next]),
      ...(known ? {} : { tagsGiven: tagsGiven + 1 }),
    };
  });
}

const parts = { meaning: "field", unit: "unit", "date order": "dateOrder" } as const;

/**
 * Forgets one part of what a column was said to be: it is recognised, or asked about, again. The
 * column is the one the answer's tag names; without a tag, the one at that place.
 */
export function forgetColumn(
  workbook: Workbook,
  tabId: number,
  shown: {
    readonly column: number;
    readonly tag: string | null;
    readonly about: keyof typeof parts;
  },
): void {
  changeAnswers(workbook, ({ columns }) => {
    const cells = workbook.values(tabId);
    const tagged = workbook.taggedColumns(tabId);
    const isMeant = (one: StoredColumnAnswer) =>
      shown.tag === null
        ? one.tag === undefined && columnPlace(one, cells, tagged) === shown.column
        : one.tag === shown.tag;
    const next = (new Map(columns).get(tabId) ?? []).flatMap((one) => {
      if (!isMeant(one)) return [one];
      const left: StoredColumnAnswer = { ...one };
      delete left[parts[shown.about]];
      if (Object.values(parts).some((part) => left[part] !== undefined)) return [left];
      if (one.tag !== undefined) workbook.untagColumn(tabId, one.tag);
      return [];
    });
    return { columns: replaced(columns, tabId, next) };
  });
}
