import { harderThanPlan } from "../../../src/coaching/next-week/present-step/harder-than-plan";
import { takenDown } from "../../../src/coaching/next-week/present-step/taken-down";
import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import { saysLighter } from "../../../src/coaching/next-week/slow-day/says-lighter";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { lineReasonWords } from "../../../src/words/week";
import { athlete, day, session, squadRows, state } from "./written-squad";

// Squads without a device: loads, repetitions, those left in reserve, words beside a set. All invented.

const name = "Cosima Rell";
/** One set after another of five: its load, what was left, its repetitions. */
const on = (
  iso: string,
  sets: readonly (readonly [kg: number, reserve: number | null, reps?: number])[],
  over: Partial<LiftingSet> = {},
) =>
  sets.map(([loadKg, repsInReserve, reps = 5], at): LiftingSet => {
    const [, set] = session(name, iso, { sets: 1, reps, loadKg, markerKg: 40 }, over);
    return { ...set!, set: at + 1, repsInReserve };
  });
const three = (iso: string, kg: number, left: number | null = 3, over: Partial<LiftingSet> = {}) =>
  on(iso, Array(3).fill([kg, left]), over);
const weekOf = (monday: string, ...lifted: readonly LiftingSet[][]) => {
  const line = proposeLine({
    athlete: athlete(name),
    name,
    state: state(name, { heldSpeed: null }),
    rows: squadRows({ sets: lifted.flat() }),
    monday: day(monday),
    asOf: day(monday) - 1,
  });
  const [first] = line.sessions;
  return {
    load: `${first!.sets}x${first!.reps} ${first!.loadKg}`,
    said: line.reasons.map(lineReasonWords),
  };
};
const next = (monday: string, ...lifted: readonly LiftingSet[][]) => {
  const { load, said } = weekOf(monday, ...lifted);
  return [load, said[0]] as const;
};
const whole = ["2026-04-21", "2026-04-23", "2026-04-28"].map((iso) => three(iso, 60));
const april30 = "2026-04-30";
const may4 = "2026-05-04";

test("a first set at its plan and lighter ones after it: no step on, and the plan stands", () => {
  // In its third week, with every repetition done, a step would be due.
  const due = [three("2026-04-14", 60), ...whole];
  expect(next(may4, ...due, three(april30, 60))[0]).toBe("5x3 62.5");
  const down = on(april30, [
    [60, 1],
    [55, 2],
    [55, 2],
  ]);
  expect(next(may4, ...due, down)).toEqual([
    "3x5 60",
    "Down from 60 to 55 kg within the last session: planned on from 60 kg.",
  ]);
  // A step that was tried and taken down is held.
  const tried = on(april30, [
    [62.5, null],
    [60, null],
    [60, null],
  ]);
  expect(next(may4, ...due, tried)[0]).toBe("3x5 62.5");
});

test("taken down in pain, or as it moved poorly, the lighter load is the plan", () => {
  const down = (over: Partial<LiftingSet>) =>
    on(
      april30,
      [
        [60, 2],
        [55, 2],
        [50, 2],
      ],
      over,
    );
  expect(next(may4, ...whole, down({}))[0]).toBe("3x5 60");
  expect(next(may4, ...whole, down({ note: "knee pain" }))[0]).toBe("3x5 50");
  expect(next(may4, ...whole, down({ movedWell: false }))[0]).toBe("3x5 50");
  // That is no habit of falling from the first set.
  expect(weekOf(may4, ...whole, down({ note: "knee pain" })).said.join()).not.toMatch(/sets fell/);
});

test("a lighter session that left fewer than its plan leaves was a heavy day", () => {
  expect(next(may4, ...whole, three(april30, 55, 2))).toEqual([
    "3x5 60",
    "55 kg last session, a heavy day: planned on from 60 kg.",
  ]);
  // As many may be a habit of writing them.
  expect(next(may4, ...whole, three(april30, 55, 3))[0]).toBe("3x5 55");
  expect(next(may4, ...whole, three(april30, 55, null))[0]).toBe("3x5 55");
  // Where a speed was taken, that of a marker too, it says what day it was.
  const [marker] = session(name, april30, { sets: 1, reps: 5, loadKg: 55, markerKg: 40 });
  const timed = [{ ...marker!, repSpeeds: [0.8] }, ...three(april30, 55, 2)];
  expect(next(may4, ...whole, timed)[0]).toBe("3x5 55");
  const own = three(april30, 55, 2, { setSpeed: 0.6 });
  expect(next(may4, ...whole, own)[0]).toBe("3x5 55");
});

test("a lighter session is harder than its plan where it left fewer, or repetitions were missed", () => {
  const at = { day: day("2026-05-05"), reps: 5, reserve: 2, missed: false, timed: false };
  const plan = { ...at, day: day("2026-04-21"), reserve: 3 };
  const hard = (session: Partial<typeof at> | { reserve: null } = {}, over = {}) =>
    harderThanPlan({ ...at, ...session }, { ...plan, ...over });
  expect([hard(), hard({ timed: true }), hard({ reserve: 3 })]).toEqual([true, false, false]);
  expect([hard({ reserve: null }), hard({}, { reserve: null })]).toEqual([false, false]);
  expect(hard({ timed: true, reserve: 9, missed: true })).toBe(true);
  expect(hard({ missed: true, reserve: 9 }, { reserve: null })).toBe(true);
  // A plan that was too heavy itself is no plan to go back to.
  for (const over of [{ missed: true }, { reserve: 1 }])
    expect([hard({ missed: true }, over), hard({ reserve: 0 }, over)]).toEqual([false, false]);
  expect(hard({ reserve: 1 }, { reserve: 2 })).toBe(true);
  // After a fortnight, and of other repetitions, it says nothing.
  expect(hard({ missed: true, day: day("2026-05-06") })).toBe(false);
  expect(hard({ missed: true, reps: 3 })).toBe(false);
});

test("repetitions missed at a lighter load were of the day; after ones missed at the plan they were not", () => {
  const missed = (iso: string, kg: number) =>
    on(iso, [
      [kg, null],
      [kg, null, 4],
      [kg, null, 3],
    ]);
  expect(next(may4, ...whole, missed(april30, 57.5))[0]).toBe("3x5 60");
  expect(next(may4, ...whole.slice(0, 2), missed("2026-04-28", 60), missed(april30, 57.5))).toEqual(
    ["3x5 57.5", "Repetitions were missed: the step is done again."],
  );
  // Fewer repetitions at a heavier load are no missed ones, nor are those that nobody wrote down.
  const rising = on(april30, [
    [55, null],
    [57.5, null, 3],
    [60, null, 2],
  ]);
  expect(next(may4, ...whole, rising)[0]).toBe("3x5 55");
  const unwritten = three(april30, 55, null).map((set, at) =>
    at > 0 ? { ...set, reps: null } : set,
  );
  expect(next(may4, ...whole, unwritten)[0]).toBe("3x5 55");
});

test("what a note beside a set gives as the reason is of that day", () => {
  const noted = (note: string) => next(may4, ...whole, three(april30, 55, null, { note }));
  expect(noted("felt heavy, legs dead")).toEqual([
    "3x5 60",
    "55 kg last session, lighter as noted beside it: planned on from 60 kg.",
  ]);
  expect(noted("new shoes")[0]).toBe("3x5 55");
  // Fewer sets of a week that is noted as a lighter one show no smaller block.
  const fives = (iso: string, kg: number, sets: number, note = "") =>
    on(iso, Array(sets).fill([kg, 3]), { note });
  const before = ["2026-04-21", "2026-04-28"].map((iso) => fives(iso, 60, 5));
  expect(next("2026-05-11", ...before, fives("2026-05-05", 55, 3, "deload"))).toEqual([
    "5x5 60",
    "55 kg last session, with fewer sets, as in a lighter week: planned on from 60 kg.",
  ]);
  const second = [
    fives("2026-05-05", 55, 3, "deload"),
    fives("2026-05-12", 55, 3, "deload week 2"),
  ];
  expect(next("2026-05-18", ...before, ...second)[0]).toBe("5x5 60");
});

test.each([
  ["felt heavy today", true],
  ["Heavy", true],
  ["tired after the long run", true],
  ["a bit slow today", true],
  ["very slow", true],
  ["off day", true],
  ["legs gone", true],
  ["deload", true],
  ["recovery week", true],
  ["müde", true],
  ["jambes lourdes", true],
  ["not heavy at all", false],
  ["no longer tired", false],
  ["slow on the way down", false],
  ["moved well", false],
  ["heavyweight belt", false],
  ["", false],
])("beside a set %p gives a reason for less: %p", (note, said) => {
  expect(saysLighter(note)).toBe(said);
});

const shape = (text: string) =>
  takenDown(
    text.split(" ").map((one) => {
      const [loadKg, lastKg = loadKg] = one.split(">").map(Number);
      return { loadKg: loadKg!, lastKg: lastKg!, sets: 3 };
    }),
  )
    .map((down) => (down ? "d" : "-"))
    .join("");

test("a habit of lighter sets behind a heavy one is no heavy day, from the start on or once it goes up", () => {
  expect(shape("60 60>55 60>55 60 60>55")).toBe("-dd-d");
  expect(shape("60>55 60>55 60>55")).toBe("---");
  // One such first day is none yet.
  expect(shape("60>55 60 60>55")).toBe("--d");
  expect(shape("60 60>55 62.5>57.5 62.5>57.5 65>60")).toBe("-d---");
  // Heavier sets later are no lighter ones.
  expect(shape("60 55>60 60>55 57.5>55")).toBe("--dd");
  expect(shape("60 60>55 57.5>55 60>55")).toBe("-ddd");
});

test("a single set of a race's week ends no habit", () => {
  const sessions = [
    { loadKg: 60, lastKg: 55, sets: 3 },
    { loadKg: 60, lastKg: 60, sets: 1 },
    { loadKg: 60, lastKg: 55, sets: 3 },
  ];
  expect(takenDown(sessions)).toEqual([false, false, false]);
});

test("what rose to its load is told, or always falls from it: warm-ups left out, or which set counts", () => {
  const said = (...days: readonly (readonly number[])[]) => {
    const isos = ["2026-04-28", april30].slice(-days.length);
    const sets = days.map((loads, at) =>
      on(
        isos[at]!,
        loads.map((kg) => [kg, 3] as const),
      ),
    );
    const line = proposeLine({
      athlete: athlete(name),
      name,
      state: state(name),
      rows: squadRows({ sets: sets.flat() }),
      monday: day(may4),
      asOf: day(may4) - 1,
    });
    const told = line.reasons.map(lineReasonWords).filter((words) => /^The .*sets/.test(words));
    return [line.sessions[0]!.loadKg, line.odd, ...told];
  };
  expect(said([40, 50, 60, 60, 60])).toEqual([
    60,
    false,
    "The lighter sets before 60 kg last session are taken as warm-ups: say so under “kind”.",
  ]);
  expect(said([40, 50, 60])).toEqual([
    40,
    true,
    "The sets rose from 40 to 60 kg last session, and the first counts: name the warm-ups under “kind”.",
  ]);
  const habit =
    "The sets fell from 60 to 55 kg last session, and the first counts: all are planned at its load.";
  expect(said([60, 55, 55], [60, 55, 55])).toEqual([60, true, habit]);
  // Taken down on the day it is told as such.
  expect(said([60, 60, 60], [60, 55, 55])).toEqual([60, false]);
  expect(said([60, 60, 60, 70])).toEqual([60, false]);
  expect(said([60, 60, 60])).toEqual([60, false]);
});

test("sets that are fewer than the block's are counted, and missed repetitions told as such", () => {
  const four = on(april30, Array(4).fill([60, 3, 6]));
  expect(next(may4, four)[1]).toBe("4 of 5 sets were done at the load: the step is done again.");
  const missed = on(april30, [...Array(4).fill([60, 3]), [60, 3, 4]]);
  expect(next(may4, missed)[1]).toBe("Repetitions were missed: the step is done again.");
  const falls = (iso: string) =>
    on(
      iso,
      [60, 55, 55].map((kg) => [kg, 3] as const),
    );
  const habit = ["2026-04-13", "2026-04-20", "2026-04-27"].map(falls);
  expect(next(may4, ...habit)).toEqual([
    "3x5 60",
    "1 of 3 sets was done at the load: the step is done again.",
  ]);
  // On the way back as well: 10 % under the load from before, the first of its weeks was lifted.
  const back = [
    ...whole.slice(0, 2),
    three("2026-05-19", 52.5),
    three("2026-05-26", 52.5).slice(1),
  ];
  expect(next("2026-06-01", ...back)[1]).toBe(
    "2 of 3 sets were done at the load: the step is done again.",
  );
});
