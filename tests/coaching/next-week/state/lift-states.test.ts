import { mondayOf } from "../../../../src/coaching/calendar/day";
import { squadHold } from "../../../../src/coaching/hold/squad-hold";
import { liftStates } from "../../../../src/coaching/next-week/state/lift-states";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { athleteRow, liftingSet, sessionDay, wobble } from "../../series/invented-season";
import { squadRows } from "../written-squad";

const name = "Ilka Brandmoor";
type Session = {
  /** m/s over 1.40 − 0.0115·load, as another tool or another form makes it. */
  readonly over?: number;
  readonly tool?: string;
  /** Share that the third set loses against the first. */
  readonly loses?: number;
  readonly noSpeeds?: boolean;
  readonly loadKg?: number;
  /** m/s that a second repetition is slower; none is taken without. */
  readonly second?: number;
};
/** Two sessions a week of three sets, unless it is said at 60, 65 or 70 kg: at 60 kg 0.71 m/s; the first six are the baseline. */
const season = (...sessions: Session[]): LiftingSet[] =>
  sessions.flatMap(({ over = 0, tool = "bar tool A", loses = 0.02, noSpeeds, ...of }, at) =>
    [0, 1, 2].map((set) => {
      const { loadKg = 60 + 5 * (at % 3), second } = of;
      const speed = (1.4 - 0.0115 * loadKg + over + 0.01 * wobble(at)) * (1 - (loses * set) / 2);
      const taken = second === undefined ? [speed] : [speed, speed - second];
      const repSpeeds = noSpeeds ? [] : taken;
      return liftingSet({ day: sessionDay(at), set: set + 1, loadKg, tool, repSpeeds });
    }),
  );
const times = (count: number, of: Session = {}) => Array<Session>(count).fill(of);
const stateOf = (
  sets: readonly LiftingSet[],
  { experience = "trained" as "trained" | "novice", who = name, lift = "Squat" } = {},
) => {
  const athletes = [athleteRow({ athlete: name, experience })];
  const rows = squadRows({ sets, athletes });
  const index = squadIndex({ sets }, Math.max(...sets.map(({ day }) => day)));
  const hold = squadHold({ index, plates: [], athletes, rules: rows.rules });
  return liftStates({ rows, index, hold }, () => sets)(who)(lift);
};
const slower = season(...times(6), ...times(14, { over: -0.15 }));

test("whoever is trained is judged by the baseline's speeds, a novice by those of late", () => {
  const trained = stateOf(slower);
  expect(trained.usualSpeed(60)).toBeCloseTo(0.71, 1.5);
  expect(trained.recent.usualSpeed(60)).toBeLessThan(0.6);
  expect(trained.usualLead("work", 60)!.usual).toBeGreaterThan(0.68);
  expect(trained.recent.usualLead("work", 60)!.usual).toBeLessThan(0.6);
  const novice = stateOf(slower, { experience: "novice" });
  expect(novice.usualSpeed(60)).toBe(trained.recent.usualSpeed(60));
  expect(novice.usualLead("work", 60)).toEqual(trained.recent.usualLead("work", 60));
});

test("a day of the baseline is judged as its card was, by the weeks before; its first week by the whole", () => {
  // Two fast sessions in the first week, slower from the second on.
  const { usualLead } = stateOf(season(...times(2, { over: 0.1 }), ...times(12, { over: -0.1 })));
  const on = (session: number) => usualLead("work", 60, sessionDay(session))!.usual;
  const whole = usualLead("work", 60)!.usual;
  expect(on(0)).toBe(whole);
  expect(on(2)).toBeGreaterThan(0.75);
  expect(on(3)).toBe(on(2));
  expect(on(5)).toBeLessThan(on(3));
  expect(on(5)).toBeGreaterThan(whole);
  expect(on(6)).toBe(whole);
});

test("a week on another tool is judged by that tool's speeds, the weeks after it by the baseline's again", () => {
  const away = times(4, { tool: "bar tool B", over: 0.12 });
  const { usualLead, otherSetting } = stateOf(season(...times(6), ...away, ...times(4)));
  const on = (session: number) => usualLead("work", 60, sessionDay(session))!.usual;
  expect(mondayOf(sessionDay(8))).toBe(mondayOf(sessionDay(9)));
  // In the first week with it the cards still were of the baseline's.
  expect(on(6)).toBeLessThan(0.74);
  for (const session of [8, 9]) expect(on(session)).toBeGreaterThan(0.78);
  // And in the first week back they were of the other tool's.
  for (const session of [10, 11]) expect(on(session)).toBeGreaterThan(0.78);
  expect([on(12), on(13)]).toEqual(Array(2).fill(usualLead("work", 60)!.usual));
  expect(otherSetting).toBeNull();
});

test("on another tool for the last two sessions its speeds are the usual ones, and it is told which", () => {
  const other = { tool: "bar tool B", over: 0.12 };
  const now = stateOf(season(...times(8), other, other));
  expect(now.otherSetting).toEqual({ what: "tool", before: "bar tool A", after: "bar tool B" });
  expect(now.usualSpeed(60)).toBe(now.recent.usualSpeed(60));
  expect(now.usualSpeed(60)).toBeGreaterThan(0.77);
  expect(now.usualLead("work", 60)!.usual).toBeGreaterThan(0.76);
  // Its first week was judged by the weeks before it.
  for (const session of [8, 9])
    expect(now.usualLead("work", 60, sessionDay(session))!.usual).toBeLessThan(0.74);
  const once = stateOf(season(...times(8), other));
  expect([once.otherSetting, once.usualSpeed(60)! < 0.74]).toEqual([null, true]);
});

test("how far a mean lies under the fastest repetition is asked of the tool's own sets", () => {
  const other = { tool: "bar tool B", over: 0.12 };
  const leadAfter = (...more: Session[]) =>
    stateOf(season(...times(8, { second: 0.04 }), ...more)).usualLead("work", 60)!.usual;
  // Two repetitions of the first tool's are 0.02 m/s under it, one of the other's is its own mean.
  const [fastest, mean] = [stateOf(season(...times(8))), leadAfter()];
  expect(mean).toBeCloseTo(fastest.usualLead("work", 60)!.usual - 0.02, 9);
  expect(leadAfter(other)).toBeCloseTo(mean, 9);
  const onOther = stateOf(season(...times(8), other, other)).usualLead("work", 60)!;
  expect(leadAfter(other, other)).toBeCloseTo(onOther.usual, 9);
});

test("a lift begun since the baseline has no other tool to be told of", () => {
  const begun = season(...times(12)).map((set) =>
    set.day < sessionDay(8) ? set : { ...set, exercise: "bench press" },
  );
  expect(stateOf(begun, { lift: "bench press" }).otherSetting).toBeNull();
});

test("sets of the last session keep their pattern or lose it; without its speeds nothing is known", () => {
  const tired = { loses: 0.3 };
  expect(stateOf(season(...times(10))).heldSpeed).toBe(true);
  expect(stateOf(season(...times(10), tired)).heldSpeed).toBe(false);
  const since = season(...times(10), tired, { noSpeeds: true });
  expect(stateOf(since).heldSpeed).toBeNull();
  // Another lift since then is no session of this one.
  const bench = since.map((set) =>
    set.day === sessionDay(11) ? { ...set, exercise: "bench press" } : set,
  );
  expect(stateOf(bench).heldSpeed).toBe(false);
  expect(stateOf(season(...times(2))).heldSpeed).toBeNull();
});

test("strength is told by its cautious end where loads are spread, of another lift or athlete nothing is", () => {
  // 0.30 m/s are at (1.40 − 0.30)/0.0115 = 95.7 kg.
  const spread = Array.from({ length: 15 }, (_, at) => ({ loadKg: 45 + 20 * (at % 3) }));
  const { strengthLowKg } = stateOf(season(...spread));
  expect(strengthLowKg).toBeGreaterThan(75);
  expect(strengthLowKg).toBeLessThan(95.7);
  expect(stateOf(season(...times(15, { loadKg: 60 }))).strengthLowKg).toBeNull();
  for (const over of [{ lift: "deadlift" }, { who: "Kofi Anstruther" }]) {
    const { usualSpeed, usualLead, recent, ...known } = stateOf(season(...times(12)), over);
    expect(known).toMatchObject({ heldSpeed: null, otherSetting: null, strengthLowKg: null });
    expect([usualSpeed(60), usualLead("work", 60), recent.usualSpeed(60)]).toEqual(
      Array(3).fill(null),
    );
    expect(recent.usualLead("work", 60)).toBeNull();
  }
});
