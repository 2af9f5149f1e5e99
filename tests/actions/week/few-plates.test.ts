import { weekView } from "../../../src/actions/week/week-view";
import { isoFromDay } from "../../../src/coaching/calendar/day";
import { firstDay, wobble } from "../../coaching/series/invented-season";
import { memoryWorkbook } from "../memory-workbook";

// A bar of 15 kg and one pair each of 25, 20 and 5 kg: 105 kg can be built, 95 and 85 cannot.

const name = "Ada Fenwright";
const speeds = (kg: number, count: number, day: number) =>
  Array.from({ length: count }, (_, at) =>
    (1.6 - 0.01 * kg + 0.02 * wobble(day) - 0.006 * at).toFixed(2),
  ).join(" ");
const days = [0, 1, 2].flatMap((week) => [1, 3].map((at) => firstDay + 7 * week + at));
const book = memoryWorkbook({
  Athletes: [
    ["Athlete", "Experience"],
    [name, "trained"],
  ],
  Sets: [
    ["Date", "Athlete", "Exercise", "Kind", "Reps", "Load (kg)", "Rep speeds", "Bar mass (kg)"],
    ...days.flatMap((day) =>
      [["marker", 3, 55] as const, ...Array(3).fill(["work", 5, 105] as const)].map(
        ([kind, reps, kg]) => [
          ...[isoFromDay(day), name, "squat", kind, reps, kg],
          ...[speeds(kg, reps, day), 15],
        ],
      ),
    ),
  ],
  Plates: [["Mass (kg)", "Thickness (cm)", "Number owned"], ...[25, 20, 5].map((kg) => [kg, 3, 2])],
});

test("a slow day's load is the next under it that these plates make, with its own share", () => {
  const [line] = weekView(book, firstDay + 20, null, []).lines;
  const { loadKg, bands } = line!.sessions[0]!;
  expect(loadKg).toBe(105);
  // 15 + 2·(25 + 5) = 75, which is 28.6 % under 105.
  expect(bands.map(({ lift, change }) => [lift, change])).toEqual([
    ["105 kg", "as planned"],
    ["75 kg", "−28.6 %"],
    ["no heavy work", "stop"],
  ]);
});
