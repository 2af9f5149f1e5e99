import { lineRows } from "../../../../src/coaching/bar-speed/squad-lines";
import { farOffNotes } from "../../../../src/coaching/hold/measures/far-off-sets";
import { squadHold } from "../../../../src/coaching/hold/squad-hold";
import { usualRules } from "../../../../src/coaching/record/squad-rules";
import { speedSetReader } from "../../../../src/coaching/series/speed-set";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { noteWords } from "../../../../src/words/reasons-notes";
import { liftingSet, sessionDay } from "../../series/invented-season";

/** The speed a set of this load has on the line 1.4 − 0.01·load, m/s. */
const onLine = (kg: number) => 1.4 - 0.01 * kg;
type Typed = { readonly kg?: number; readonly speed?: number };

/** A season of so many sets at 60, 70 and 80 kg, on the line but for what is typed instead. */
const setsOf = (count: number, typed: (at: number) => Typed = () => ({})) =>
  Array.from({ length: count }, (_, at) => {
    const lifted = 60 + 10 * (at % 3);
    const { kg = lifted, speed = onLine(lifted) } = typed(at);
    return liftingSet({ day: sessionDay(at), loadKg: kg, repSpeeds: [speed] });
  });
const notesOf = (sets: ReturnType<typeof setsOf>) => {
  const read = speedSetReader();
  return farOffNotes(lineRows(sets.map((set) => read(set)!)));
};
const typedAt = (place: number, typed: Typed) => (at: number) => (at === place ? typed : {});

test("a load mistyped is told with its day, load and speed", () => {
  const sets = setsOf(20, typedAt(7, { kg: 107 }));
  expect(notesOf(sets)).toEqual([
    {
      code: "sets-far-off",
      facts: {
        ...{ sets: 1, exercise: "back squat", day: sessionDay(7), loadKg: 107 },
        speed: expect.closeTo(0.7, 9),
      },
      // On the line 107 kg moves at 1.4 − 1.07 = 0.33 m/s, and 0.7 m/s is what 70 kg moves at.
      far: [
        {
          set: expect.objectContaining({ day: sessionDay(7), loadKg: 107 }),
          usualSpeed: expect.closeTo(0.33, 9),
          usualKg: expect.closeTo(70, 9),
        },
      ],
    },
  ]);
});

test("a load at which nothing usually moves has no usual speed, one load all along no usual load", () => {
  const usual = (sets: ReturnType<typeof setsOf>) =>
    notesOf(sets)[0]!.far!.map(({ usualSpeed, usualKg }) => [usualSpeed, usualKg]);
  expect(usual(setsOf(20, typedAt(7, { kg: 170 })))).toEqual([[null, expect.closeTo(70, 9)]]);
  const single = setsOf(20, (at) => ({ kg: 70, speed: at === 3 ? 0.07 : 0.7 }));
  expect(usual(single)).toEqual([[expect.closeTo(0.7, 9), null]]);
});

test("a last set slowed by those before it at its load is tired, and told of nobody", () => {
  const season = setsOf(20);
  const day = sessionDay(25);
  const at = (loadKg: number, speeds: readonly number[]) =>
    speeds.map((speed) => liftingSet({ day, loadKg, repSpeeds: [speed] }));
  // 80 kg usually moves at 0.6 m/s, and a usual set's at 0.7: what is over 0.175 off is far off.
  expect(notesOf([...season, ...at(80, [0.56, 0.48, 0.41])])).toEqual([]);
  // The same speed by itself, or far under the set before it, is asked about.
  expect(notesOf([...season, ...at(80, [0.41])])).toHaveLength(1);
  expect(notesOf([...season, ...at(80, [0.58, 0.41])])).toHaveLength(1);
  // Every set of a load mistyped is far off: none speaks for another.
  expect(notesOf([...season, ...at(40, [0.6, 0.55])])[0]?.facts).toMatchObject({ sets: 2 });
});

test("of several slips the first is told, and how many there are", () => {
  const [note] = notesOf(setsOf(20, (at) => (at === 4 || at === 13 ? { kg: 17 } : {})));
  expect(note?.facts).toMatchObject({ sets: 2, day: sessionDay(4), loadKg: 17 });
});

test("a quarter of the usual speed off is the limit", () => {
  // The middle of all speeds is 0.7 m/s, so that a quarter is 0.175.
  const off = (by: number) => notesOf(setsOf(21, typedAt(10, { speed: 0.7 + by }))).length;
  expect([off(0.17), off(-0.17), off(0.18), off(-0.18)]).toEqual([0, 0, 1, 1]);
});

test("speeds that scatter widely by themselves are left alone: six robust SDs", () => {
  // Off by −0.06, −0.03, 0, 0.03 and 0.06 m/s in turn: a median distance near 0.03, a limit near 0.27.
  const scattered = (by: number) =>
    notesOf(
      setsOf(45, (at) => ({
        speed: onLine(60 + 10 * (at % 3)) + (at === 22 ? by : 0.03 * ((at % 5) - 2)),
      })),
    ).length;
  expect([scattered(0.22), scattered(-0.22), scattered(0.32), scattered(-0.32)]).toEqual([
    0, 0, 1, 1,
  ]);
});

test("a lasting fall is no slip of the pen, however deep", () => {
  const fallen = (from: number) =>
    notesOf(setsOf(30, (at) => (at >= from ? { speed: 0.6 * onLine(60 + 10 * (at % 3)) } : {})));
  expect(fallen(15)).toEqual([]);
  expect(fallen(26)).toEqual([]);
  // Three of thirty may still be slips.
  expect(fallen(27)[0]?.facts.sets).toBe(3);
});

test("too few sets tell nothing, and one load all along is enough", () => {
  const single = (count: number) =>
    notesOf(setsOf(count, (at) => ({ kg: 70, speed: at === 3 ? 0.07 : 0.7 }))).length;
  expect([single(7), single(8)]).toEqual([0, 1]);
});

test("of a few sets each counts once", () => {
  // Distances from the middle, 0.8 m/s: four of none, three of 0.1, one of 0.22; half of them over 0.05.
  const speeds = [0.8, 0.8, 0.8, 0.8, 0.9, 0.9, 0.9, 0.58];
  expect(notesOf(setsOf(8, (at) => ({ kg: 60, speed: speeds[at]! })))).toEqual([]);
});

test("in a long season every set is held against the line, drawn through it or not", () => {
  for (const place of [0, 1, 2, 100, 398, 399])
    expect(notesOf(setsOf(400, typedAt(place, { kg: 7 }))).map(({ facts }) => facts.day)).toEqual([
      sessionDay(place),
    ]);
});

test("a heavier block late in a long season lies on the line as well", () => {
  const late = setsOf(128, (at) =>
    at < 120 ? { kg: 60, speed: onLine(60) } : { kg: 95, speed: onLine(95) },
  );
  expect(notesOf(late)).toEqual([]);
});

test("the season says it beside its word", () => {
  const { notes } = squadHold({
    index: squadIndex({ sets: setsOf(24, typedAt(1, { kg: 17 })) }, sessionDay(24)),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).of("Ilka Brandmoor");
  expect(notes.map(noteWords)).toContainEqual(
    expect.stringMatching(
      /^1 set of back squat is far off all the others, on .*: 17 kg at 0\.7 m\/s\. Check load and speed there\.$/,
    ),
  );
});

test("a set is tired by one of its own day and load, and only when it is the slower one", () => {
  const season = setsOf(20);
  const day = sessionDay(25);
  const one = (loadKg: number, speed: number, on = day) =>
    liftingSet({ day: on, loadKg, repSpeeds: [speed] });
  const told = (...sets: ReturnType<typeof one>[]) => notesOf([...season, ...sets]).length;
  // 0.41 m/s at 80 kg is far off the usual 0.6; after 0.5 it is a tired set.
  expect(told(one(80, 0.5), one(80, 0.41))).toBe(0);
  expect(told(one(80, 0.5, sessionDay(24)), one(80, 0.41))).toBe(1);
  expect(told(one(90, 0.5), one(80, 0.41))).toBe(1);
  // A load written too low is no tired set of the one before it.
  expect(told(one(60, 0.8), one(60, 1.0))).toBe(1);
});

test("just a quarter off is not yet far, and a load that stands still on the line has no usual speed", () => {
  // The line is 1.5 − load/128: 64, 80 and 96 kg move at 1, 0.875 and 0.75 m/s, a quarter is 0.21875.
  const season = Array.from({ length: 21 }, (_, at) => {
    const loadKg = 64 + 16 * (at % 3);
    return liftingSet({ day: sessionDay(at), loadKg, repSpeeds: [1.5 - loadKg / 128] });
  });
  const day = sessionDay(25);
  const told = (...sets: readonly (readonly [loadKg: number, speed: number])[]) =>
    notesOf([
      ...season,
      ...sets.map(([loadKg, speed]) => liftingSet({ day, loadKg, repSpeeds: [speed] })),
    ]).flatMap(({ far }) => far!);
  expect(told([80, 0.65625])).toEqual([]);
  expect(told([80, 0.65])).toHaveLength(1);
  // Just so far off it is still a usual set, and what comes just a quarter under it is tired.
  expect(told([96, 0.53125], [96, 0.5])).toEqual([]);
  expect(told([96, 0.59375], [96, 0.4453125])).toEqual([]);
  expect(told([96, 0.59375], [96, 0.445])).toHaveLength(1);
  expect(told([192, 0.5])).toMatchObject([{ usualSpeed: null, usualKg: 128 }]);
});
