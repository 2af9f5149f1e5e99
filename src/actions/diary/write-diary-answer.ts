import type { Day } from "../../coaching/calendar/day";
import { answeredWords, noAnswerWords } from "../../words/diary-view";
import type { Done } from "../messages";
import { readWorkbook } from "../read-workbook";
import type { Workbook } from "../workbook";
import { diaryAnswerPlace } from "./diary-answer-place";

/** A cell of an online sheet takes 50,000 characters. */
const fullCell = 50_000;
const between = "; ";

/**
 * Writes what an athlete answered about a day into the note of that day's Diary row, as one ordinary
 * edit: into a blank cell, or after the coach's words and a semicolon. An answer that already ends
 * the note is not written twice, so a writing that failed can be asked for again. Throws a sentence
 * when there is no such row, no column for notes, or something other than words in the cell.
 */
export function writeDiaryAnswer(
  workbook: Workbook,
  today: Day,
  asked: { readonly athlete: string; readonly day: Day; readonly answer: string },
): Done {
  const answer = asked.answer.replace(/\s+/g, " ").trim();
  if (answer === "") throw new Error(noAnswerWords.nothing());
  return workbook.alone(() => {
    const place = diaryAnswerPlace(readWorkbook(workbook, today), asked.athlete, asked.day);
    if (typeof place === "string") throw new Error(place);
    const { tab, row, column, cell } = place;
    if ((workbook.formulas(tab.id)[row - 1]?.[column - 1] ?? "") !== "") {
      throw new Error(noAnswerWords.formula(cell));
    }
    const before = workbook.values(tab.id)[row - 1]?.[column - 1] ?? "";
    if (typeof before !== "string") throw new Error(noAnswerWords.notText(cell));
    if (before === answer || before.endsWith(between + answer)) {
      return { said: answeredWords.stands(cell) };
    }
    // The coach's words stay to the letter, spaces and all.
    const after = before.trim() === "" ? answer : before + between + answer;
    if (after.length > fullCell) throw new Error(noAnswerWords.tooLong(cell));
    workbook.write(tab.id, { row, column, values: [[after]] });
    return { said: answeredWords.written(cell) };
  });
}
