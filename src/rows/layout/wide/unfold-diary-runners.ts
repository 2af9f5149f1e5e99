import { headerWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { isBlankLine } from "../../table/read-lines";
import { namesSummary } from "../../table/summary-lines";
import type { TableView } from "../../table-view";
import { isBlank } from "../../value/blank";
import type { LayoutContext } from "../layout-context";
import { Unfolded } from "../unfolded";
import { withUnit } from "../with-unit";
import { diaryQuestion, looksAnswered } from "./diary-question";

/**
 * Days down, athletes across, the answers to one question in the cells. The question is read from the
 * title lines nearest above the header, else from the tab's name; a tab that the coach says is the
 * diary holds notes where none is asked. Null where that is not how the tab lies.
 */
export function unfoldDiaryRunners(
  { cells, fields, headerRow, first, end }: TableView,
  { title, said, leftAlone }: LayoutContext,
): Unfolded | null {
  const { day, note, ...others } = fields;
  const heads = cells[headerRow] ?? [];
  const taken = new Set([...Object.values(fields).map(({ index }) => index), ...leftAlone]);
  const runners = [...heads.keys()].flatMap((index) => {
    if (taken.has(index)) return [];
    const { words, unit } = headerWords(heads[index]);
    // "Day" beside "Date" is no athlete.
    const known = headingLookup("Diary").has(words) || namesSummary(heads[index]);
    return words !== "" && unit === null && !/\d/.test(words) && !known
      ? [{ index, athlete: String(heads[index]).trim() }]
      : [];
  });
  // Beside a column that the table knows, others are no athletes; notes stand beside anybody.
  if (day === undefined || Object.keys(others).length > 0 || runners.length < 2) return null;
  const titles = cells
    .slice(0, headerRow)
    .flatMap((line) => line.filter((cell): cell is string => typeof cell === "string"));
  const question = diaryQuestion(titles.reverse(), title);
  const answers = cells
    .slice(first, end)
    .flatMap((line) => runners.map(({ index }) => line[index]));
  if (question === null ? !said : !looksAnswered(question, answers)) return null;
  const { field, unit } = question ?? { field: "note", unit: null };
  const into = new Unfolded("Diary", cells, headerRow);
  into.passesOver = (column) => runners.every(({ index }) => index !== column);
  into.describe("day", day);
  into.markHeadings(first);
  for (let row = first; row < end; row++) {
    const line = cells[row]!;
    if (isBlankLine(line)) continue;
    if (namesSummary(line.find((cell) => !isBlank(cell)))) {
      into.mark(row, "heading");
      continue;
    }
    into.mark(row, "data");
    const words = note && line[note.index];
    if (!isBlank(words)) into.note(row, note!.index, "", null, "table", String(words).trim());
    for (const { index, athlete } of runners)
      if (!isBlank(line[index]))
        into.emit(row, {
          day: [line[day.index], day.index],
          athlete: [athlete, index],
          [field]: [withUnit(line[index], unit), index],
        });
  }
  return into;
}
