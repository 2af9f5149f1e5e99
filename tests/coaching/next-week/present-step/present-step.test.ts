import { dropHeight } from "../../../../src/coaching/next-week/jumps/drop-height";
import { equalPlates } from "../../../../src/coaching/next-week/jumps/drop-stack";
import { barLoad } from "../../../../src/coaching/next-week/next-step/bar-load";
import { sessionSteps } from "../../../../src/coaching/next-week/next-step/session-steps";
import {
  blockOf,
  liftSessions,
} from "../../../../src/coaching/next-week/present-step/lift-session";
import { presentStep } from "../../../../src/coaching/next-week/present-step/present-step";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { jumpAttempt } from "../../series/invented-season";
import { day, plates, session, stepRows } from "../written-squad";

const name = "Ilka Brandmoor";
const asOf = day("2026-06-28");
const step = (sets: readonly LiftingSet[]) =>
  presentStep(stepRows({ sets, athlete: name, asOf, seasonDays: 112 }));
const week = (
  iso: string,
  of: Partial<Record<"sets" | "reps" | "loadKg" | "markerKg", number>> = {},
  over: Partial<LiftingSet> = {},
) => session(name, iso, { sets: 5, reps: 5, loadKg: 70, markerKg: 55, ...of }, over);

test("without a work set with a load there is no present step", () => {
  expect(step([])).toBeNull();
  expect(step(week("2026-06-23", {}, { loadKg: null }))).toBeNull();
  expect(
    step(session("Kofi Anstruther", "2026-06-23", { sets: 3, reps: 5, loadKg: 90, markerKg: 70 })),
  ).toBeNull();
  expect(step(week("2026-07-02"))).toBeNull();
});

test("what rows leave out is taken as usual: the bar, the hour; what is not known stays unknown", () => {
  const bare = week(
    "2026-06-23",
    {},
    { barKg: null, minute: null, repsInReserve: null, movedWell: null },
  );
  const work = bare.filter(({ kind }) => kind === "work");
  expect(step(work)).toMatchObject({
    block: { sets: 5, reps: 5 },
    loadKg: 70,
    barKg: 20,
    minute: 1080,
    movedWell: null,
    volumeDone: true,
    reserveSeen: null,
    markerKg: null,
  });
  expect(step(week("2026-06-23"))).toMatchObject({ markerKg: 55, reserveSeen: 3, minute: 1080 });
});

test("the fewest repetitions left in reserve count, and the lift with work sets on most days, not with markers", () => {
  const [first, ...rest] = week("2026-06-23").filter(({ kind }) => kind === "work");
  expect(step([{ ...first!, repsInReserve: 1 }, ...rest])?.reserveSeen).toBe(1);
  const markers = ["2026-06-18", "2026-06-20", "2026-06-22"].map((iso) => ({
    ...week(iso)[0]!,
    exercise: "deadlift",
  }));
  expect(step([...markers, first!, ...rest])?.exercise).toBe("back squat");
});

test("repetitions are counted from speeds when they are not written, unknown without either", () => {
  const speeds = [0.7, 0.69, 0.68, 0.67, 0.66];
  expect(step(week("2026-06-23", {}, { reps: null, repSpeeds: speeds }))?.volumeDone).toBe(true);
  expect(step(week("2026-06-23", {}, { reps: null, repSpeeds: speeds.slice(2) }))).toMatchObject({
    block: { sets: 5, reps: 3 },
    volumeDone: true,
  });
  expect(step(week("2026-06-23", {}, { reps: null }))?.volumeDone).toBeNull();
  const [first, ...rest] = week("2026-06-23").filter(({ kind }) => kind === "work");
  expect(step([first!, ...rest.map((set) => ({ ...set, reps: 4 }))])?.volumeDone).toBe(false);
  expect(step([first!, ...rest.map((set) => ({ ...set, reps: null }))])?.volumeDone).toBeNull();
});

test("movement is good when all sets were, poor when one was not, unknown when one is not written", () => {
  const marked = (...marks: (boolean | null)[]) =>
    step(
      week("2026-06-23", { sets: marks.length })
        .filter(({ kind }) => kind === "work")
        .map((set, i) => ({ ...set, movedWell: marks[i]! })),
    )?.movedWell;
  expect([marked(true, true), marked(true, false, null), marked(true, null)]).toEqual([
    true,
    false,
    null,
  ]);
});

test("a lift written in another of its names goes on from where it stood", () => {
  const sets = [
    ...week("2026-06-09", { loadKg: 67.5 }, { exercise: "Squat" }),
    ...week("2026-06-16", { loadKg: 67.5 }, { exercise: "Squat" }),
    ...week("2026-06-23", { loadKg: 70 }, { exercise: "High-bar back squat" }),
  ];
  expect(step(sets)).toMatchObject({
    exercise: "High-bar back squat",
    loadKg: 70,
    lastDay: day("2026-06-23"),
    sessions: [{ loadKg: 67.5 }, { loadKg: 67.5 }, { loadKg: 70 }],
  });
});

test("weeks at a step are counted until load or block differ", () => {
  const sets = [
    ...week("2026-06-02", { loadKg: 67.5 }),
    ...week("2026-06-09"),
    ...week("2026-06-16"),
    ...week("2026-06-18"),
    ...week("2026-06-23"),
  ];
  expect(step(sets)).toMatchObject({ weeksHeld: 3, firstTurn: true, lastDay: day("2026-06-23") });
  expect(step([...sets, ...week("2026-06-25", { sets: 3 })])).toMatchObject({
    block: { sets: 3, reps: 5 },
    weeksHeld: 1,
    firstTurn: false,
  });
});

test("a race's week of few sets belongs to the block before it, though the next one has its load", () => {
  const raceWeek = day("2026-06-09");
  const at = (...weeks: readonly (readonly [iso: string, sets: number, loadKg?: number])[]) =>
    presentStep(
      stepRows({
        sets: weeks.flatMap(([iso, sets, loadKg = 50]) => week(iso, { sets, loadKg })),
        athlete: name,
        asOf,
        seasonDays: 112,
        plannedSets: ({ sets }, on) => (on === raceWeek ? Math.min(2, sets) : sets),
      }),
    );
  const few = ["2026-06-09", 2] as const;
  const fives = ["2026-06-02", 5] as const;
  expect(at(fives, few)).toMatchObject({ block: { sets: 5 }, weeksHeld: 2 });
  expect(at(fives, few, ["2026-06-16", 3])).toMatchObject({ block: { sets: 3 }, weeksHeld: 1 });
  expect(at(fives, few, ["2026-06-16", 3], ["2026-06-23", 3])).toMatchObject({ weeksHeld: 2 });
  // Of a block that began in the race's week, at a load of its own, the week is the first.
  expect(at(["2026-06-02", 5, 47.5], few, ["2026-06-16", 3])).toMatchObject({ weeksHeld: 2 });
  expect(at(few, ["2026-06-16", 3])).toMatchObject({ weeksHeld: 2 });
  // A week of few sets within a block is one of its weeks.
  expect(at(["2026-06-02", 3], few, ["2026-06-16", 3])).toMatchObject({ weeksHeld: 3 });
  // Half the sets after time off show no block of their own, and few ones after them begin a week.
  expect(at(["2026-05-12", 5], ["2026-06-02", 3], few)).toMatchObject({
    block: { sets: 5 },
    weeksHeld: 1,
  });
});

test("four sets are of the block before them at their load; done again they are what is asked for", () => {
  const after = (sets: number, ...more: number[]) =>
    step([
      ...week("2026-06-09", { sets }),
      ...more.flatMap((four, at) => week(`2026-06-${16 + 7 * at}`, { sets: four })),
    ]);
  // Three fives and one more, set by hand; five fives with one missed; four fives as ever.
  expect(after(3, 4)).toMatchObject({ block: { sets: 3 }, volumeDone: true, weeksHeld: 2 });
  expect(after(5, 4)).toMatchObject({ block: { sets: 5 }, volumeDone: false, weeksHeld: 2 });
  expect(after(4, 4)).toMatchObject({ block: { sets: 5 }, volumeDone: true, weeksHeld: 2 });
  expect(after(4)).toMatchObject({ volumeDone: false });
  expect(after(5, 4, 3)).toMatchObject({ block: { sets: 3 }, weeksHeld: 1 });
});

test("the last session is the latest day's, wherever its rows stand", () => {
  const rows = [...week("2026-06-23"), ...week("2026-06-16", { loadKg: 67.5 })];
  const now = { lastDay: day("2026-06-23"), loadKg: 70, weeksHeld: 1 };
  expect(step(rows)).toMatchObject(now);
  expect(step([...rows].reverse())).toMatchObject(now);
});

test("a block done so many days ago that it is of no season any more is no turn of this one", () => {
  // The season looks 112 days back from 28 June: to 9 March, the 8th is not of it.
  const turn = (iso: string) => step([...week(iso, { sets: 3 }), ...week("2026-06-23")])!.firstTurn;
  expect([turn("2026-03-08"), turn("2026-03-09")]).toEqual([true, false]);
});

/** One work set on so many days, a week apart, from a date on. */
const weekly = (iso: string, count: number, over: Partial<LiftingSet> = {}) =>
  Array.from({ length: count }, (_, at) => {
    const [, work] = week(iso, { sets: 1 }, over);
    return { ...work!, day: day(iso) + 7 * at };
  });

test("the usual weekdays are those of the last twelve sessions, most used first", () => {
  // Twenty Mondays, then seven Tuesdays and five Thursdays, a Thursday first.
  const mondays = weekly("2025-11-03", 20);
  const since = [...weekly("2026-04-30", 5), ...weekly("2026-05-05", 7)];
  expect(step([...mondays, ...since])!.weekdays).toEqual([1, 3]);
  expect(step([...mondays.slice(0, 3), ...since.slice(0, 2)])!.weekdays).toEqual([0, 3]);
});

test("the usual hour is that of the last forty sets", () => {
  const early = { minute: 420 };
  const rows = (count: number) => [
    ...weekly("2024-01-02", 70, early),
    ...weekly("2025-05-27", count),
  ];
  expect([rows(21), rows(19)].map((sets) => step(sets)!.minute)).toEqual([1080, 420]);
});

test.each([
  [5, 5, 5, 5],
  [3, 5, 3, 5],
  [4, 3, 5, 3],
  [2, 2, 3, 3],
])("%i sets of %i repetitions are %i×%i", (sets, reps, blockSets, blockReps) => {
  const [lifted] = liftSessions(week("2026-06-23", { sets, reps }), [day("2026-06-23")]);
  expect(blockOf(lifted!)).toEqual({ sets: blockSets, reps: blockReps });
});

test("the drop is the last one's, lower once contact lengthens, low for novices", () => {
  const drop = (iso: string, dropCm: number | null, contactS: number | null = null) =>
    jumpAttempt({ athlete: name, day: day(iso), test: "drop jump", dropCm, contactS });
  const next = (
    jumps: ReturnType<typeof drop>[],
    experience: "novice" | "trained" | null = null,
  ) => {
    const { cm, reason } = dropHeight(jumps, name, asOf, experience, []);
    return `${cm ?? 0} ${reason}`;
  };
  expect(next([])).toBe("30 first drop");
  expect(next([], "novice")).toBe("20 first drop");
  expect(next([drop("2026-06-23", null, 0.2)])).toBe("30 first drop");
  expect(next([drop("2026-06-16", 50), drop("2026-06-23", 40), drop("2026-06-23", 45)])).toBe(
    "45 as last",
  );
  expect(next([drop("2026-06-23", 40, 0.28), drop("2026-06-23", 40, 0.24)])).toBe(
    "30 contact long",
  );
  expect(next([drop("2026-06-23", 40, 0.25)])).toBe("40 as last");
  expect(next([drop("2026-06-23", 15, 0.3)])).toBe("10 contact long");
  expect(next([drop("2026-06-23", 40, 0.3)], "novice")).toBe("20 novice");
  expect(next([drop("2026-06-30", 50)])).toBe("30 first drop");
});

test("a drop is made of equal plates, never higher than wanted, of equal heights with the fewest", () => {
  const plate = (massKg: number, thicknessCm: number, owned: number | null) => ({
    row: 2,
    massKg,
    thicknessCm,
    owned,
  });
  expect(equalPlates(30, [plate(20, 5, null), plate(15, 3, 20)])).toEqual(Array(6).fill(20));
  expect(equalPlates(30, [plate(15, 3, 20), plate(20, 5, 6)])).toEqual(Array(6).fill(20));
  expect(equalPlates(30, [plate(20, 5, 4), plate(15, 3.5, 8)])).toEqual(Array(8).fill(15));
  expect(equalPlates(30, [plate(20, 0, 4)])).toEqual([]);
});

test("a load that the plates cannot make is the nearest under it, and the reason says so", () => {
  expect(barLoad(72.5, 20, 70, plates)).toMatchObject({
    loadKg: 72.5,
    plates: [25, 1.25],
    reasons: [],
  });
  expect(barLoad(72.5, 20, 70, [])).toEqual({
    loadKg: 20,
    plates: [],
    reasons: [{ code: "plates-short", facts: { wanted: 72.5, kg: 20 } }],
  });
  expect(barLoad(15, 20, 10, plates)).toEqual({
    loadKg: 10,
    plates: [],
    reasons: [{ code: "under-bar", facts: { wanted: 15, bar: 20 } }],
  });
  const pair = [{ row: 2, massKg: 10, thicknessCm: 2, owned: 2 }];
  expect(barLoad(80, 20, 70, pair)).toMatchObject({
    loadKg: 40,
    reasons: [{ code: "plates-short" }],
  });
  // 45 kg are 12.5 a side; of one pair each of 10 and 1.25 kg, 11.25: one step of 2.5 under it.
  const pairs = [10, 1.25].map((massKg) => ({ ...pair[0]!, massKg }));
  expect(barLoad(45, 20, 40, pairs)).toMatchObject({
    loadKg: 42.5,
    reasons: [{ code: "plates-short", facts: { wanted: 45, kg: 42.5 } }],
  });
});

test("sessions of a week stay alike, or step one by one with what to do otherwise", () => {
  const given = {
    block: { sets: 5, reps: 5 },
    loadKg: 70,
    guardKg: 110,
    resetShare: 0,
    stepKg: 2.5,
    largestStep: 0.1,
    count: 2,
  };
  expect(sessionSteps({ ...given, stepEach: false })).toEqual([
    { block: given.block, loadKg: 70, otherwise: null },
    { block: given.block, loadKg: 70, otherwise: null },
  ]);
  expect(sessionSteps({ ...given, stepEach: true })[1]).toEqual({
    block: { sets: 3, reps: 5 },
    loadKg: 72.5,
    otherwise: { block: given.block, loadKg: 70 },
  });
  // No load rises by nothing, yet another block is another session.
  const level = sessionSteps({ ...given, stepEach: true, wanted: 0 })[1]!;
  expect(level).toEqual({
    block: { sets: 3, reps: 5 },
    loadKg: 70,
    otherwise: { block: given.block, loadKg: 70 },
  });
  // Under a hopeless guard nothing steps on: the same again, and nothing depends on it.
  expect(sessionSteps({ ...given, stepEach: true, guardKg: 1 })[1]).toEqual({
    block: given.block,
    loadKg: 70,
    otherwise: null,
  });
});

test("a load back where it was within the week is not asked about, one under it still is", () => {
  const lifted = (...loads: number[]) =>
    step(loads.flatMap((loadKg, at) => week(`2026-06-${20 + 2 * at}`, { loadKg })))!.droppedFromKg;
  expect([lifted(85, 75, 80), lifted(85, 75, 80, 82.5), lifted(85, 75, 80, 85)]).toEqual([
    85,
    85,
    null,
  ]);
});

test("the marker of a day that ended after it is a usual one", () => {
  const [marker] = week("2026-06-23", { markerKg: 57.5 });
  expect(step([...week("2026-06-16", { markerKg: 55 }), marker!])?.markerKg).toBe(57.5);
});

test("a marker lighter than the first sets and not than the lightest was taken down with them", () => {
  const older = week("2026-06-16", { markerKg: 55 });
  const [marker, ...work] = week("2026-06-23", { markerKg: 50 });
  const last = { ...work[work.length - 1]!, loadKg: 50 };
  expect(step([...older, marker!, ...work.slice(0, -1), last])?.markerKg).toBe(55);
});
