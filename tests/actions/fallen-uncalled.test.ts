import { athleteView } from "../../src/actions/squad/athlete-view";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso, isoFromDay } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const first = dayFromIso("2026-04-06")!;
const name = "Casper Moat";
const evenings = [0, 1, 2, 3, 4, 5].flatMap((week) => [7 * week + 1, 7 * week + 3]);

/** Three weeks of 5×5 at 80 kg, three of 3×5 at 82.5 kg; box jumps stay at 42 cm, the last four evenings' speeds are a share off. */
const bookOf = (slower: number) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Sessions a week"],
      [name, "trained", 2],
    ],
    Sets: [
      [
        "Date",
        "Athlete",
        "Exercise",
        "Set",
        "Kind",
        "Reps",
        "Load (kg)",
        "Speed (m/s)",
        "Moved ok?",
      ],
      ...evenings.flatMap((days, at) => {
        const loadKg = at < 6 ? 80 : 82.5;
        const off = at < 8 ? 0 : slower;
        // 0.72 m/s at 80 kg, 0.008 less a kg, evening by evening 0.02 to either side.
        const speed = (0.72 - 0.008 * (loadKg - 80) + 0.02 * (at % 2 === 0 ? 1 : -1)) * (1 - off);
        return [1, 2, 3, 4, 5]
          .slice(0, at < 6 ? 5 : 3)
          .map((set) => [
            isoFromDay(first + days),
            name,
            "back squat",
            set,
            "work",
            5,
            loadKg,
            (speed - 0.005 * set).toFixed(3),
            "y",
          ]);
      }),
    ],
    Jumps: [
      ["Date", "Athlete", "Test", "Height (cm)"],
      ...evenings.map((days, at) => [
        isoFromDay(first + days),
        name,
        "box jump",
        42 + 0.5 * ((at % 3) - 1),
      ]),
    ],
  });
const lineOf = (slower: number) => weekView(bookOf(slower), first + 41, null, []).lines[0]!;

test("speed down by as much as would show, jumps held: nothing is called yet, and no load is added", () => {
  const calm = lineOf(0);
  expect(calm.sessions.map(({ sets, reps, loadKg }) => [sets, reps, loadKg])).toEqual([
    [5, 3, 85],
    [5, 3, 85],
  ]);
  const slower = lineOf(0.07);
  expect(slower.word).toBe("holding");
  expect(slower.sessions.map(({ sets, reps, loadKg }) => [sets, reps, loadKg])).toEqual([
    [3, 5, 82.5],
    [3, 5, 82.5],
  ]);
  expect(slower.why[0]).toBe("No step up: back squat speed 7 % under baseline.");
  // On the same page, under the season's word.
  const { why } = athleteView(bookOf(0.07), first + 41, name).line;
  expect(why).toContain("a loss in one value alone takes longer to be called");
});
