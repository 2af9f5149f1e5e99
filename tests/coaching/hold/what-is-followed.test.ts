import { squadHold } from "../../../src/coaching/hold/squad-hold";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { athleteRow, jumpAttempt, liftingSet, sessionDay, wobble } from "../series/invented-season";

type Rows = { sets?: LiftingSet[]; jumps?: JumpAttempt[] };
const asOf = sessionDay(40);
const holdOf = (rows: Rows) =>
  squadHold({ index: squadIndex(rows, asOf), plates: [], athletes: [], rules: usualRules }).of(
    "Ilka Brandmoor",
  );
const followed = (rows: Rows) => holdOf(rows).measures.map(({ kind, of }) => `${kind}: ${of}`);

/** Sessions from one up to another, the second left out. */
const from = (first: number, end: number) =>
  Array.from({ length: end - first }, (_, at) => first + at);
const lift = (exercise: string, sessions: readonly number[], of: Partial<LiftingSet> = {}) =>
  sessions.map((s) =>
    liftingSet({
      day: sessionDay(s),
      exercise,
      repSpeeds: [0.7 * (1 + 0.02 * wobble(s))],
      ...of,
    }),
  );
const jump = (test: string, sessions: readonly number[], of: Partial<JumpAttempt> = {}) =>
  sessions.map((s) =>
    jumpAttempt({ day: sessionDay(s), test, heightCm: 40 * (1 + 0.02 * wobble(s)), ...of }),
  );
const contact = (sessions: readonly number[]) =>
  jump("drop jump", sessions, { heightCm: null, contactS: 0.2 });
/** Drops with a height beside the contact, on these sessions. */
const reactive = (sessions: readonly number[]) =>
  jump("drop jump", sessions, { heightCm: 30, contactS: 0.2 });
const others = (exercise: string, athlete = "Tomas Reyerson") =>
  lift(exercise, from(0, 20), { athlete });

test("drops with a height on three days of the baseline are followed by reactive strength", () => {
  // The baseline is six sessions: its first and its last day count.
  const heights = (...sessions: number[]) => [
    ...reactive([...sessions, ...from(7, 12)]),
    ...contact(from(0, 7).filter((s) => !sessions.includes(s))),
  ];
  expect(followed({ jumps: heights(0, 1, 5) })).toEqual(["reactive strength: drop jump"]);
  expect(followed({ jumps: heights(0, 1, 6) })).toEqual(["contact time: drop jump"]);
});

test("a drop jump's height is not followed beside its contact, another test's is", () => {
  const drops = reactive(from(0, 12));
  const boxes = jump("box jump", from(0, 8));
  expect(followed({ jumps: [...drops, ...boxes] })).toEqual([
    "jump height: box jump",
    "reactive strength: drop jump",
  ]);
});

test("the squad's lift is followed, but an athlete's own where only that has three baseline days", () => {
  const sets = [
    ...others("front squat"),
    ...others("front squat", "Wren Castellow"),
    ...lift("back squat", [0, 1, 2]),
    ...lift("front squat", from(6, 20)),
  ];
  const early = (...sessions: number[]) => ({
    sets: [...sets, ...lift("front squat", sessions)],
    // Box jumps on every session make the baseline the first six.
    jumps: jump("box jump", from(0, 20)),
  });
  expect(followed(early())[0]).toBe("bar speed: back squat");
  expect(followed(early(4, 5))[0]).toBe("bar speed: back squat");
  expect(followed(early(3, 4, 5))[0]).toBe("bar speed: front squat");
  // Three sets on one day are one day.
  const alike = lift("front squat", [3, 3, 3]);
  expect(followed({ ...early(), sets: [...sets, ...alike] })[0]).toBe("bar speed: back squat");
});

test("a lift begun after the baseline is followed from its own first three sessions, and it is said", () => {
  const rows = { sets: lift("back squat", from(8, 20)), jumps: jump("box jump", from(0, 20)) };
  const hold = holdOf(rows);
  expect(hold.measures.map(({ kind, baselineRows, rowsAfter }) => [kind, baselineRows, rowsAfter]))
    // Twelve sessions of squats, three of them its baseline.
    .toEqual([
      ["bar speed", 3, 9],
      ["jump height", 6, 14],
    ]);
  expect(hold.notes).toContainEqual({
    code: "baseline-stretched",
    facts: { kind: "bar speed", of: "back squat", to: sessionDay(10) },
  });
});

test("sets without a load count for no lift", () => {
  const sets = [
    ...lift("back squat", from(0, 20), { loadKg: null }),
    ...lift("front squat", from(0, 10)),
  ];
  expect(followed({ sets })).toEqual(["bar speed: front squat"]);
});

test("which lift is the squad's is read from this season", () => {
  const seasonBefore = others("front squat").map((set) => ({ ...set, day: set.day - 300 }));
  const both = [...lift("back squat", from(0, 12)), ...lift("front squat", from(0, 12))];
  expect(followed({ sets: [...seasonBefore, ...both] })).toEqual(["bar speed: back squat"]);
  expect(followed({ sets: [...others("front squat"), ...both] })).toEqual([
    "bar speed: front squat",
  ]);
});

test.each([
  ["a lift", { sets: lift("back squat", from(0, 12)) }],
  ["a height", { jumps: jump("box jump", from(0, 12)) }],
  ["a contact", { jumps: contact(from(0, 12)) }],
] as const)("%s alone makes a baseline of six of its own sessions", (_, rows) => {
  // Presses on the days between are not followed, and no sessions of it.
  const presses = lift("bench press", from(0, 3)).map((set) => ({ ...set, day: set.day + 1 }));
  const sets = "sets" in rows ? [...rows.sets, ...presses] : [];
  expect(holdOf({ ...rows, sets }).baseline).toEqual({
    from: sessionDay(0),
    to: sessionDay(5),
    sessions: 6,
    own: false,
  });
});

test("tests of contact alone are no heights, however often they are taken", () => {
  const hops = jump("hop", from(0, 20), { heightCm: null, contactS: 0.3 });
  const rows = { jumps: [...contact(from(0, 20)), ...hops, ...jump("box jump", from(0, 8))] };
  expect(followed(rows)).toEqual(["jump height: box jump", "contact time: drop jump"]);
  expect(holdOf(rows).notes).toEqual([]);
});

test("of two lifts the squad does equally often the first by name is followed, whoever comes first", () => {
  const sets = [
    ...lift("front squat", from(0, 12), { athlete: "A Runner" }),
    ...lift("back squat", from(0, 12), { athlete: "B Runner" }),
    ...lift("front squat", from(0, 12)),
    ...lift("back squat", from(0, 12)),
  ];
  expect(followed({ sets })).toEqual(["bar speed: back squat"]);
});

test("the season's first day counts for its lift", () => {
  const first = lift("front squat", from(0, 12));
  const later = lift("back squat", from(1, 12));
  expect(followed({ sets: [...later, ...first] })).toEqual(["bar speed: front squat"]);
});

test("a lift or a height of last season alone is no baseline of this one", () => {
  const back = <Row extends { day: number }>(rows: Row[]) =>
    rows.map((row) => ({ ...row, day: row.day - 300 }));
  const sets = [
    ...others("front squat"),
    ...back(lift("front squat", from(0, 6))),
    ...lift("back squat", from(0, 12)),
    ...lift("front squat", from(12, 20)),
  ];
  expect(followed({ sets })).toEqual(["bar speed: back squat"]);
  expect(followed({ jumps: [...back(reactive(from(0, 6))), ...contact(from(0, 12))] })).toEqual([
    "contact time: drop jump",
  ]);
});

test("a lift nobody does any more is not followed, though own baseline dates reach back to it", () => {
  const before = from(0, 6).map((s) => sessionDay(s) - 300);
  const sets = [
    ...lift("front squat", from(0, 6)).map((set, s) => ({ ...set, day: before[s]! })),
    ...lift("back squat", from(0, 12)),
  ];
  const { measures } = squadHold({
    index: squadIndex({ sets }, asOf),
    plates: [],
    athletes: [
      athleteRow({
        athlete: "Ilka Brandmoor",
        baselineFrom: before[0]!,
        baselineTo: before[5]!,
      }),
    ],
    rules: usualRules,
  }).of("Ilka Brandmoor");
  expect(measures.map(({ of }) => of)).not.toContain("front squat");
});
