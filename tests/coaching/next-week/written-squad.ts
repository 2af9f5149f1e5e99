import type { Block } from "../../../src/coaching/blocks/block";
import { type Day, dayFromIso } from "../../../src/coaching/calendar/day";
import type { StepRows } from "../../../src/coaching/next-week/present-step/present-step";
import type { LiftState, StateOnLift } from "../../../src/coaching/next-week/state/athlete-state";
import type { Athlete } from "../../../src/coaching/record/athlete";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import type { Plate } from "../../../src/coaching/record/plate";
import type { Race } from "../../../src/coaching/record/race";
import type { Run, RunKind } from "../../../src/coaching/record/run";
import type { SquadRows } from "../../../src/coaching/record/squad-rows";
import { usualRules } from "../../../src/coaching/record/squad-rules";

export const day = (iso: string): Day => {
  const found = dayFromIso(iso);
  if (found === null) throw new Error(`no day ${iso}`);
  return found;
};

/** The gym's plates: mass kg, thickness cm, number owned. */
export const plates: readonly Plate[] = (
  [
    [25, 4.5, 4],
    [20, 4.3, 10],
    [15, 3.6, 6],
    [10, 2.9, 6],
    [5, 2.2, 6],
    [2.5, 1.6, 6],
    [1.25, 1.2, 6],
  ] as const
).map(([massKg, thicknessCm, owned], i) => ({ row: i + 2, massKg, thicknessCm, owned }));

export const athlete = (name: string, over: Partial<Athlete> = {}): Athlete => ({
  row: 2,
  athlete: name,
  group: "track",
  event: "5000 m",
  experience: "trained",
  birthYear: 1999,
  under18: null,
  supervisor: "",
  supervisorFrom: null,
  baselineFrom: null,
  baselineTo: null,
  sessionsAWeek: 2,
  notes: "",
  ...over,
});

/** One evening session at 18:00: a marker, then so many equal work sets. */
export function session(
  name: string,
  iso: string,
  { sets, reps, loadKg, markerKg }: Record<"sets" | "reps" | "loadKg" | "markerKg", number>,
  over: Partial<LiftingSet> = {},
): LiftingSet[] {
  const one = (kind: LiftingSet["kind"], kg: number, count: number, set: number | null) => ({
    row: 2,
    day: day(iso),
    minute: 18 * 60,
    athlete: name,
    exercise: "back squat",
    set,
    kind,
    reps: count,
    loadKg: kg,
    repSpeeds: [],
    setSpeed: null,
    setSpeedIs: null,
    speedIs: "mean" as const,
    tool: "bar tool A",
    barKg: 20,
    gym: "Quillbeck gym",
    movedWell: kind === "work" ? true : null,
    repsInReserve: kind === "work" ? 3 : null,
    by: "MG",
    note: "",
    ...(kind === "work" && over),
  });
  return [
    one("marker", markerKg, 3, null),
    ...Array.from({ length: sets }, (_, i) => one("work", loadKg, reps, i + 1)),
  ];
}

export const race = (iso: string, hour: number, over: Partial<Race> = {}): Race => ({
  row: 2,
  day: day(iso),
  startMinute: hour * 60,
  race: "R2",
  who: "all",
  distanceKm: 10,
  surface: "road",
  matters: "A",
  ...over,
});

/** The club's week: intervals Tuesday, tempo Thursday, long run Sunday, all in the morning. */
export const clubRuns = (name: string, monday: Day): Run[] =>
  (
    [
      [1, "interval"],
      [3, "race pace"],
      [6, "long"],
    ] as const satisfies readonly (readonly [number, RunKind])[]
  ).map(([weekday, kind]) => ({
    row: 2,
    day: monday + weekday,
    minute: 7 * 60,
    athlete: name,
    kind,
    minutes: 50,
    exertion: 8,
    km: 10,
  }));

export const squadRows = (over: Partial<SquadRows>): SquadRows => ({
  athletes: [],
  availability: [],
  sets: [],
  jumps: [],
  diary: [],
  runs: [],
  races: [],
  plates,
  rules: usualRules,
  ...over,
});

/** What is known of an athlete; of every lift the same, unless it is said of each. */
export const state = (name: string, over: Partial<StateOnLift> = {}): StateOnLift => {
  const ofLift: LiftState = {
    heldSpeed: over.heldSpeed === undefined ? true : over.heldSpeed,
    usualSpeed: over.usualSpeed ?? (() => null),
    usualLead: over.usualLead ?? (() => null),
    recent: over.recent ?? { usualSpeed: () => null, usualLead: () => null },
    otherSetting: over.otherSetting ?? null,
    strengthLowKg: over.strengthLowKg ?? null,
  };
  return {
    athlete: name,
    word: "holding",
    sinceDay: null,
    fallen: null,
    lastWord: "as usual",
    ...ofLift,
    ofLift: () => ofLift,
    jumpWord: null,
    lastStackKg: [],
    lastJumpCm: null,
    missedBoxes: [],
    isBoxLowered: false,
    movementKept: true,
    soreness: null,
    unwellDay: null,
    absences: [],
    ...over,
  };
};

/** Repetitions of all sets together. */
export const inAll = ({ sets, reps }: Block): number => sets * reps;

/** A load's usual speed, and an ordinary day's slowest 0.06 m/s under it. */
export const movesAt = (speed: (kg: number) => number) => ({
  usualSpeed: speed,
  usualLead: (_kind: "marker" | "work", kg: number) => ({
    usual: speed(kg),
    low: speed(kg) - 0.06,
  }),
});

/** What a step is read from, in a season of 18 weeks in which no day asks for less. */
export const stepRows = (
  over: Partial<StepRows> & Pick<StepRows, "sets" | "athlete" | "asOf">,
): StepRows => ({
  plannedSets: ({ sets }) => sets,
  seasonDays: 126,
  barKg: 20,
  about: null,
  lessOn: () => null,
  plannedFor: () => null,
  ...over,
});
