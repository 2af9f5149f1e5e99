import { sessionReadings } from "../../../../src/coaching/hold/measures/session-readings";
import { speedSetReader } from "../../../../src/coaching/series/speed-set";
import { liftingSet } from "../../series/invented-season";

const read = speedSetReader();
/** A session's sets by speed, all at one load; percent is plain speed in hundredths. */
const session = (day: number, ...speeds: number[]) =>
  speeds.map((speed) => read(liftingSet({ day, loadKg: 100, repSpeeds: [speed] }))!);
const percents = (...sessions: ReturnType<typeof session>[]) =>
  sessionReadings(sessions.flat(), ({ speed }) => 100 * speed).map(({ percent }) => percent);

test("what each place usually loses is the athlete's own, and not read as a fall", () => {
  const tiring = [1, 2, 3, 4].map((day) => session(day, 0.6, 0.58, 0.55));
  for (const percent of percents(...tiring)) expect(percent).toBeCloseTo(60, 9);
});

test("a block of five sets compares with one of three", () => {
  const five = [1, 2, 3].map((day) => session(day, 0.6, 0.59, 0.58, 0.57, 0.56));
  const three = [11, 12, 13].map((day) => session(day, 0.6, 0.59, 0.58));
  for (const percent of percents(...five, ...three)) expect(percent).toBeCloseTo(60, 9);
});

test("a misread set counts as one of the session's", () => {
  const usual = [1, 2, 3, 4, 5, 6, 7, 8].map((day) => session(day, 0.6, 0.6, 0.6));
  const last = percents(...usual, session(9, 0.6, 0.6, 0.54)).at(-1)!;
  expect(last).toBeGreaterThan(57.5);
  expect(last).toBeLessThan(60);
});

test("a place seen fewer than three times is left out, and a session of one set stands by itself", () => {
  expect(percents(session(1, 0.6, 0.5), session(2, 0.62), session(3, 0.61, 0.55))).toEqual([
    expect.closeTo(60, 9),
    expect.closeTo(62, 9),
    expect.closeTo(61, 9),
  ]);
  // A season's first two sessions are read already, each by its first set.
  expect(percents(session(1, 0.6, 0.5), session(2, 0.62))).toEqual([
    expect.closeTo(60, 9),
    expect.closeTo(62, 9),
  ]);
});

test("the load of a session is the mean of the sets read", () => {
  const sets = [1, 2, 3].flatMap((day) =>
    [100, 100, 85].map((loadKg) => read(liftingSet({ day, loadKg, repSpeeds: [0.6] }))!),
  );
  expect(sessionReadings(sets, () => 0)[0]!.loadKg).toBeCloseTo(95, 9);
  expect(sessionReadings([], () => 0)).toEqual([]);
});
