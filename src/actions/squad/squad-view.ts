import { mayDoOn } from "../../coaching/availability/spell-on";
import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { cautions } from "../../words/cautions";
import { dayFrom, dayWords } from "../../words/days";
import { dressOf } from "../../words/dress";
import { holdReason, holdWords, sinceWords } from "../../words/reasons-hold";
import { noteWords } from "../../words/reasons-notes";
import { readinessReason, readinessWords } from "../../words/reasons-readiness";
import { squadWords } from "../../words/reasons-squad";
import { mayDoWords } from "../../words/squad-table";
import { waitingWords } from "../../words/waiting-rows";
import { damagedOf } from "../answers/forget-damaged";
import type { SquadLine, SquadView } from "../messages";
import { rowsNotUsed } from "../row-check/rows-not-used";
import { openNotes } from "../row-check/sets-to-look-at";
import { toCheck } from "../row-check/to-check";
import type { Workbook } from "../workbook";
import { type StateOfSquad, stateOfSquad } from "./state-of-squad";

/** Every athlete's word and why: those who fell first, then those not sure, then the rest by name. */
export function squadView(workbook: Workbook, today: Day): SquadView {
  const state = stateOfSquad(workbook, today);
  const { read, asOf, hold, numbers } = state;
  const lines = namesOf(state).map((athlete) => squadLine(state, athlete));
  const order = { low: 0, high: 1, unsure: 2, plain: 3 } as const;
  return {
    damaged: read.answers.damaged ? damagedOf(["answers"]) : [],
    asOf: isoFromDay(asOf),
    asOfWords: `Rows up to ${dayFrom(today, asOf)}`,
    summary: numbers.marked(
      squadWords(
        lines.map(({ athlete }) => hold.of(athlete)),
        read.rows.rules.falseFlagRate,
      ),
    ),
    lines: [...lines].sort((a, b) => order[a.dress] - order[b.dress]),
    toCheck: toCheck(state),
    cautions,
  };
}

/** The athletes of the Athletes table; without one, everybody with rows. */
export function namesOf({ read, hold }: StateOfSquad): readonly string[] {
  const listed = read.rows.athletes.map(({ athlete }) => athlete);
  return listed.length > 0 ? listed : hold.all.map(({ athlete }) => athlete);
}

export function squadLine(state: StateOfSquad, athlete: string): SquadLine {
  const { read, asOf, hold, dayOf, numbers } = state;
  const season = hold.of(athlete);
  const about = athleteNamed(read.rows.athletes, athlete);
  const word = holdWords(season);
  const last = lastDayOf(state, athlete);
  const day = last === null ? null : dayOf(athlete, last);
  const since = sinceWords(season);
  const { names, spells } = state.waiting(athlete);
  const mayDo = mayDoOn(read.rows.availability, athlete, asOf);
  // The word says that there are no rows.
  const notes = openNotes(read, season).filter(({ code }) => code !== "no-rows");
  return {
    athlete,
    group: about?.group ?? "",
    event: about?.event ?? "",
    // "full" is said only of an athlete whose availability was read.
    mayDo: mayDo === "full" && spells.length > 0 ? mayDoWords.unread : mayDo,
    word,
    dress: dressOf(word),
    since: since === "–" ? "" : `since ${since}`,
    // Sentences, the last without its full stop.
    why: [
      numbers.told([`${holdReason(season, true)}.`, ...notes.map(noteWords)].join(" ")),
      ...[...names, ...spells].map((one) => `${waitingWords.whole(one)}.`),
    ]
      .join(" ")
      .replace(/\.$/, ""),
    today: day === null || last === null ? "" : `${dayWords(last)}: ${readinessWords(day)}`,
    todayWhy: day?.reason ? numbers.told(readinessReason(day)) : "",
    todayDress: day === null ? "plain" : dressOf(day.word),
    rowsNotUsed: rowsNotUsed(read, athlete),
  };
}

/** Last day with a set or a jump. */
function lastDayOf({ index }: StateOfSquad, athlete: string): Day | null {
  const rows = index.of(athlete);
  if (!rows) return null;
  const days = [...rows.lifts.values(), ...rows.jumps.values()].flatMap((list) => {
    const last = list[list.length - 1];
    return last ? [last.day] : [];
  });
  return days.length === 0 ? null : Math.max(...days);
}
