import { type NotProposed, type WhoMay, whoMay } from "../availability/who-may";
import { type Block, isSame } from "../blocks/block";
import { type Ladder, ladder } from "../blocks/ladder";
import { type NextBlockReason, nextBlock } from "../blocks/next-block";
import { plateStepKg, platesASide, roundDownToPlates } from "../blocks/plate-loading";
import { mostReps, singleFromSet } from "../blocks/repetition-load";
import { type Restart, restartAfter } from "../blocks/restart";
import type { Day } from "../calendar/day";
import { racesOf } from "../diary/races-of";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";
import type { Race } from "../record/race";
import type { SquadRows } from "../record/squad-rows";
import { type DayChoice, type GymDays, gymDays } from "../season/gym-days";
import { type WeekKind, weekKind } from "../season/race-hours";
import { raceWeekSets } from "../season/race-week-sets";
import type { AthleteState } from "./athlete-state";
import { type DayBand, dayBands } from "./day-bands";
import { contactBands } from "./exercise-list";
import { type PresentStep, presentStep } from "./present-step";

/** Why a line says what it says: a code and facts, in the order a coach reads them. */
export type LineReason = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
};

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
  readonly bands: readonly DayBand[];
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
  const wanted = Math.min(2, Math.max(1, athlete?.sessionsAWeek ?? 2));
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
        });
  const firstDay = change.day ?? days?.best[0]?.day ?? monday;
  const who = whoMay(athlete, name, rows.availability, firstDay);
  const base = { athlete: name, who, kind, exercise: step?.exercise ?? "", days, step };
  const nothing = (not: NonNullable<ProposedLine["not"]>): ProposedLine => ({
    ...base,
    not,
    sessions: [],
    reasons: [{ code: not, facts: {} }, ...dayReasons(days, wanted)],
    ahead: null,
    odd: not !== "out",
  });
  if (who.not !== null) return nothing(who.not);
  if (step === null || days === null) return nothing("no-sets-yet");
  if (days.best.length === 0 && change.day === undefined) return nothing("no-day");

  const plates = rows.plates.length > 0 ? rows.plates : usualPlates;
  const stepKg = plateStepKg(plates) || 2.5;
  const smallStep = Math.max(stepKg, 2.5);
  const guardKg = guardOf(state, step);
  const rest = restartAfter(firstDay - step.lastDay, athlete?.sessionsAWeek ?? 2);
  const planned = plan({ state, step, rest, guardKg, smallStep, rules, who });
  const block = change.block ?? planned.block;
  const wantedKg = change.loadKg ?? planned.loadKg;
  const rounded = roundDownToPlates(wantedKg, step.barKg, plates);
  const loadKg = rounded.ok ? rounded.value : wantedKg;
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
  const jumps = jumpPlan(state, athlete, who, plates, kind, change);
  const usual = step.markerKg === null ? null : state.usualSpeed(step.markerKg);
  const floorFrom = state.usualSpeed(loadKg);
  const side = platesASide(loadKg, step.barKg, plates);
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
    ...jumps,
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
    ...dayReasons(days, wanted),
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
    ahead: ladder({ block, loadKg, guardKg, stepKg: smallStep, largestStep: rules.largestStep }),
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
 * The strength a step is guarded by: the cautious end of the estimate, or without one what the sets'
 * own repetitions in reserve say by the repetition table. It never raises a load.
 */
function guardOf(state: AthleteState, step: PresentStep): number | null {
  if (state.strengthLowKg !== null) return state.strengthLowKg;
  if (step.reserveSeen === null) return null;
  const single = singleFromSet(
    step.loadKg,
    Math.min(10, step.block.reps + Math.floor(step.reserveSeen)),
  );
  return single.ok ? single.value : null;
}

type Plan = {
  readonly block: Block;
  readonly loadKg: number;
  readonly halfSets: boolean;
  readonly reasons: readonly LineReason[];
};

function plan(given: {
  readonly state: AthleteState;
  readonly step: PresentStep;
  readonly rest: Restart | null;
  readonly guardKg: number | null;
  readonly smallStep: number;
  readonly rules: SquadRows["rules"];
  readonly who: WhoMay;
}): Plan {
  const { state, step, rest, guardKg, smallStep, rules, who } = given;
  const hold = (code: string, facts: LineReason["facts"] = {}): Plan => ({
    block: step.block,
    loadKg: guarded(step.block, step.loadKg, guardKg, smallStep),
    halfSets: false,
    reasons: [{ code, facts }],
  });
  if (rest) {
    return {
      block: step.block,
      loadKg: step.loadKg * (1 - rest.off),
      halfSets: rest.halfSets,
      reasons: [{ code: "restart", facts: { days: rest.daysOff, percent: 100 * rest.off } }],
    };
  }
  const cameBack = step.gapBefore !== null && step.gapBefore >= 14 && step.loadKg < step.earlierKg;
  if (cameBack) {
    return {
      block: step.block,
      loadKg: Math.min(step.earlierKg * 0.9, step.loadKg * 1.1),
      halfSets: false,
      reasons: [{ code: "second-week-back", facts: { before: step.earlierKg } }],
    };
  }
  if (state.word === "slipping") return hold("slipping-held");
  if (who.mayDo === "modified" || who.mayDo === "cleared")
    return hold("modified-held", { mayDo: who.mayDo });
  if (state.lastWord === "well below usual") return hold("last-well-below");
  const gates = {
    movedWell: step.movedWell,
    volumeDone: step.volumeDone,
    // Without a bar speed the step rests on quality and volume; a lost pattern still holds it.
    heldSpeed: state.heldSpeed ?? true,
  };
  const ready = gates.movedWell === true && gates.volumeDone === true && gates.heldSpeed;
  if (ready && step.weeksHeld < rules.holdWeeks) {
    return hold("hold-week", { week: step.weeksHeld + 1, of: rules.holdWeeks });
  }
  const stepFits = smallStep / step.loadKg <= rules.largestStep + 1e-9;
  const next = nextBlock({
    block: step.block,
    loadKg: step.loadKg,
    ...gates,
    strengthKg: guardKg,
    stepKg: smallStep,
  });
  if (!next.ok) return hold("reserve-short");
  const reason: NextBlockReason = next.value.reason;
  const tooLarge = next.value.loadKg > step.loadKg && !stepFits;
  const loadKg = tooLarge ? step.loadKg : next.value.loadKg;
  // Planned backwards: a ladder whose last step would leave too little begins lower or climbs less.
  const whole = ladder({
    block: next.value.block,
    loadKg,
    guardKg,
    stepKg: smallStep,
    largestStep: rules.largestStep,
  });
  const first = whole.steps[0];
  const backwards =
    first && whole.lowered === "start" && first.loadKg < loadKg
      ? [{ code: "planned-backwards", facts: { kg: first.loadKg } }]
      : [];
  return {
    block: next.value.block,
    loadKg: Math.min(loadKg, first?.loadKg ?? loadKg),
    halfSets: false,
    reasons: [
      {
        code: tooLarge ? "step-too-coarse" : reason,
        facts: {
          fromKg: step.loadKg,
          toKg: loadKg,
          sameBlock: isSame(step.block, next.value.block) ? 1 : 0,
        },
      },
      ...backwards,
    ],
  };
}

/** The load, or less of it where two repetitions would not stay in reserve. */
function guarded(block: Block, loadKg: number, guardKg: number | null, stepKg: number): number {
  if (guardKg === null) return loadKg;
  let kg = loadKg;
  while (kg > stepKg && mostReps(kg / guardKg) - block.reps < 2) kg -= stepKg;
  return kg;
}

function jumpPlan(
  state: AthleteState,
  athlete: Athlete | null,
  who: WhoMay,
  plates: readonly Plate[],
  kind: WeekKind,
  change: LineChange,
): Pick<ProposedSession, "stackKg" | "stackCm" | "contacts"> {
  if (who.noJumps) return { stackKg: [], stackCm: null, contacts: 0 };
  const band = contactBands[athlete?.experience === "novice" ? "novice" : "trained"];
  const eased =
    kind === "race week" || state.soreness !== null || state.lastWord === "well below usual";
  const contacts = change.contacts ?? (eased ? Math.round(band.least / 2) : band.least);
  const last = change.stackKg ?? state.lastStackKg;
  if (last.length === 0) return { stackKg: [], stackCm: state.lastJumpCm, contacts };
  const smallest = Math.min(
    ...plates.map(({ massKg }) => massKg).filter((massKg) => massKg >= 2.5),
  );
  const rising = change.stackKg === undefined && state.jumpWord === "rising";
  return { stackKg: rising ? [...last, smallest] : last, stackCm: null, contacts };
}

/** The days a coach may have expected and the rule each breaks. */
function dayReasons(days: GymDays | null, wanted: number): LineReason[] {
  if (!days || days.best.length >= wanted) return [];
  return days.all.flatMap(({ day, refused }) =>
    refused?.code === "before-race"
      ? [
          {
            code: "day-before-race",
            facts: {
              day,
              hours: Math.floor(refused.hours),
              race: refused.race.race,
              matters: refused.race.matters ?? "C",
              limit: refused.limit,
            },
          },
        ]
      : [],
  );
}

function hoursToNextRace(day: Day, minute: number, races: readonly Race[]): number | null {
  const at = day * 24 + minute / 60;
  const ahead = races
    .map((race) => race.day * 24 + (race.startMinute ?? 0) / 60 - at)
    .filter((hours) => hours > 0 && hours <= 21 * 24);
  return ahead.length === 0 ? null : Math.min(...ahead);
}
