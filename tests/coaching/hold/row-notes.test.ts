import { usualHoldSettings } from "../../../src/coaching/hold/hold-settings";
import { missingRows, rowNotes } from "../../../src/coaching/hold/season-notes";
import { squadHold } from "../../../src/coaching/hold/squad-hold";
import type { AthleteSeason } from "../../../src/coaching/hold/squad-seasons";
import type { WatchedSeason } from "../../../src/coaching/hold/watched-season";
import type { Athlete } from "../../../src/coaching/record/athlete";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import {
  athleteRow,
  inventedSeason,
  jumpAttempt,
  liftingSet,
  sessionDay,
  wobble,
} from "../series/invented-season";

const name = "Ilka Brandmoor";
const holdOf = (
  rows: { sets?: readonly LiftingSet[]; jumps?: readonly JumpAttempt[] },
  of: Partial<Athlete> = {},
) =>
  squadHold({
    index: squadIndex(rows, sessionDay(40)),
    plates: [{ row: 2, massKg: 15, thicknessCm: 2, owned: null }],
    athletes: [athleteRow({ athlete: name, ...of })],
    rules: usualRules,
  }).of(name);
const notesOf = (rows: Parameters<typeof holdOf>[0], of: Partial<Athlete> = {}) =>
  holdOf(rows, of).notes;
const squats = (count: number) => inventedSeason(name, count).sets;

/** A season of so many sessions; each value's readings by session, 1 read and 0 missed. */
const season = (baselineSessions: number, own: boolean, ...values: readonly string[]) =>
  ({
    sessions: Array.from({ length: values[0]!.length }, (_, s) => sessionDay(s)),
    baselineSessions,
    window: { own },
    measures: values.map((_, m) => ({ kind: "jump height", of: `test ${m + 1}` })),
    values: values.map((read) => [...read].map((one) => (one === "1" ? 100 : Number.NaN))),
  }) as unknown as AthleteSeason;
const needed = (...given: Parameters<typeof season>) =>
  missingRows(
    season(...given),
    { settings: usualHoldSettings, measures: [] as unknown } as WatchedSeason,
    usualRules,
  ).map(({ of, rows }) => [of, rows]);

test("what is missing is the rest of the baseline and two sessions after it", () => {
  expect(needed(4, false, "1111")).toEqual([["test 1", 4]]);
  expect(needed(6, false, "1111111")).toEqual([["test 1", 1]]);
});

test("sessions after a baseline are counted from each value's own, stretched or not", () => {
  const ten = season(6, false, "1111111111", "1000000011", "1000000000");
  const watched = {
    settings: usualHoldSettings,
    measures: [
      { place: 0, baselineSessions: 6 },
      { place: 1, baselineSessions: 10 },
    ],
  } as unknown as WatchedSeason;
  expect(missingRows(ten, watched, usualRules).map(({ rows }) => rows)).toEqual([1, 2, 2]);
});

test("a value with few readings in the baseline needs as many as it lacks of three", () => {
  expect(needed(6, false, "11111111", "10000011", "00000011")).toEqual([
    ["test 1", 1],
    ["test 2", 2],
    ["test 3", 3],
  ]);
});

test("a baseline of the coach's own dates is not waited for, only the sessions after it", () => {
  expect(needed(3, true, "111")).toEqual([["test 1", 2]]);
  expect(needed(3, true, "1111")).toEqual([["test 1", 1]]);
});

test("a test taken too seldom to follow says how many readings it lacks, while the season is young", () => {
  const drops = (...sessions: number[]) =>
    sessions.map((s) => jumpAttempt({ day: sessionDay(s), test: "drop jump", contactS: 0.2 }));
  const said = (count: number, ...sessions: number[]) =>
    notesOf({ sets: squats(count), jumps: drops(...sessions) }).map(({ code, facts }) => [
      code,
      facts.of,
      facts.rows,
    ]);
  expect(said(17, 2, 4)).toEqual([["measure-needs-rows", "drop jump", 1]]);
  expect(said(17, 2)).toEqual([["measure-needs-rows", "drop jump", 2]]);
  // Three times the six sessions of a baseline: no longer waited for.
  expect(said(18, 2, 4)).toEqual([["measure-not-followed", "drop jump", undefined]]);
  expect(said(6, 2, 4)).toEqual([]);
});

test("an own baseline of three sessions is called short once there is something to hold against it", () => {
  const own = (to: number) => ({ baselineFrom: sessionDay(0), baselineTo: sessionDay(to) });
  const short = (count: number, to: number) =>
    notesOf({ sets: squats(count) }, own(to)).filter(({ code }) => code === "baseline-short");
  expect(short(12, 2)).toEqual([{ code: "baseline-short", facts: { sessions: 3 } }]);
  expect(short(12, 3)).toEqual([]);
  expect(short(3, 2)).toEqual([]);
});

test("stacks a step of which is more than the wobble are said to be read in steps", () => {
  // Two stacks of plates 2 cm thick: 18 and 20 cm, on the mean of the baseline 19.
  const jumps = Array.from({ length: 12 }, (_, s) =>
    jumpAttempt({
      day: sessionDay(s),
      stackKg: Array.from({ length: s % 2 === 0 ? 9 : 10 }, () => 15),
    }),
  );
  expect(notesOf({ jumps })).toContainEqual({
    code: "read-in-steps",
    facts: { of: "box jump", percent: expect.closeTo((100 * 2) / 19, 9) },
  });
  const fine = jumps.map((jump, s) => ({ ...jump, stackKg: [], heightCm: 19 + wobble(s) }));
  expect(notesOf({ jumps: fine })).toEqual([]);
});

test("a season is long when it has gone on for more than twice the weeks of the rules", () => {
  const weeks = (count: number) =>
    rowNotes(
      {
        ...season(1, false, "11"),
        sessions: [20_000, 20_000 + 7 * count],
        measures: [],
      },
      { measures: [], settings: usualHoldSettings } as unknown as WatchedSeason,
      { ...usualRules, seasonWeeks: 16 },
    );
  expect(weeks(32)).toEqual([]);
  expect(weeks(32.2)).toEqual([{ code: "long-season", facts: { weeks: 32 } }]);
  expect(weeks(33)).toEqual([{ code: "long-season", facts: { weeks: 33 } }]);
});

test("each other setting is said once with its sessions and first day; one figure a set is another setting", () => {
  const changed = (s: number, of: Partial<LiftingSet>) => (set: LiftingSet) =>
    set.day === sessionDay(s) ? { ...set, ...of } : set;
  const sets = squats(20)
    .map(changed(8, { tool: "bar tool B" }))
    .map(changed(10, { tool: "bar tool C" }))
    .map(changed(12, { tool: "bar tool B" }))
    .map(changed(14, { repSpeeds: [], setSpeed: 0.68, setSpeedIs: "mean of reps" }));
  expect(
    notesOf({ sets }).map(({ facts: { what, after, sessions, sinceDay } }) => [
      what,
      after,
      sessions,
      sinceDay,
    ]),
  ).toEqual([
    ["tool", "bar tool B", 2, sessionDay(8)],
    ["tool", "bar tool C", 1, sessionDay(10)],
    ["figure", "mean of reps", 1, sessionDay(14)],
  ]);
});

test("six sessions with a new tool would make a baseline of their own, five would not", () => {
  const own = (first: number) =>
    notesOf({
      sets: squats(20).map((set) =>
        set.day >= sessionDay(first) ? { ...set, tool: "bar tool B" } : set,
      ),
    }).map(({ facts }) => [facts.sessions, facts.ownBaseline]);
  expect([own(14), own(15)]).toEqual([[[6, 1]], [[5, 0]]]);
});

test("a change of tool on the baseline's last day is one within the baseline", () => {
  const codes = (first: number) =>
    notesOf({
      sets: squats(20).map((set) =>
        set.day >= sessionDay(first) ? { ...set, tool: "bar tool B" } : set,
      ),
    }).map(({ code }) => code);
  expect(codes(5)).toEqual(["setting-changed-in-baseline"]);
  expect(codes(6)).toEqual(["setting-changed"]);
});

test("markers speak for the bar where three days of the baseline have one, else all work sets", () => {
  const work = squats(12).filter(({ set }) => set === 1);
  const markers = (...sessions: number[]) =>
    sessions.map((s) =>
      liftingSet({
        day: sessionDay(s),
        set: null,
        kind: "marker",
        loadKg: 40,
        repSpeeds: [0.94 * (1 + 0.01 * wobble(s))],
      }),
    );
  const bar = (...sessions: number[]) =>
    holdOf({ sets: [...markers(...sessions), ...work] }).measures[0]!;
  expect(bar(0, 1, 5, 7, 8, 9)).toMatchObject({ baselineRows: 3, rowsAfter: 3 });
  expect(bar(0, 1, 5, 7, 8, 9).baselineValue).toBeCloseTo(0.94, 1);
  expect(bar(0, 1, 7, 8, 9)).toMatchObject({ baselineRows: 6, rowsAfter: 6 });
  expect(bar(0, 1, 7, 8, 9).baselineValue).toBeCloseTo(0.7, 1);
});
