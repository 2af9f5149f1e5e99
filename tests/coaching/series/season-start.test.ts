import { baselineWindow } from "../../../src/coaching/series/baseline-window";
import { gymDays, seasonStart } from "../../../src/coaching/series/season-start";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { athleteRow, jumpAttempt, liftingSet } from "./invented-season";

const asOf = 20_700;
const lifted = (...days: number[]) => days.map((day) => liftingSet({ day }));
const start = (rows: Parameters<typeof squadIndex>[0]) => seasonStart(squadIndex(rows, asOf));

test("a season begins after the squad's last gap of more than eight weeks", () => {
  expect(start({ sets: lifted(20_000, 20_010, 20_066) })).toBe(20_000);
  expect(start({ sets: lifted(20_000, 20_010, 20_067, 20_070) })).toBe(20_067);
  // Of two such gaps the later one counts.
  expect(start({ sets: lifted(20_000, 20_100, 20_110, 20_300, 20_310) })).toBe(20_300);
});

test("one athlete's absence is no new season while another jumps", () => {
  const jumps = [20_030, 20_060, 20_090].map((day) => jumpAttempt({ day, athlete: "Wren" }));
  expect(start({ sets: lifted(20_000, 20_100), jumps })).toBe(20_000);
});

test("without a gym day the season begins on the day asked for", () => {
  expect(start({})).toBe(asOf);
  expect(start({ sets: [liftingSet({ day: 20_000, repSpeeds: [] })] })).toBe(asOf);
});

test("an athlete's gym days are those with a speed or a jump, each once", () => {
  const rows = {
    sets: [...lifted(3, 3, 5), liftingSet({ day: 4, exercise: "bench press" })],
    jumps: [jumpAttempt({ day: 5 }), jumpAttempt({ day: 9, test: "hop" })],
  };
  const { of } = squadIndex(rows, asOf);
  expect([...gymDays(of("Ilka Brandmoor")!)].sort()).toEqual([3, 4, 5, 9]);
});

const days = [10, 12, 14, 16, 18, 20];
const own = (baselineFrom: number | null, baselineTo: number | null) =>
  athleteRow({ athlete: "Ilka Brandmoor", baselineFrom, baselineTo });

test("the baseline is the first sessions from the season's start", () => {
  expect(baselineWindow(days, 12, 3, undefined)).toEqual({ from: 12, to: 16, own: false });
  expect(baselineWindow(days, 12, 3, own(null, null))).toEqual({ from: 12, to: 16, own: false });
  expect(baselineWindow(days, 18, 3, undefined)).toEqual({ from: 18, to: 20, own: false });
  expect(baselineWindow([], 18, 3, undefined)).toEqual({ from: 18, to: 18, own: false });
});

test("the coach's dates go before: both, the first alone, or the last alone", () => {
  expect(baselineWindow(days, 12, 3, own(14, 19))).toEqual({ from: 14, to: 19, own: true });
  expect(baselineWindow(days, 12, 3, own(14, null))).toEqual({ from: 14, to: 18, own: true });
  expect(baselineWindow(days, 12, 3, own(null, 19))).toEqual({ from: 12, to: 19, own: true });
  // Up to a day before the season's start, that day is all there is of it.
  expect(baselineWindow(days, 12, 3, own(null, 10))).toEqual({ from: 10, to: 10, own: true });
});
