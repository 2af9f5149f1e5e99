import { athleteView } from "../../src/actions/squad/athlete-view";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso, isoFromDay } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const name = "Wren Castellow";
const first = dayFromIso("2026-04-07")!;
const head = ["Date", "Athlete", "Exercise", "Set", "Kind", "Reps", "Load (kg)", "Rep speeds"];

/** Three fives on a Tuesday or Thursday; the speed falls by 0.012 m/s a kg from 1.5 m/s. */
const evening = (exercise: string, days: number, loadKg: number) =>
  [1, 2, 3].map((set) => {
    const speed = 1.5 - 0.012 * loadKg + 0.01 * (days % 3);
    const all = [speed, speed, speed - 0.01, speed - 0.02, speed - 0.02];
    const reps = all.map((one) => one.toFixed(2)).join(" ");
    return [isoFromDay(first + days), name, exercise, set, "work", 5, loadKg, reps];
  });
const twice = (exercise: string, weeks: readonly number[], loads: readonly [number, number]) =>
  weeks.flatMap((week) => [
    ...evening(exercise, 7 * week, loads[0]),
    ...evening(exercise, 7 * week + 2, loads[1]),
  ]);
const bookOf = (sets: readonly (readonly unknown[])[]) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Sessions a week"],
      [name, 2],
    ],
    Sets: [head, ...sets],
  });

test("the week, its usual speeds and the opened athlete's line are of the exercise the athlete is on", () => {
  const book = bookOf([
    ...twice("back squat", [0, 1, 2, 3, 4, 5, 6, 7], [75, 80]),
    ...twice("front squat", [8, 9, 10], [60, 60]),
  ]);
  const today = first + 7 * 10 + 5;
  const [line] = weekView(book, today, null, []).lines;
  expect(line!.sessions.map(({ loadKg }) => loadKg)).toEqual([60, 60]);
  // 1.5 − 0.012·60 less the repetitions' own loss is usual: the first band begins where it is 0.06 slower.
  expect(line!.sessions[0]!.bands[0]!.speed).toMatch(/^0\.7\d or faster$/);
  expect(athleteView(book, today, name).loadSpeed!.exercise).toBe("front squat");
  expect(athleteView(book, first + 55, name).loadSpeed!.exercise).toBe("back squat");
  // Two loads are told by both, one by itself.
  const told = (day: number) => athleteView(book, day, name).loadSpeed!.inWords;
  expect(told(first + 55)).toMatch(/: \S+ m\/s at 75 kg, \S+ m\/s at 80 kg\.$/);
  expect(told(today)).toMatch(/: \S+ m\/s at 60 kg\.$/);
});
