import { headerWords, plainWords } from "../../header/header-words";
import { headingLookup } from "../../header/recognise-header";
import { isBlank } from "../../value/blank";
import { inBase, type Unit, unitOf } from "../../value/units";
import { liftInWords, namesJump } from "../lift-in-words";

/** What a grid's title asks of everybody each day, and the unit it names. */
export type DiaryQuestion = { readonly field: string; readonly unit: Unit | null };

/** Answers that are figures; words for people are asked in rows, not in grids. */
const figures = new Set(["sleepH", "sleepQuality", "soreness", "fatigue", "stress", "mood"]);
/** A scale past ten is not taken for a diary's unless the coach says so (common practice, no source). */
const usualMost = 10;
const mostSleepH = 18;

/** The first question that titles, nearest first, or else the tab's name ask; null when none does. */
export function diaryQuestion(titles: readonly string[], tab: string): DiaryQuestion | null {
  for (const title of [...titles, tab]) {
    const words = ` ${plainWords(title).replace(/[^\p{L}]+/gu, " ")} `;
    if (liftInWords(title) !== null || namesJump(title)) continue;
    const [longest] = [...headingLookup("Diary")]
      .filter(([heading, field]) => figures.has(field) && words.includes(` ${heading} `))
      .sort(([one], [other]) => other.length - one.length);
    if (longest !== undefined) return { field: longest[1], unit: unitIn(title, longest[1]) };
  }
  return null;
}

/** A unit in brackets, after a comma or at the end; only lengths of sleep have one. */
function unitIn(title: string, field: string): Unit | null {
  if (field !== "sleepH") return null;
  const named = /\b(h|hours|hrs|min|mins|minutes|stunden|minuten)\b/.exec(plainWords(title));
  return named === null ? headerWords(title).unit : unitOf(named[1]!);
}

/** Whether at least half of the cells may be answers on a diary's scale, or lengths of sleep. */
export function looksAnswered({ field, unit }: DiaryQuestion, cells: readonly unknown[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  const hours = unit === null ? 1 : inBase(1, unit) / 3600;
  const most = field === "sleepH" ? mostSleepH / hours : usualMost;
  const fits = filled.filter((cell) => {
    if (field === "sleepH" && typeof cell === "string" && /^\d{1,2}[:h]\d{2}$/.test(cell.trim()))
      return true;
    const value = Number(String(cell).replace(",", "."));
    return value >= 0 && value <= most;
  });
  return filled.length > 0 && 2 * fits.length >= filled.length;
}
