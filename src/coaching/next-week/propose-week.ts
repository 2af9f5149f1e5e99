import { whoMay } from "../availability/who-may";
import type { Block } from "../blocks/block";
import { fineStep, gymStepKg } from "../blocks/gym-step";
import { restartAfter } from "../blocks/restart";
import { stepSizeOf } from "../blocks/step-size";
import type { Day } from "../calendar/day";
import { racesOf } from "../diary/races-of";
import { nameKey } from "../record/name-key";
import { gymDays } from "../season/gym-days";
import { daysSinceMarathon, isCutForRace, raceNear, weekKind } from "../season/race-hours";
import { raceWeekSets } from "../season/race-week-sets";
import { usualSessionsAWeek } from "../season/usual-sessions-a-week";
import { barLoad } from "./bar-load";
import { chosenDays } from "./chosen-days";
import { dayReasons } from "./day-reasons";
import { gapBefore } from "./gap-before";
import {
  contactReasons,
  cutReasons,
  dropReasons,
  otherwiseReasons,
  stateReasons,
  swapReasons,
} from "./line-reasons";
import { plannedStep } from "./planned-step";
import { presentStep } from "./present-step";
import { sessionProposer } from "./propose-session";
import type { LineGiven, ProposedWeek } from "./proposed-line";
import { guardOf, toldGuardOf } from "./reserve-guard";
import { sessionSteps } from "./session-steps";
import { usualPlates } from "./usual-plates";

/** Gym sessions of a week at most, in a racing season (common practice, no source). */
const mostSessions = 2;
/** One week's sets for one athlete from the rows as they stand, with every reason. */
export function proposeWeek(given: LineGiven): ProposedWeek {
  const { athlete, name, state, rows, monday, asOf, change = {} } = given;
  const { rules } = rows;
  const races = racesOf(rows.races, name, athlete);
  const kind = weekKind(monday, races);
  const setsOn = (block: Block, day: Day) =>
    isCutForRace(day, races) ? raceWeekSets(block.sets, rules.raceWeekSets) : block.sets;
  const step = presentStep(rows.sets, name, asOf, setsOn, 7 * rules.seasonWeeks);
  const mayOn = (day: Day) => whoMay(athlete, name, rows.availability, day);
  const mayLift = (day: Day) => mayOn(day).not === null;
  const sessionsAWeek = usualSessionsAWeek(athlete, step?.sessions.map(({ day }) => day) ?? []);
  const wanted = Math.min(mostSessions, Math.max(1, sessionsAWeek));
  const days =
    step === null
      ? null
      : gymDays({
          monday,
          wanted,
          runs: rows.runs.filter((run) => nameKey(run.athlete) === nameKey(name)),
          races,
          usualWeekdays: step.weekdays,
          minute: step.minute,
          rules,
          mayLift,
        });
  const allowed = days?.all.find(({ refused }) => refused?.code !== "may-not-lift");
  const firstDay = change.day ?? days?.best[0]?.day ?? allowed?.day ?? monday;
  const who = mayOn(firstDay);
  const exercise = step?.exercise ?? "";
  const base = { athlete: name, who, kind, exercise, sessionsAWeek, days, step };
  const usualDays = (step?.weekdays ?? []).slice(0, mostSessions);
  const nothing = (not: NonNullable<ProposedWeek["not"]>): ProposedWeek => ({
    ...base,
    not,
    sessions: [],
    reasons: [{ code: not, facts: {} }, ...dayReasons(days, wanted, usualDays)],
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const plates = rows.plates.length > 0 ? rows.plates : usualPlates;
  const usualSize = stepSizeOf(athlete, rules, gymStepKg(plates));
  const size = fineStep(usualSize, step.loadKg, plates);
  const guardKg = guardOf(state, step);
  const gap = gapBefore({ lastDay: step.lastDay, firstDay, monday, asOf, mayLift });
  const rest = restartAfter(gap, sessionsAWeek);
  const marathonDays = daysSinceMarathon(firstDay, races, rules);
  const chosen = chosenDays(days, change.day, wanted);
  const cutOn = (day: Day) => isCutForRace(day, races);
  const racing = chosen.some(({ day }) => cutOn(day));
  const planned = plannedStep({
    state,
    step,
    rest,
    guardKg,
    size,
    rules,
    mayDo: who.mayDo,
    sessionsAWeek,
    monday,
    // A week in which one session prepares a race goes no step on.
    kind: racing ? "race week" : kind,
    marathonDays,
    liftedSince: step.lastDay > firstDay - (marathonDays ?? 0),
  });
  const byHand = change.block !== undefined || change.loadKg !== undefined;
  const bar = (kg: number) => barLoad(kg, step.barKg, step.loadKg, plates);
  const block = change.block ?? planned.block;
  const first = bar(change.loadKg ?? planned.loadKg);
  const { loadKg } = first;
  const bySession = rules.stepBySession >= 0.5;
  const steps = sessionSteps({
    ...size,
    block,
    loadKg,
    guardKg,
    resetShare: rules.resetShare,
    count: chosen.length,
    stepEach: bySession && planned.ready && !byHand,
  });
  const halved = (sets: number) => (planned.halfSets ? Math.max(1, Math.ceil(sets / 2)) : sets);
  const setsOf = (one: Block, day: Day) => {
    const sets = halved(one.sets);
    return change.sets ?? (cutOn(day) ? raceWeekSets(sets, rules.raceWeekSets) : sets);
  };
  // Who comes back lands less, too, not only lifts less.
  const eased =
    rest !== null ||
    marathonDays !== null ||
    state.soreness !== null ||
    state.unwellDay !== null ||
    state.lastWord === "well below usual";
  const sessionOf = sessionProposer({
    ...given,
    races,
    step,
    size,
    toldGuardKg: toldGuardOf(state, step),
    cutOn,
    eased,
    mayOn,
    setsOf,
    bar,
  });
  // A day set by hand comes first and may lie after the other: steps go by day.
  const before = (day: Day) => chosen.filter((one) => one.day < day).length;
  const sessions = chosen.map((one) => sessionOf(one, steps[before(one.day)]!));
  const cut = sessions.find(({ day }) => cutOn(day));
  const reasons = [
    ...swapReasons(sessions, who),
    ...planned.reasons,
    ...first.reasons,
    ...(cut
      ? cutReasons(halved(block.sets), cut, kind === "race week" ? null : raceNear(cut.day, races))
      : []),
    ...((eased || racing) && change.contacts === undefined ? contactReasons(sessions) : []),
    ...otherwiseReasons(sessions),
    ...dayReasons(days, wanted, usualDays),
    ...dropReasons(sessions),
    ...stateReasons(state, who),
  ];
  return {
    ...base,
    not: null,
    sessions,
    reasons,
    odd:
      state.word === "slipping" ||
      who.mayDo !== "full" ||
      rest !== null ||
      state.soreness !== null ||
      state.unwellDay !== null ||
      step.movedWell === false ||
      // Where nobody's movement is written down, it is said once for all.
      (step.movedWell === null && state.movementKept) ||
      state.lastWord === "well below usual",
  };
}
