import { whoMay } from "../availability/who-may";
import { type Block, isSame } from "../blocks/block";
import { ladder } from "../blocks/ladder";
import { plateStepKg } from "../blocks/plate-loading";
import { mostReps } from "../blocks/repetition-load";
import { restartAfter } from "../blocks/restart";
import { stepSizeOf } from "../blocks/step-size";
import type { Day } from "../calendar/day";
import { racesOf } from "../diary/races-of";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Race } from "../record/race";
import type { SquadRows } from "../record/squad-rows";
import { type DayChoice, gymDays } from "../season/gym-days";
import { daysSinceMarathon, weekKind } from "../season/race-hours";
import { raceWeekSets } from "../season/race-week-sets";
import { assistanceLoad } from "./assistance-load";
import type { AthleteState } from "./athlete-state";
import { barLoad } from "./bar-load";
import { dayBands } from "./day-bands";
import { dayReasons } from "./day-reasons";
import { dropHeight } from "./drop-height";
import type { Missing } from "./exercise-list";
import { jumpPlan } from "./jump-plan";
import type { LineReason } from "./line-reason";
import { otherwiseReasons, swapReasons } from "./line-reasons";
import { outlook } from "./outlook";
import { guardOf, plannedStep } from "./planned-step";
import { presentStep } from "./present-step";
import type { LineChange, ProposedLine, ProposedSession } from "./proposed-line";
import { sessionPlan } from "./session-plan";
import { sessionSteps } from "./session-steps";
import { usualPlates } from "./usual-plates";

export type { LineChange, LineReason, ProposedLine, ProposedSession };

/** Gym sessions of a week at most, in a racing season (common practice, no source). */
const mostSessions = 2;
/** Weeks a coach is shown where an athlete would be. */
const weeksAhead = 4;

/** Next week's sets for one athlete, with every reason. */
export function proposeLine(given: {
  readonly athlete: Athlete | null;
  readonly name: string;
  readonly state: AthleteState;
  readonly rows: SquadRows;
  readonly monday: Day;
  readonly asOf: Day;
  readonly change?: LineChange;
}): ProposedLine {
  const { athlete, name, state, rows, monday, asOf, change = {} } = given;
  const { rules } = rows;
  const races = racesOf(rows.races, name, athlete);
  const kind = weekKind(monday, races);
  const setsOn = (block: Block, day: Day) =>
    weekKind(day, races) === "race week"
      ? raceWeekSets(block.sets, rules.raceWeekSets)
      : block.sets;
  const step = presentStep(rows.sets, name, asOf, setsOn, 7 * rules.seasonWeeks);
  const runs = rows.runs.filter((run) => nameKey(run.athlete) === nameKey(name));
  const mayOn = (day: Day) => whoMay(athlete, name, rows.availability, day);
  const sessionsAWeek = athlete?.sessionsAWeek ?? 2;
  const wanted = Math.min(mostSessions, Math.max(1, sessionsAWeek));
  const days =
    step === null
      ? null
      : gymDays({
          monday,
          wanted,
          runs: runs.filter(({ day }) => day >= monday - 1 && day <= monday + 7),
          races,
          usualWeekdays: step.weekdays,
          minute: step.minute,
          rules,
          mayLift: (day) => mayOn(day).not === null,
        });
  const allowed = days?.all.find(({ refused }) => refused?.code !== "may-not-lift");
  const firstDay = change.day ?? days?.best[0]?.day ?? allowed?.day ?? monday;
  const who = mayOn(firstDay);
  const base = { athlete: name, who, kind, exercise: step?.exercise ?? "", days, step };
  const usualDays = (step?.weekdays ?? []).slice(0, mostSessions);
  const nothing = (not: NonNullable<ProposedLine["not"]>): ProposedLine => ({
    ...base,
    not,
    sessions: [],
    reasons: [{ code: not, facts: {} }, ...dayReasons(days, wanted, usualDays)],
    ahead: null,
    outlook: [],
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const plates = rows.plates.length > 0 ? rows.plates : usualPlates;
  const size = stepSizeOf(athlete, rules, Math.max(plateStepKg(plates) || 2.5, 2.5));
  const guardKg = guardOf(state, step);
  const rest = restartAfter(firstDay - step.lastDay, sessionsAWeek);
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
    kind,
    marathonDays: daysSinceMarathon(firstDay, races, rules),
  });
  const byHand = change.block !== undefined || change.loadKg !== undefined;
  const bar = (kg: number) => barLoad(kg, step.barKg, step.loadKg, plates);
  const block = change.block ?? planned.block;
  const first = bar(change.loadKg ?? planned.loadKg);
  const { loadKg } = first;
  const chosen: readonly DayChoice[] =
    change.day === undefined
      ? days.best
      : [
          days.all.find(({ day }) => day === change.day) ?? days.all[0]!,
          ...days.best.filter(({ day }) => Math.abs(day - change.day!) >= 2).slice(0, wanted - 1),
        ];
  const held = isSame(block, step.block) && loadKg === step.loadKg ? step.weeksHeld : 0;
  const bySession = rules.stepBySession >= 0.5;
  const steps = sessionSteps({
    ...size,
    block,
    loadKg,
    guardKg,
    resetShare: rules.resetShare,
    count: chosen.length,
    stepEach: bySession && planned.ready && kind !== "race week" && !byHand,
  });
  const setsOf = (one: Block) => {
    const halved = planned.halfSets ? Math.max(1, Math.ceil(one.sets / 2)) : one.sets;
    return (
      change.sets ?? (kind === "race week" ? raceWeekSets(halved, rules.raceWeekSets) : halved)
    );
  };
  const eased =
    kind === "race week" || state.soreness !== null || state.lastWord === "well below usual";
  // Without a table of plates heights are not known: the stack stays the last one cleared.
  const jumpsOn = (day: Day) =>
    jumpPlan({
      experience: athlete?.experience ?? null,
      noJumps: mayOn(day).noJumps,
      eased,
      state,
      plates: rows.plates,
      wished: change,
    });
  const drop = dropHeight(rows.jumps, name, asOf, athlete?.experience ?? null, rows.plates);
  const listed = rows.plates.length > 0;
  const noRack = change.noRack === true || rules.racks < 0.5;
  const sessions = chosen.map(({ day, minute }, at): ProposedSession => {
    const { block: sessionBlock, loadKg: wantedKg, otherwise } = steps[at]!;
    const { loadKg: kg, plates: side } = bar(wantedKg);
    const { stackKg, stackCm, contacts, ...jumps } = jumpsOn(day);
    const missing: readonly Missing[] = [
      ...mayOn(day).limits,
      ...(noRack ? ["rack" as const] : []),
    ];
    const boxKnown = state.lastStackKg.length > 0;
    const items = sessionPlan({
      lift: step.exercise,
      sets: setsOf(sessionBlock),
      reps: sessionBlock.reps,
      loadKg: kg,
      markerKg: step.markerKg,
      jumps,
      noJumps: mayOn(day).noJumps,
      raceWeek: kind === "race week",
      state,
      notAvailable: [],
      missing,
      noPlates: [
        ...(listed && drop.stackKg.length === 0 ? ["plate-to-plate drop jump"] : []),
        ...(listed && boxKnown && stackKg.length === 0 ? ["straight-leg box jump"] : []),
      ],
      lastLoad: (exercise) => assistanceLoad(rows.sets, name, exercise, asOf),
    });
    const main = items.find((item) => item.kind === "main lift");
    const instead = main?.insteadOf ? main : null;
    const markerKg = instead ? null : step.markerKg;
    const usual = markerKg === null ? null : state.usualSpeed(markerKg);
    const floorFrom = instead ? null : state.usualSpeed(kg);
    return {
      day,
      minute,
      block: sessionBlock,
      sets: setsOf(sessionBlock),
      reps: sessionBlock.reps,
      loadKg: kg,
      barKg: step.barKg,
      plates: instead ? [] : side,
      instead,
      otherwise:
        instead || otherwise === null
          ? null
          : { ...otherwise, loadKg: bar(otherwise.loadKg).loadKg },
      markerKg,
      speedFloor: floorFrom === null ? null : floorFrom * (1 - rules.velocityLossCap),
      stackKg,
      stackCm,
      contacts,
      jumps,
      // The marker is a lift of the bar: with another exercise in its place there is none.
      items: instead ? items.filter((item) => item.kind !== "marker") : items,
      drop,
      usualMarkerSpeed: usual,
      lowMarkerSpeed: markerKg === null ? null : (state.lowSpeed?.(markerKg) ?? null),
      bands: usual === null ? [] : dayBands(kg, usual, size.stepKg, rules.loadDrop),
      reserve: guardKg === null || instead ? null : mostReps(kg / guardKg) - sessionBlock.reps,
      hoursToRace: hoursToNextRace(day, minute, races),
    };
  });
  const sets = setsOf(block);
  const cut: LineReason[] =
    kind === "race week" && sets < block.sets
      ? [{ code: "race-week", facts: { from: block.sets, to: sets } }]
      : [];
  const reasons = [
    ...swapReasons(sessions, who),
    ...planned.reasons,
    ...first.reasons,
    ...cut,
    ...otherwiseReasons(sessions),
    ...dayReasons(days, wanted, usualDays),
    ...(who.noJumps ? [{ code: "no-jumps", facts: { site: who.site } }] : []),
    ...(state.soreness
      ? [{ code: "sore", facts: { value: state.soreness.value, day: state.soreness.day } }]
      : []),
    ...(state.lastWord === "above usual" ? [{ code: "above-usual", facts: {} }] : []),
  ];
  return {
    ...base,
    not: null,
    sessions,
    reasons,
    ahead: ladder({ block, loadKg, guardKg, ...size }),
    outlook: outlook({
      monday,
      block,
      loadKg,
      guardKg,
      ...size,
      weeksHeld: held,
      firstTurn: step.firstTurn && isSame(block, step.block),
      sessionsAWeek: wanted,
      holding: state.word === "slipping" || who.mayDo !== "full",
      races,
      rules,
      weeks: weeksAhead,
    }),
    odd:
      state.word === "slipping" ||
      who.mayDo !== "full" ||
      rest !== null ||
      state.soreness !== null ||
      step.movedWell !== true ||
      state.lastWord === "well below usual",
  };
}

function hoursToNextRace(day: Day, minute: number, races: readonly Race[]): number | null {
  const at = day * 24 + minute / 60;
  const ahead = races
    .map((race) => race.day * 24 + (race.startMinute ?? 0) / 60 - at)
    .filter((hours) => hours > 0 && hours <= 21 * 24);
  return ahead.length === 0 ? null : Math.min(...ahead);
}
