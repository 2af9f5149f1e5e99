import { type WhoMay, whoMay } from "../../availability/who-may";
import { usualBarKg } from "../../blocks/usual-bar";
import { type Day, mondayOf } from "../../calendar/day";
import { racesOf } from "../../diary/races-of";
import type { LiftingSet } from "../../record/lifting-set";
import { nameKey } from "../../record/name-key";
import type { Race } from "../../record/race";
import { type GymDays, gymDays } from "../../season/gym-days";
import { isCutForRace, raceClash, type WeekKind, weekKind } from "../../season/race-hours";
import { raceWeekSets } from "../../season/race-week-sets";
import { mostSessions, usualSessionsAWeek } from "../../season/usual-sessions-a-week";
import { type JumpsAlone, jumpsAlone } from "../jumps/jumps-alone";
import { fewestSets } from "../present-step/planned-loads";
import { type PresentStep, presentStep } from "../present-step/present-step";
import { usualMinute } from "../present-step/usual-times";
import type { AskedSession, LineGiven } from "../proposed-line";
import { plannedForSlow } from "../slow-day/planned-before-slow";
import { whyLess } from "../slow-day/why-less";
import { onLift } from "../state/athlete-state";

/** One athlete's week before a load is thought of: races, where the ladder stands, days that suit. */
export type WeekFrame = {
  readonly races: readonly Race[];
  readonly kind: WeekKind;
  /** Null for whoever has no sets yet. */
  readonly step: PresentStep | null;
  /** How whoever has jumps and no sets comes; null with sets or without jumps. */
  readonly alone: JumpsAlone | null;
  readonly sessionsAWeek: number;
  /** Sessions looked for. */
  readonly wanted: number;
  readonly days: GymDays | null;
  /** The first session's day or, without one, the day that availability is asked of. */
  readonly firstDay: Day;
  readonly mayOn: (day: Day) => WhoMay;
  readonly mayLift: (day: Day) => boolean;
  /** A day on which an A race has sets and contacts cut. */
  readonly cutOn: (day: Day) => boolean;
  /** For a week or more of the last two no jumps were allowed: landing is built up again. */
  readonly landsAgain: boolean;
  /** So many sets, or fewer on a day that an A race has cut. */
  readonly setsOn: (sets: number, day: Day) => number;
};

/** Reads the frame of the week from rows, rules and what the coach has changed by hand. */
export function weekFrame(given: LineGiven): WeekFrame {
  const { athlete, name, state, rows, monday, asOf, change = {} } = given;
  const { rules } = rows;
  const races = racesOf(rows.races, name, athlete);
  const cutOn = (day: Day) => isCutForRace(day, races);
  const setsOn = (sets: number, day: Day) =>
    cutOn(day) ? raceWeekSets(sets, rules.raceWeekSets) : sets;
  const mayOn = (day: Day) => whoMay(athlete, name, rows.availability, day);
  const on = ([set]: readonly LiftingSet[]) => onLift(state, set!.exercise);
  const step = presentStep({
    sets: rows.sets,
    athlete: name,
    asOf,
    plannedSets: (block, day) => fewestAsked(setsOn(block.sets, day), given.asked?.(day)),
    asked: given.asked,
    isOwnDay: (day) =>
      weekOf(day).every((one) => raceClash(one, usualMinute, races, rules) === null),
    seasonDays: 7 * rules.seasonWeeks,
    barKg: usualBarKg(given.unit),
    about: athlete,
    lessOn: (session, day) =>
      whyLess(session, { day, races, rules, state: on(session), asOf, mayDo: mayOn(day).mayDo }),
    plannedFor: (session, atMostKg) =>
      plannedForSlow({ ...given, state: on(session.all) })(session, atMostKg),
  });
  const mayLift = (day: Day) => mayOn(day).not === null;
  const alone = step === null ? jumpsAlone(given) : null;
  const comes = step ?? alone;
  const sessionsAWeek = comes?.sessionsAWeek ?? usualSessionsAWeek(athlete, []);
  const wanted = change.sessions ?? Math.min(mostSessions, Math.max(1, sessionsAWeek));
  const days =
    comes === null
      ? null
      : gymDays({
          monday,
          wanted,
          runs: rows.runs.filter((run) => nameKey(run.athlete) === nameKey(name)),
          races,
          usualWeekdays: comes.weekdays,
          minute: comes.minute,
          rules,
          mayLift,
        });
  const allowed = days?.all.find(({ refused }) => refused?.code !== "may-not-lift");
  const firstDay = change.day ?? days?.best[0]?.day ?? allowed?.day ?? monday;
  return {
    races,
    kind: weekKind(monday, races),
    step,
    alone,
    sessionsAWeek,
    wanted,
    days,
    firstDay,
    landsAgain: daysWithoutJumps(firstDay, mayOn) >= notJumpedDays,
    mayOn,
    mayLift,
    cutOn,
    setsOn,
  };
}

const weekOf = (day: Day) => Array.from({ length: 7 }, (_, at) => mondayOf(day) + at);

/** So many of the days before a session without jumps, and landing is halved once more (common practice, no source). */
const notJumpedDays = 7;
const lookedBackDays = 14;

const daysWithoutJumps = (firstDay: Day, mayOn: WeekFrame["mayOn"]): number =>
  Array.from({ length: lookedBackDays }, (_, at) => mayOn(firstDay - 1 - at)).filter(
    ({ noJumps }) => noJumps,
  ).length;

/** Fewer sets than any block has were fewer by plan, whatever has become of the race since. */
function fewestAsked(sets: number, asked: AskedSession | undefined): number {
  const few = asked?.sets ?? sets;
  return few < fewestSets ? Math.min(few, sets) : sets;
}
