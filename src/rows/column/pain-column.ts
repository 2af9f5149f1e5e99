import { symptomWords } from "../../coaching/diary/symptom-words";
import type { Column } from "../header/column";
import type { CellReader, TableView } from "../table-view";
import { holdsNothing } from "../value/no-value";
import { textColumn } from "./text-column";

/** Answers that say that nothing hurts; a nought is one on any scale of pain. */
const none =
  /^(?:0(?:[.,]0+)?|0 ?(?:\/|of|von) ?\d+|no?|nope|none|nothing|nil|all (?:good|fine|ok|okay)|good|fine|ok|okay|false|✗|✘|☐|👍|nein|keine?|nichts|alles (?:gut|ok)|gut)[.! ]*$/i;

/**
 * Reader of the diary's column of pain, injury or illness: what it says behind the heading's own words,
 * "Any pain or injury?: left calf", as a mark without them would say nothing; "" when nothing hurts.
 */
export function painColumn(view: TableView, column: Column | undefined): CellReader<string> {
  const read = textColumn(view, column);
  if (column === undefined) return read;
  const asks = symptomWords(column.heading).length > 0 ? column.heading : "pain";
  const top = /[-–] ?([3-7])\b/.exec(column.heading)?.[1];
  return (line, row) => {
    if (line[column.index] === true) return `${asks}: yes`;
    // "Ill" and "sick" are marks for no figure elsewhere; here they are the answer.
    if (holdsNothing(line[column.index]) && !symptomWords(`${line[column.index]}`).length)
      return "";
    const said = read(line, row);
    // "Keine 🙂" is none as well.
    if (said === "" || none.test(said.replace(/(?<=\p{L})[^\p{L}\p{N}]+$/u, ""))) return "";
    // Who says it in words is not said to have said the heading's, too.
    if (symptomWords(said).length > 0) return said;
    // Two of five is more than two of ten.
    return `${asks}: ${said}${top !== undefined && Number(said.replace(",", ".")) > 1 ? ` of ${top}` : ""}`;
  };
}
