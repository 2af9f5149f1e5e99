import { isoFromDay } from "../../coaching/calendar/day";
import type { Athlete } from "../../coaching/record/athlete";
import { nameKey } from "../../coaching/record/name-key";
import { choiceColumn, choices } from "../column/choice-column";
import { dayColumn } from "../column/day-column";
import { numberColumn } from "../column/number-column";
import { textColumn } from "../column/text-column";
import { hasDoubtfulLetters } from "../name/doubtful-letters";
import type { Reading } from "../reading";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { dayFromText, settleDay } from "../value/day-text";
import { foundText } from "../value/found-text";
import { isDate } from "../value/is-date";
import { saysNoValue } from "../value/no-value";
import { yesNo } from "../value/yes-no";
import { reportBlank } from "./needed";
import { mayDoOfWords } from "./read-availability";
import { readLines } from "./read-lines";
import { stepShareColumn } from "./step-share";

const experiences = choices({
  novice: "novice|new|beginner|anfänger|neu|neuling|einsteiger|first season|n",
  trained: "trained|trainiert|experienced|experience|fortgeschritten|erfahren|senior|t",
});

const takesPart = /^(?:active|current|in training|aktiv)$/i;

/** Rows of the Athletes table; an athlete listed twice is reported. */
export function readAthleteRows(view: TableView): Reading<Athlete> {
  const { fields, log } = view;
  const name = textColumn(view, fields.athlete, true);
  const group = textColumn(view, fields.group);
  const event = textColumn(view, fields.event);
  const experience = experienceColumn(view);
  const supervisor = textColumn(view, fields.supervisor);
  const from = dayColumn(view, fields.baselineFrom, false);
  const to = dayColumn(view, fields.baselineTo, false);
  const sessions = numberColumn(view, fields.sessions, { low: 0, high: 14 });
  const notes = textColumn(view, fields.notes);
  const step = fields.step && stepShareColumn(view, fields.step);
  const seen = new Map<string, number>();

  return readLines<Athlete>(
    view,
    (line, row) => {
      const athlete = name(line, row);
      if (athlete === "") return reportBlank(view, fields.athlete, row);
      const earlier = seen.get(nameKey(athlete));
      if (earlier !== undefined) {
        log.add(
          "athlete-twice",
          row,
          fields.athlete!.index,
          athlete,
          { earlierRow: log.rowNumber(earlier) },
          true,
        );
        return null;
      }
      seen.set(nameKey(athlete), row);
      if (hasDoubtfulLetters(athlete)) log.add("name-letters", row, fields.athlete!.index, athlete);
      const age = ageOf(view, line, row);
      return {
        row: row + 1,
        athlete,
        group: group(line, row),
        event: event(line, row),
        experience: experience(line, row),
        ...age,
        ...supervisorOf(view, supervisor(line, row), row),
        baselineFrom: from(line, row),
        baselineTo: to(line, row),
        sessionsAWeek: sessions(line, row),
        notes: notes(line, row),
        ...(step && { stepShare: step(line, row) }),
      };
    },
    [
      group,
      event,
      experience,
      (line, row) => ageOf(view, line, row),
      (line, row) => supervisorOf(view, supervisor(line, row), row),
      from,
      to,
      sessions,
      notes,
      ...(step ? [step] : []),
    ],
  );
}

/** Of a column called Status words may say what the athlete may do: that is of a day, and belongs in Availability. */
function experienceColumn(view: TableView): CellReader<Athlete["experience"]> {
  const column = view.fields.experience;
  const read = choiceColumn(view, column, experiences);
  if (column?.words !== "status") return read;
  const { index, heading } = column;
  return (line, row) => {
    const words = foundText(line[index]);
    const mayDo = takesPart.test(words) ? "full" : mayDoOfWords(words);
    if (mayDo === null) return read(line, row);
    if (mayDo !== "full") view.log.add("state-undated", row, index, words, { heading });
    return null;
  };
}

/** Birth year and under-18 mark; one cell may hold either. */
function ageOf(
  view: TableView,
  line: readonly unknown[],
  row: number,
): { birthYear: number | null; under18: boolean | null } {
  const bornColumn = view.fields.birthYear;
  const markColumn = view.fields.under18;
  const marked = markColumn && line[markColumn.index];
  let under18 = markOf(marked) ?? underByAge(marked);
  if (markColumn !== undefined && under18 === null && !isBlank(line[markColumn.index])) {
    const cell = line[markColumn.index];
    if (typeof cell !== "string" || !saysNoValue(cell))
      view.log.add("not-yes-or-no", row, markColumn.index, cell, { heading: markColumn.heading });
  }
  if (bornColumn === undefined) return { birthYear: null, under18 };
  const cell = line[bornColumn.index];
  const mark = typeof cell === "number" ? null : markOf(cell);
  under18 ??= mark;
  const birthYear = birthYearOf(cell);
  if (
    birthYear === null &&
    mark === null &&
    !isBlank(cell) &&
    !(typeof cell === "string" && saysNoValue(cell))
  )
    view.log.add("not-a-birth-year", row, bornColumn.index, cell, { heading: bornColumn.heading });
  return { birthYear, under18 };
}

/** "U16" is a class of the under-18s. */
const minor = /^(u ?-?(?:[89]|1[0-8])|under[ -]18|<\s*18|minor|unter 18)$/i;

function markOf(cell: unknown): boolean | null {
  return typeof cell === "string" && minor.test(cell.trim()) ? true : yesNo(cell);
}

const age = /^(\d{1,2})(?:[.,]\d+)?(?: ?(?:y|yrs?|years?(?: old)?|j|jahre)\.?)?$/i;
/** Fewer years are no athlete's. */
const youngest = 8;

/** An age where the mark would stand says who is under 18: once typed it is never too high. */
function underByAge(cell: unknown): boolean | null {
  const years = Number(age.exec(String(cell).trim())?.[1]);
  return years >= youngest ? years < 18 : null;
}

function birthYearOf(cell: unknown): number | null {
  const year = isDate(cell)
    ? cell.getFullYear()
    : typeof cell === "string"
      ? (dayFromText(cell)?.year ?? (/^\s*\d{4}\s*$/.test(cell) ? Number(cell) : Number.NaN))
      : Number(cell);
  return Number.isInteger(year) && year >= 1920 && year <= 2030 ? year : null;
}

// A name and a day are shorter, and looking for the day takes longer with every letter.
const longestSupervisor = 200;

/** "A. Name from 5 May": the name, and the first day it counts. */
function supervisorOf(
  view: TableView,
  text: string,
  row: number,
): { supervisor: string; supervisorFrom: number | null } {
  if (saysNoValue(text)) return { supervisor: "", supervisorFrom: null };
  if (text.length > longestSupervisor) {
    view.log.add("supervisor-day", row, view.fields.supervisor!.index, text);
    return { supervisor: "", supervisorFrom: null };
  }
  const parts = /^(.*?)[\s,(]+(?:from|since|ab|seit)\s(.+?)\)?$/is.exec(text);
  if (parts === null) return { supervisor: text, supervisorFrom: null };
  const written = dayFromText(parts[2]!);
  const year = written?.year ?? view.year;
  const dayFirst = written === null || year === null ? null : settleDay(written, "day first", year);
  const monthFirst =
    written === null || year === null ? null : settleDay(written, "month first", year);
  const settled = dayFirst ?? monthFirst;
  const either = dayFirst !== null && monthFirst !== null && dayFirst !== monthFirst;
  if (settled === null || either) {
    // Without its day the name is not counted: nothing may be proposed on a doubtful date.
    view.log.add("supervisor-day", row, view.fields.supervisor!.index, text, {
      ...(either ? { either: isoFromDay(dayFirst), or: isoFromDay(monthFirst) } : {}),
    });
    return { supervisor: "", supervisorFrom: null };
  }
  return { supervisor: parts[1]!, supervisorFrom: settled };
}
