import { dayFromIso } from "../../../src/coaching/calendar/day";
import type { HoldMeasure, SeasonHold } from "../../../src/coaching/hold/season-hold";
import {
  fallenAlone,
  fallenUncalled,
  lastCompared,
  oldSince,
} from "../../../src/coaching/hold/word-caveats";

// What a season's word does not say by itself; all figures are invented.

const asOf = dayFromIso("2026-06-30") as number;

const measure = (of: string, change: number | null, kind = "bar speed"): HoldMeasure => ({
  kind: kind as HoldMeasure["kind"],
  of,
  baselineRows: 6,
  rowsAfter: 6,
  rowsSince: 4,
  change,
  changeError: 0.8,
  wobble: 2,
  baselineValue: 0.6,
  nowValue: 0.6,
});
const squat = measure("back squat", -5);
const box = measure("box jump", -1, "jump height");

const hold = (over: Partial<SeasonHold>): SeasonHold => ({
  athlete: "Ilka Brandmoor",
  asOf,
  word: "holding",
  sinceDay: null,
  sinceFrom: null,
  sinceTo: null,
  value: squat,
  measures: [squat, box],
  visibleFall: 4,
  evidenceLow: 0,
  evidenceHigh: 0,
  limit: 5,
  baseline: { from: null, to: null, sessions: 6, own: false },
  sessions: [],
  needed: [],
  notes: [],
  ...over,
});

test("a value fallen by as much as would show, or more, has fallen uncalled", () => {
  const of = (change: number | null, visibleFall: number | null) =>
    fallenUncalled(hold({ value: measure("back squat", change), visibleFall }));
  expect([of(-5, 4), of(-4, 4), of(-3.9, 4), of(5, 4), of(null, 4), of(-5, null)]).toEqual([
    true,
    true,
    false,
    false,
    false,
    false,
  ]);
  expect(fallenUncalled(hold({ value: null }))).toBe(false);
  expect(fallenUncalled(hold({ value: null, visibleFall: null }))).toBe(false);
});

test("it fell alone where no other value fell half as far as would show", () => {
  const beside = (...others: HoldMeasure[]) => fallenAlone(hold({ measures: [squat, ...others] }));
  expect(beside(box)).toBe(true);
  expect(beside(measure("drop jump", -2, "jump height"))).toBe(false);
  expect(beside(measure("drop jump", -1.9, "jump height"))).toBe(true);
  expect(beside(measure("drop jump", 3, "jump height"))).toBe(true);
  expect(beside(measure("drop jump", null, "jump height"))).toBe(true);
  // Another lift is another value, and so is another kind of the same name.
  expect(beside(measure("deadlift", -5))).toBe(false);
  expect(beside(measure("back squat", -5, "jump height"))).toBe(false);
  expect(beside(box, measure("deadlift", -5))).toBe(false);
  // There is nothing beside it to stand.
  expect(beside()).toBe(false);
  expect(fallenAlone(hold({ value: null }))).toBe(false);
  expect(fallenAlone(hold({ visibleFall: null }))).toBe(false);
  const risen = measure("box jump", 1, "jump height");
  expect(fallenAlone(hold({ visibleFall: null, measures: [squat, risen] }))).toBe(true);
  expect(fallenAlone(hold({ visibleFall: null, measures: [squat, measure("row", 0)] }))).toBe(
    false,
  );
});

const session = (day: number, ...percents: (number | null)[]) =>
  ({ day, percents, inBaseline: false }) satisfies SeasonHold["sessions"][number];
const changed = (sinceDay: number, code = "setting-changed") =>
  ({ code, facts: { sinceDay } }) as unknown as SeasonHold["notes"][number];

test("a speed whose setting changed after its last reading was last compared on that day", () => {
  const sessions = [session(asOf - 20, -1, 0), session(asOf - 10, -2, 1), session(asOf - 5, null)];
  const last = (notes: SeasonHold["notes"], over: Partial<SeasonHold> = {}) =>
    lastCompared(hold({ sessions, notes, ...over }));
  const then = { measure: squat, day: asOf - 10, named: true };
  expect(last([changed(asOf - 9)])).toEqual(then);
  expect(last([changed(asOf - 10)])).toBeNull();
  expect(last([changed(asOf - 9, "far-off-set")])).toBeNull();
  expect(last([changed(asOf - 30), changed(asOf - 9)])).toEqual(then);
  expect(last([])).toBeNull();
  // Beside another value, or none, it is told as well.
  expect(last([changed(asOf - 9)], { value: box })).toEqual({ ...then, named: false });
  expect(last([changed(asOf - 9)], { value: null })).toEqual({ ...then, named: false });
  expect(last([changed(asOf - 9)], { sessions: [session(asOf - 5, null)] })).toBeNull();
  expect(last([changed(asOf - 9)], { measures: [box], value: box })).toBeNull();
  // Its own readings, not another value's.
  const second = { value: squat, measures: [box, squat] };
  const own = [session(asOf - 10, null, -2), session(asOf - 6, 1, null)];
  expect(last([changed(asOf - 9)], { ...second, sessions: own })).toEqual(then);
});

test("a word is old where nothing was read for over two weeks", () => {
  const of = (...sessions: SeasonHold["sessions"]) => oldSince(hold({ sessions }));
  expect(of(session(asOf - 15, null, 1))).toBe(asOf - 15);
  expect(of(session(asOf - 14, null, 1))).toBeNull();
  expect(of(session(asOf - 15, 1), session(asOf - 2, null, null))).toBe(asOf - 15);
  expect(of(session(asOf - 15, 1), session(asOf - 2, null, 0))).toBeNull();
  expect(of(session(asOf - 15, null))).toBeNull();
  expect(of()).toBeNull();
});
