import { restartAfter } from "../../../src/coaching/blocks/restart";
import { wayBack } from "../../../src/coaching/blocks/way-back";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { gapped } from "./gapped";

const day = (iso: string) => dayFromIso(iso)!;
const session = (iso: string, loadKg: number) => ({ day: day(iso), loadKg });
const before = [session("2026-05-12", 85), session("2026-05-14", 85)];
const first = [...before, session("2026-06-02", 67.5), session("2026-06-04", 67.5)];

test("days off beyond one's own rhythm: a week 10 %, two 20 % and half the sets, three 30 %", () => {
  // Twice a week is a rhythm of 3.5 days: 14 May to 2 June is 19 days, 15.5 of them off.
  expect(restartAfter(19, 2)).toEqual({ daysOff: 16, off: 0.2, halfSets: true });
  expect(restartAfter(11, 2)).toEqual({ daysOff: 8, off: 0.1, halfSets: false });
  expect(restartAfter(9, 2)).toBeNull();
  expect(restartAfter(25, 2)).toEqual({ daysOff: 22, off: 0.3, halfSets: true });
  // To the day, at once a week: 13 and 14 days off, 20 and 21.
  expect([20, 21, 27, 28].map((gap) => restartAfter(gap, 1))).toEqual([
    { daysOff: 13, off: 0.1, halfSets: false },
    { daysOff: 14, off: 0.2, halfSets: true },
    { daysOff: 20, off: 0.2, halfSets: true },
    { daysOff: 21, off: 0.3, halfSets: true },
  ]);
});

test("once a week is a rhythm, not a break", () => {
  expect(restartAfter(7, 1)).toBeNull();
  expect(restartAfter(14, 1)).toMatchObject({ daysOff: 7, off: 0.1 });
});

const next = (sessions: readonly { day: number; loadKg: number }[], iso: string) =>
  wayBack(gapped(sessions), 2, day(iso), 2.5);

test("one grade a week: 67.5, then 10 % off 85, then a tenth of 85 more, then 85 and the ladder", () => {
  expect(next(first, "2026-06-08")).toMatchObject({
    beforeKg: 85,
    gradeKg: expect.closeTo(76.5, 9),
  });
  // 76.5 rounds down to 75 on plates, from where 85 would be 13 %: 8.5 are three steps and a bit.
  const second = [...first, session("2026-06-09", 75), session("2026-06-11", 75)];
  expect(next(second, "2026-06-15")).toMatchObject({ beforeKg: 85, gradeKg: 82.5 });
  const third = [...second, session("2026-06-16", 82.5)];
  expect(next(third, "2026-06-22")).toMatchObject({ beforeKg: 85, gradeKg: 85 });
  expect(next([...third, session("2026-06-23", 85)], "2026-06-29")).toBeNull();
});

test("a light athlete does not stay on one grade for want of small plates", () => {
  // 20 % off 40 is 32, on plates 30; 10 % off is 36, on plates 35.
  const back = [session("2026-05-14", 40), session("2026-06-02", 30)];
  expect(next(back, "2026-06-08")!.gradeKg).toBeCloseTo(36, 9);
  expect(next([...back, session("2026-06-09", 35)], "2026-06-15")!.gradeKg).toBe(40);
});

test("coarse plates make no grade larger than a tenth, but for one step", () => {
  // 10 % off 60 is 54, on plates of 5 kg a pair 50: a tenth is 6, one step.
  const back = [session("2026-05-14", 60), session("2026-06-02", 50)];
  expect(wayBack(gapped(back), 2, day("2026-06-08"), 5)!.gradeKg).toBe(55);
  // A step of 10 kg is more than a tenth, and there is no smaller one.
  expect(wayBack(gapped(back), 2, day("2026-06-08"), 10)!.gradeKg).toBe(60);
});

test("a grade just one step above the last load is the next", () => {
  const hundred = [session("2026-05-14", 100), session("2026-06-02", 77.5)];
  expect(next(hundred, "2026-06-08")!.gradeKg).toBeCloseTo(80, 9);
});

test("six weeks after the first session back the ladder alone leads on, to the day", () => {
  expect(next(first, "2026-07-14")).not.toBeNull();
  expect(next(first, "2026-07-15")).toBeNull();
});

test("within one week the grade stays", () => {
  expect(next(first, "2026-06-01")!.gradeKg).toBe(67.5);
});

test("the rotation's own reset after the way back is not a break", () => {
  const reset = [...first, session("2026-06-16", 85), session("2026-06-18", 80)];
  expect(next(reset, "2026-06-22")).toBeNull();
});

test("away again before it was reached, the load from before the first break is still come back to", () => {
  const again = [...first, session("2026-06-23", 60)];
  expect(next(again, "2026-06-29")).toMatchObject({ beforeKg: 85, gradeKg: expect.closeTo(68, 9) });
  // Come back to it, lighter sets after the next break are that one's.
  const reached = [...first, session("2026-06-11", 87.5), session("2026-06-30", 70)];
  expect(next(reached, "2026-07-06")).toMatchObject({ beforeKg: 87.5 });
});

test("without a break, and long after one, there is no way back", () => {
  expect(next(before, "2026-05-18")).toBeNull();
  expect(next([], "2026-05-18")).toBeNull();
  expect(next(first, "2026-07-27")).toBeNull();
});

test("six weeks under the load from before are the way back; after them another break goes from where one was", () => {
  const back = (weeks: number) => {
    const under = Array.from({ length: weeks + 1 }, (_, at) => ({
      day: day("2026-06-02") + 7 * at,
      loadKg: 67.5,
    }));
    const last = under[under.length - 1]!.day;
    const again = { day: last + 28, loadKg: 55 };
    return wayBack(gapped([...before, ...under, again]), 1, again.day + 7, 2.5)?.beforeKg;
  };
  expect([back(5), back(6), back(7)]).toEqual([85, 85, 67.5]);
});
