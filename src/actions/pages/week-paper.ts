import { mayDoOn } from "../../coaching/availability/spell-on";
import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { ownPercent } from "../../coaching/hold/own-percent";
import type { SeasonHold } from "../../coaching/hold/season-hold";
import { fallenUncalled, lastCompared } from "../../coaching/hold/word-caveats";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { seasonStart } from "../../coaching/series/season-start";
import { datedDay, longDay, weekdayWords } from "../../words/days";
import { dressOf } from "../../words/dress";
import { pageWords } from "../../words/pages";
import type { PrintedNumbers } from "../../words/printed-numbers";
import { percentWords, signedPercentWords } from "../../words/reasons-figures";
import {
  holdWords,
  lastComparedWords,
  movedWords,
  sinceWords,
  valueWords,
} from "../../words/reasons-hold";
import { noteStatement } from "../../words/reasons-notes";
import type { WeekPageLine, WeekPaper } from "../page-messages";
import { seasonPicture } from "../squad/athlete-view";
import { madeWithout } from "./made-without";
import { howSureWords, paperSentences } from "./paper-sentences";
import type { PrintableWeek } from "./printable-week";
import { plannedWeekName, reportedMonday } from "./reported-week";
import { weeksAhead } from "./weeks-ahead";

/** The head coach's page: the last week with rows before the planned one, and what the planned one changes. */
export function weekPaper(week: PrintableWeek): WeekPaper {
  const { state } = week;
  const from = seasonStart(state.index);
  const lines = week.lines.map((one) => paperLine(week, one));
  const order = { low: 0, high: 1, unsure: 2, plain: 3 } as const;
  return {
    without: madeWithout(
      week,
      [],
      week.lines.map(({ line }) => line.athlete),
    ),
    title: pageWords.weekOf(longDay(reportedMonday(week))),
    written: pageWords.written(datedDay(state.asOf)),
    sentences: paperSentences(week),
    planned: pageWords.setsOfWeek(plannedWeekName(week)),
    from: isoFromDay(from),
    to: isoFromDay(Math.max(state.asOf, from + 7)),
    lines: [...lines].sort((a, b) => order[a.dress] - order[b.dress]),
    weeks: weeksAhead(week),
    howSure: howSureWords(week),
  };
}

function paperLine(
  week: PrintableWeek,
  { line, leftOut }: PrintableWeek["lines"][number],
): WeekPageLine {
  const { state, numbers } = week;
  const season = state.hold.of(line.athlete);
  const about = athleteNamed(state.read.rows.athletes, line.athlete);
  const picture = season.sessions.length === 0 ? null : seasonPicture(state, season);
  const place = season.measures.findIndex(
    ({ kind, of }) => kind === season.value?.kind && of === season.value.of,
  );
  const word = holdWords(season);
  const may = mayDoOn(state.read.rows.availability, line.athlete, state.asOf);
  const sessions = leftOut ? [] : line.sessions;
  const [first] = sessions;
  const [note] = season.notes.filter(({ code }) => paperNotes.has(code));
  return {
    athlete: line.athlete,
    event: about?.event ?? "",
    series: picture?.series[Math.max(0, place)] ?? null,
    since: season.sinceDay === null ? null : isoFromDay(season.sinceDay),
    races: (picture?.races ?? []).map(({ day, matters }) => ({ day, matters })),
    word,
    dress: dressOf(word),
    words: numbers.marked(afterWord(season)),
    small: note ? numbers.marked(noteStatement(note)) : "",
    sessions: pageWords.ofSessions(
      sessionsIn(week, line.athlete, reportedMonday(week)),
      Math.ceil(line.sessionsAWeek),
    ),
    // The word alone: sites and reasons stay in the sheet.
    mayDo:
      line.not === "out" ? "out" : `${may}${line.who.noJumps && may !== "out" ? ": no jumps" : ""}`,
    next: first ? whatOf(line, first, numbers) : "–",
    nextDays: sessions
      .map((one) => {
        const day = weekdayWords(one.day).slice(0, 3);
        const what = whatOf(line, one, numbers);
        // A step taken within the week stands beside its day.
        return what === whatOf(line, first!, numbers) ? day : `${day} ${what}`;
      })
      .join(" and "),
  };
}

/** "2×5 at 80 kg", "2×5 leg press"; a lift in turn with the one the athlete is on is named. */
const whatOf = (
  { exercise: lift }: ProposedLine,
  { sets, reps, exercise, instead, loadKg }: ProposedSession,
  { withUnit }: PrintedNumbers,
) =>
  instead
    ? `${sets}×${reps} ${instead.exercise.split(",")[0]}`
    : `${sets}×${reps}${exercise === lift ? "" : ` ${exercise}`} at ${withUnit(loadKg)}`;

/** Notes of measurement that may go to paper; none is about a body or a diary. */
const paperNotes = new Set([
  "setting-changed",
  "setting-changed-in-baseline",
  "new-tool-noted",
  "one-date",
]);

/** What follows the word: since when, which value, how far, its wobble, or what loss would show. */
function afterWord(season: SeasonHold): string {
  const { word, value, visibleFall } = season;
  if (word === "too few rows" || !value) return "";
  const wobble = `wobble ${percentWords(value.wobble)}`;
  if (word === "slipping" || word === "rising") {
    return ` since ${sinceWords(season)}: ${movedWords(value)}, ${wobble}`;
  }
  const compared = lastCompared(season);
  if (compared?.named) return `; ${wobble}, ${lastComparedWords(season)}`;
  const other = compared === null ? "" : `; ${lastComparedWords(season)}`;
  if (fallenUncalled(season)) {
    const of = value === season.measures[0] ? "" : `${valueWords(value)} `;
    return `; ${of}${signedPercentWords(ownPercent(value.kind, value.change ?? 0))} now, ${wobble}: too few sessions to call it${other}`;
  }
  return visibleFall === null
    ? `; ${wobble}${other}`
    : `; a loss of ${percentWords(visibleFall)} would show${other}`;
}

function sessionsIn({ daysIn }: PrintableWeek, athlete: string, from: Day): number {
  return daysIn(athlete).filter((day) => day >= from && day < from + 7).length;
}
