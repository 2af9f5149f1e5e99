import { mondayOf } from "../../coaching/calendar/day";
import { keepsMovement } from "../../coaching/next-week/state/keeps-movement";
import { asksOfColumn } from "../../rows/header/questions-of-reading";
import { asksOfTab } from "../../rows/layout/tab-questions";
import { dayFrom } from "../../words/days";
import { raceName } from "../../words/race-name";
import { waitingWords } from "../../words/waiting-rows";
import { type SetsCut, weekNoteWords } from "../../words/week-notes";
import type { ReadWorkbook } from "../read-workbook";
import { onceARow } from "../row-check/once-a-row";
import { tabsToConfirm } from "../row-check/tabs-to-confirm";
import type { ProposedWeek } from "./proposed-week";

/** An issue that an answer under Set up settles. */
const waits = (code: string): boolean => asksOfColumn(code) || asksOfTab(code);

/** Where no set says how it moved: the column that may, which waits for an answer, or what to write. */
function movementWords({ questions }: ReadWorkbook): string {
  const asked = questions.find(({ question }) => question.guess === "movedWell");
  return asked
    ? weekNoteWords.movementAsked(asked.question.heading, asked.tab.name)
    : weekNoteWords.noMovement;
}

/** What the whole week is: its races, and how many are in race week. */
export function weekNotes({ state, today, monday, lines }: ProposedWeek): string[] {
  const { rows } = state.read;
  const races = rows.races.filter(({ day }) => day >= monday && day < monday + 7);
  const racing = lines.filter(({ line }) => line.kind === "race week").length;
  const named = new Set<string>();
  const notes = races.flatMap(({ race, day, matters, startMinute }) => {
    const label = raceName(race);
    if (named.has(label)) return [];
    named.add(label);
    return [weekNoteWords.race(label, matters, day, startMinute)];
  });
  for (const { tab } of tabsToConfirm(state.read)) notes.push(waitingWords.tab(tab));
  const unsettled = onceARow(
    state.read.issues.filter(({ issue }) => issue.dropsRow && waits(issue.code)),
  );
  if (unsettled.length > 0) {
    const tabs = new Set(unsettled.map(({ tab }) => tab.name));
    notes.unshift(waitingWords.unsettled(unsettled.length, [...tabs]));
  }
  if (state.asOf !== today)
    notes.unshift(
      weekNoteWords.old(dayFrom(today, state.asOf), dayFrom(today, mondayOf(today) + 7)),
    );
  if (rows.sets.length > 0 && !keepsMovement(rows.sets)) notes.push(movementWords(state.read));
  if (rows.plates.length === 0) notes.push(weekNoteWords.noPlates);
  if (rows.rules.racks < 0.5) notes.push(weekNoteWords.noRacks);
  return racing === 0 ? notes : [...notes, weekNoteWords.racing(racing, setsCut(lines))];
}

/** Sets that a race week has cut, as the lines have it. */
export const setsCut = (
  lines: readonly Pick<ProposedWeek["lines"][number], "line" | "leftOut">[],
): readonly SetsCut[] =>
  lines.flatMap(({ line, leftOut }) =>
    line.reasons.flatMap(({ code, facts: { from, to } }) =>
      code === "race-week" && !leftOut ? [{ from: Number(from), to: Number(to) }] : [],
    ),
  );
