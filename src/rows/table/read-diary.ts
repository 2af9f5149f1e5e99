import type { DiaryDay } from "../../coaching/record/diary-day";
import { yesNoColumn } from "../column/choice-column";
import { newDayAside } from "../column/day-column";
import { lengthColumn, minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { painColumn } from "../column/pain-column";
import { textColumn } from "../column/text-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { holdsNothing } from "../value/no-value";
import { athleteDay } from "./athlete-day";
import { DoubledRows } from "./doubled-rows";
import { reportDoubled } from "./needed";
import { questionDays } from "./question-days";
import { readLines } from "./read-lines";

/** The coach's own scale is kept, whatever it is; beyond a hundred it is a slip. */
const scale = { low: 0, high: 100 };

/** Rows of the Diary. */
export function readDiaryRows(view: TableView): Reading<DiaryDay> {
  const { fields } = view;
  const aside = newDayAside();
  const whose = athleteDay(view, aside);
  const minute = minuteColumn(view, fields.minute);
  const sleepH = lengthColumn(view, fields.sleepH, "h", { low: 0, high: 18 });
  const sleepQuality = numberColumn(view, fields.sleepQuality, scale);
  const soreness = numberColumn(view, fields.soreness, scale);
  const fatigue = numberColumn(view, fields.fatigue, scale);
  const stress = numberColumn(view, fields.stress, scale);
  const mood = numberColumn(view, fields.mood, scale);
  const carbs = yesNoColumn(view, fields.carbs);
  const food = textColumn(view, fields.food);
  const newToday = textColumn(view, fields.newToday);
  const note = textColumn(view, fields.note);
  const pain = painColumn(view, fields.pain);
  const isPrivate = yesNoColumn(view, fields.private);
  const doubled = new DoubledRows(view);

  const reading = readLines<DiaryDay>(
    view,
    (line, row) => {
      const read = whose(line, row);
      if (read === null) return null;
      const { day, athlete } = read;
      const earlier = doubled.earlier(line, row);
      if (earlier >= 0) return reportDoubled(view, row, earlier);
      return {
        row: row + 1,
        day,
        minute: minute(line, row) ?? aside.minute,
        athlete,
        sleepH: sleepH(line, row),
        sleepQuality: sleepQuality(line, row),
        soreness: soreness(line, row),
        fatigue: fatigue(line, row),
        stress: stress(line, row),
        mood: mood(line, row),
        carbsInSession: carbs(line, row),
        foodNote: food(line, row),
        newToday: newToday(line, row),
        note: [pain(line, row), note(line, row)].filter(Boolean).join("; "),
        private: isPrivate(line, row) ?? somethingStands(line[fields.private?.index ?? -1]),
      };
    },
    [
      minute,
      sleepH,
      sleepQuality,
      soreness,
      fatigue,
      stress,
      mood,
      carbs,
      food,
      newToday,
      pain,
      note,
      isPrivate,
    ],
  );
  return questionDays(view, reading);
}

/** A mark that is neither yes nor no, a lone "x" or "coach only", keeps a row private all the same. */
function somethingStands(cell: unknown): boolean {
  return !holdsNothing(cell);
}
