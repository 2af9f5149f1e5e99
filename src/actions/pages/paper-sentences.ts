import { listWords, sentence, spelled } from "../../words/pages";
import { valueWords } from "../../words/reasons-hold";
import { squadWords } from "../../words/reasons-squad";
import { rowsUnusedWords } from "../../words/row-check";
import { setsCutWords } from "../../words/week-notes";
import { rowsNotUsed } from "../row-check/rows-not-used";
import { rowsOfNobody } from "../row-check/rows-of-nobody";
import { tabsToConfirm } from "../row-check/tabs-to-confirm";
import { setsCut } from "../week/week-notes";
import type { PrintableWeek } from "./printable-week";
import { plannedWeekName } from "./reported-week";

/** The page's numbered sentences: who moved, what next week changes, who is missing. */
export function paperSentences(week: PrintableWeek): readonly string[] {
  return [moved(week), changes(week), missing(week)].filter((one) => one !== "");
}

/** "Two of twelve are slipping: Tomas Reyerson, back squat speed. One rises: …" */
function moved({ state, lines }: PrintableWeek): string {
  const seasons = lines.map(({ line }) => state.hold.of(line.athlete));
  const named = (word: string) =>
    seasons
      .filter((season) => season.word === word)
      .map(({ athlete, value }) => (value ? `${athlete} (${valueWords(value)})` : athlete));
  const low = named("slipping");
  const high = named("rising");
  const slips =
    low.length === 0
      ? `Nobody of ${spelled(seasons.length)} is slipping.`
      : `${sentence(spelled(low.length))} of ${spelled(seasons.length)} ${low.length === 1 ? "is" : "are"} slipping: ${listWords(low)}.`;
  return high.length === 0
    ? slips
    : `${slips} ${sentence(spelled(high.length))} ${high.length === 1 ? "is" : "are"} rising: ${listWords(high)}.`;
}

/** What next week changes: race weeks, loads held, and who lifts nothing. */
function changes(week: PrintableWeek): string {
  const { lines } = week;
  const racing = lines.filter(({ line }) => line.kind === "race week");
  const up = lines.filter(({ line }) => line.reasons.some(({ code }) => code === "step-up"));
  const none = lines.filter(({ line, leftOut }) => leftOut || line.sessions.length === 0);
  const names = (some: typeof lines) => listWords(some.map(({ line }) => line.athlete));
  return [
    racing.length === 0
      ? `${plannedWeekName(week)} is a race week for nobody.`
      : `${plannedWeekName(week)} is a race week for ${spelled(racing.length)}${setsCutWords(setsCut(lines))}.`,
    noStepUp(week),
    up.length === 0 ? "" : `A step up for ${spelled(up.length)}: ${names(up)}.`,
    none.length === 0 ? "" : `Nothing planned for ${names(none)}.`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}

/** "No step up while slipping: Joss Whitterby at 80 kg; Tomas Reyerson down from 95 to 85 kg." */
function noStepUp({ lines, numbers: { mass, withUnit } }: PrintableWeek): string {
  const held = lines.flatMap(({ line, leftOut }) => {
    const [first] = line.sessions.filter(({ turn }) => turn === "");
    const isHeld = line.reasons.some(({ code }) => code === "slipping-held");
    if (leftOut || first === undefined || !isHeld) return [];
    const before = line.step!.loadKg;
    return first.loadKg < before
      ? [`${line.athlete} down from ${mass(before)} to ${withUnit(first.loadKg)}`]
      : [`${line.athlete} at ${withUnit(first.loadKg)}`];
  });
  return held.length === 0 ? "" : `No step up while slipping: ${held.join("; ")}.`;
}

/** An athlete without a session for longer than this is asked after (common practice, no source). */
const quietDays = 10;

/** Who is missing rows: nothing for ten days, or too few to judge. */
function missing(week: PrintableWeek): string {
  const { state, lines } = week;
  const quiet: string[] = [];
  const few: string[] = [];
  for (const { line } of lines) {
    const last = Math.max(Number.NEGATIVE_INFINITY, ...week.daysIn(line.athlete));
    if (line.not !== "out" && state.asOf - last > quietDays) quiet.push(line.athlete);
    else if (state.hold.of(line.athlete).word === "too few rows") few.push(line.athlete);
  }
  return [
    ...fewer(week),
    quiet.length === 0 ? "" : `No gym rows for more than ${quietDays} days: ${listWords(quiet)}.`,
    few.length === 0 ? "" : `Too few rows to judge: ${listWords(few)}.`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}

const lookBack = 28;
/** Under this share of the sessions planned the head coach is asked (common practice, no source). */
const fewShare = 0.7;

/**
 * "Fewer sessions than planned in the last four weeks: Tomas Reyerson, 5 of 8." Of an athlete whose
 * rows began since then only the whole weeks with rows are asked for.
 */
function fewer({ state, lines, daysIn }: PrintableWeek): readonly string[] {
  const said = lines.flatMap(({ line }) => {
    const days = daysIn(line.athlete);
    if (line.not === "out") return [];
    const begun = state.asOf + 1 - Math.min(...days);
    const weeks = Math.floor(Math.min(lookBack, begun) / 7);
    const planned = Math.floor(weeks * line.sessionsAWeek);
    const done = days.filter((day) => day > state.asOf - lookBack).length;
    return done > 0 && done < fewShare * planned ? [`${line.athlete}, ${done} of ${planned}`] : [];
  });
  return said.length === 0
    ? []
    : [`Fewer sessions than planned in the last four weeks: ${said.join("; ")}.`];
}

/** The squad's own false-flag sentence, and the rows that were not used, by athlete. */
export function howSureWords({ state, lines }: PrintableWeek): string {
  const { read, hold } = state;
  const seasons = lines.map(({ line }) => hold.of(line.athlete));
  const flags = squadWords(seasons, read.rows.rules.falseFlagRate).split(". ").slice(1).join(". ");
  const byAthlete = lines.flatMap(({ line }) => {
    const count = rowsNotUsed(read, line.athlete);
    return count === 0 ? [] : [`${line.athlete} ${count}`];
  });
  const open = tabsToConfirm(read).map(({ tab }) => tab);
  const rows = rowsUnusedWords(read.rowsFilled, {
    notRead: read.rowsFilled - read.rowsRead,
    ofNobody: rowsOfNobody(read),
  });
  const all =
    open.length === 0 ? "Every row was read." : "Every row of the tables in use was read.";
  const asked = byAthlete.length === 0 ? "" : ` Cells to look at: ${byAthlete.join(", ")}.`;
  const waiting = open.length === 0 ? "" : ` Not in use until confirmed: ${listWords(open)}.`;
  return `${flags} ${rows || all}${waiting}${asked} Supports judgement; not medical advice.`;
}
