import { type NotProposed, type WhoMay, whoMay } from "../availability/who-may";
import { type Block, isSame } from "../blocks/block";
import { type Ladder, ladder } from "../blocks/ladder";
import { plateStepKg, platesASide, roundDownToPlates } from "../blocks/plate-loading";
import { mostReps } from "../blocks/repetition-load";
import { restartAfter } from "../blocks/restart";
import { type Day, weekdayOfDay } from "../calendar/day";
import { racesOf } from "../diary/races-of";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";
import type { Race } from "../record/race";
import type { SquadRows } from "../record/squad-rows";
import { type DayChoice, type GymDays, gymDays } from "../season/gym-days";
import { daysSinceMarathon, type WeekKind, weekKind } from "../season/race-hours";
import { raceWeekSets } from "../season/race-week-sets";
import type { AthleteState } from "./athlete-state";
import { type DayBand, dayBands } from "./day-bands";
import { type DropHeight, dropHeight } from "./drop-height";
import { type JumpPlan, jumpPlan } from "./jump-plan";
import type { LineReason } from "./line-reason";
import { type OutlookWeek, outlook } from "./outlook";
import { guardOf, plannedStep } from "./planned-step";
import { type PresentStep, presentStep } from "./present-step";
import { type SessionItem, sessionPlan } from "./session-plan";

export type { LineReason };

/** One gym session proposed. */
export type ProposedSession = {
  readonly day: Day;
  readonly minute: number;
  readonly block: Block;
  readonly sets: number;
  readonly reps: number;
  readonly loadKg: number;
  readonly barKg: number;
  readonly plates: readonly number[];
  readonly markerKg: number | null;
  /** m/s; two repetitions under it end the set. */
  readonly speedFloor: number | null;
  readonly stackKg: readonly number[];
  readonly stackCm: number | null;
  readonly contacts: number;
  /** How the contacts are spent: hops, drop jumps, box jumps. */
  readonly jumps: Pick<JumpPlan, "hops" | "dropJumps" | "boxJumps">;
  /** The session in its order, with what was swapped and why. */
  readonly items: readonly SessionItem[];
  /** Where drop jumps start from. */
  readonly drop: DropHeight;
  readonly bands: readonly DayBand[];
  /** What the marker usually moves at, m/s; null when not known. */
  readonly usualMarkerSpeed: number | null;
  readonly reserve: number | null;
  /** Hours from the session to the athlete's next race; null without one in three weeks. */
  readonly hoursToRace: number | null;
};

export type ProposedLine = {
  readonly athlete: string;
  readonly who: WhoMay;
  readonly not: NotProposed | "no-sets-yet" | "no-day" | null;
  readonly kind: WeekKind;
  readonly exercise: string;
  readonly sessions: readonly ProposedSession[];
  readonly reasons: readonly LineReason[];
  readonly days: GymDays | null;
  readonly ahead: Ladder | null;
  /** Four weeks from the proposed one, if all goes well; empty when nothing is proposed. */
  readonly outlook: readonly OutlookWeek[];
  readonly step: PresentStep | null;
  /** Worth reading before writing. */
  readonly odd: boolean;
};

/** A coach's own wish for a line; what is left out stays as proposed. */
export type LineChange = {
  readonly block?: Block;
  readonly sets?: number;
  readonly loadKg?: number;
  readonly day?: Day;
  readonly contacts?: number;
  readonly stackKg?: readonly number[];
};

const usualPlates: readonly Plate[] = [25, 20, 15, 10, 5, 2.5, 1.25].map((massKg) => ({
  row: 0,
  massKg,
  thicknessCm: 0,
  owned: null,
}));

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
  const step = presentStep(rows.sets, name, asOf, setsOn);
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
  const nothing = (not: NonNullable<ProposedLine["not"]>): ProposedLine => ({
    ...base,
    not,
    sessions: [],
    reasons: [{ code: not, facts: {} }, ...dayReasons(days, wanted, step?.weekdays ?? [])],
    ahead: null,
    outlook: [],
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const plates = rows.plates.length > 0 ? rows.plates : usualPlates;
  const stepKg = plateStepKg(plates) || 2.5;
  const smallStep = Math.max(stepKg, 2.5);
  const guardKg = guardOf(state, step);
  const rest = restartAfter(firstDay - step.lastDay, sessionsAWeek);
  const largestStep = athlete?.experience === "novice" ? rules.noviceStep : rules.largestStep;
  const planned = plannedStep({
    state,
    step,
    rest,
    guardKg,
    smallStep,
    rules,
    mayDo: who.mayDo,
    sessionsAWeek,
    monday,
    kind,
    largestStep,
    marathonDays: daysSinceMarathon(firstDay, races, rules),
  });
  const block = change.block ?? planned.block;
  const wantedKg = change.loadKg ?? planned.loadKg;
  const rounded = roundDownToPlates(wantedKg, step.barKg, plates);
  // Nothing lighter than the bar exists on it; a bar not lifted before is not proposed as a rise.
  const loadKg = rounded.ok ? rounded.value : Math.min(step.barKg, step.loadKg);
  const halved = planned.halfSets ? Math.max(1, Math.ceil(block.sets / 2)) : block.sets;
  const sets =
    change.sets ?? (kind === "race week" ? raceWeekSets(halved, rules.raceWeekSets) : halved);
  const chosen: readonly DayChoice[] =
    change.day === undefined
      ? days.best
      : [
          days.all.find(({ day }) => day === change.day) ?? days.all[0]!,
          ...days.best.filter(({ day }) => Math.abs(day - change.day!) >= 2).slice(0, wanted - 1),
        ];
  const eased =
    kind === "race week" || state.soreness !== null || state.lastWord === "well below usual";
  const jumpsOn = (day: Day) => {
    const { stackKg, stackCm, contacts, ...jumps } = jumpPlan({
      experience: athlete?.experience ?? null,
      noJumps: mayOn(day).noJumps,
      eased,
      state,
      plates,
      wished: change,
    });
    return { stackKg, stackCm, contacts, jumps };
  };
  const usual = step.markerKg === null ? null : state.usualSpeed(step.markerKg);
  const floorFrom = state.usualSpeed(loadKg);
  const side = platesASide(loadKg, step.barKg, plates);
  const drop = dropHeight(rows.jumps, name, asOf, athlete?.experience ?? null, plates);
  const itemsOn = (day: Day, { jumps }: Pick<ProposedSession, "jumps">) =>
    sessionPlan({
      lift: step.exercise,
      sets,
      reps: block.reps,
      loadKg,
      markerKg: step.markerKg,
      jumps,
      noJumps: mayOn(day).noJumps,
      raceWeek: kind === "race week",
      state,
      notAvailable: [],
    });
  const sessions = chosen.map(({ day, minute }) => ({
    day,
    minute,
    block,
    sets,
    reps: block.reps,
    loadKg,
    barKg: step.barKg,
    plates: side.ok ? side.value : [],
    markerKg: step.markerKg,
    speedFloor: floorFrom === null ? null : floorFrom * (1 - rules.velocityLossCap),
    ...jumpsOn(day),
    items: itemsOn(day, jumpsOn(day)),
    drop,
    usualMarkerSpeed: usual,
    bands: usual === null ? [] : dayBands(loadKg, usual, smallStep),
    reserve: guardKg === null ? null : mostReps(loadKg / guardKg) - block.reps,
    hoursToRace: hoursToNextRace(day, minute, races),
  }));
  const cut: LineReason[] =
    kind === "race week" && sets < block.sets
      ? [{ code: "race-week", facts: { from: block.sets, to: sets } }]
      : [];
  const reasons = [
    ...planned.reasons,
    ...cut,
    ...dayReasons(days, wanted, step?.weekdays ?? []),
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
    ahead: ladder({ block, loadKg, guardKg, stepKg: smallStep, largestStep }),
    outlook: outlook({
      monday,
      block,
      loadKg,
      guardKg,
      stepKg: smallStep,
      largestStep,
      weeksHeld: isSame(block, step.block) && loadKg === step.loadKg ? step.weeksHeld : 0,
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

/**
 * The days a coach may have expected and the rule each breaks: the athlete's usual gym days, else the
 * first day that would have stood well apart from the one proposed.
 */
function dayReasons(
  days: GymDays | null,
  wanted: number,
  weekdays: readonly number[],
): LineReason[] {
  if (!days || days.best.length >= wanted) return [];
  const expected = weekdays.slice(0, mostSessions);
  const refused = days.all.flatMap(({ day, refused: rule }) =>
    rule?.code === "before-race" && days.best.every((one) => Math.abs(one.day - day) >= 2)
      ? [{ day, rule }]
      : [],
  );
  const usual = refused.filter(({ day }) => expected.includes(weekdayOfDay(day)));
  return (usual.length > 0 ? usual : refused.slice(0, 1)).map(({ day, rule }) => ({
    code: "day-before-race",
    facts: {
      day,
      hours: Math.floor(rule.hours),
      race: rule.race.race,
      matters: rule.race.matters ?? "C",
      limit: rule.limit,
    },
  }));
}

function hoursToNextRace(day: Day, minute: number, races: readonly Race[]): number | null {
  const at = day * 24 + minute / 60;
  const ahead = races
    .map((race) => race.day * 24 + (race.startMinute ?? 0) / 60 - at)
    .filter((hours) => hours > 0 && hours <= 21 * 24);
  return ahead.length === 0 ? null : Math.min(...ahead);
}
