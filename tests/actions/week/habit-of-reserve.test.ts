import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const name = "Finn Albury";
const first = dayFromIso("2026-04-07")!;
type Evening = {
  readonly sets: number;
  readonly reps: number;
  readonly kg: number;
  readonly left: number;
};

/** Weeks of Tuesdays and Thursdays without bar speed, and what is proposed after them. */
function after(...weeks: readonly Evening[]) {
  const rows = weeks.flatMap(({ sets, reps, kg, left }, week) =>
    [0, 2].flatMap((days) =>
      Array.from({ length: sets }, (_, at) => [
        ...[isoFromDay(first + 7 * week + days), name, "back squat", at + 1, reps, kg, left, "yes"],
      ]),
    ),
  );
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Sessions a week"],
      [name, "novice", 2],
    ],
    Sets: [
      [
        "Date",
        "Athlete",
        "Exercise",
        "Set",
        "Reps",
        "Load (kg)",
        "Reps in reserve",
        "Movement ok?",
      ],
      ...rows,
    ],
  });
  const [line] = weekView(book, first + 7 * weeks.length - 2, null, []).lines;
  const [{ sets, reps, loadKg }] = line!.sessions as [(typeof line & object)["sessions"][number]];
  return [`${sets}×${reps} ${loadKg}`, line!.why[0]];
}
const times = (count: number, one: Evening) => Array.from({ length: count }, () => one);
const threes = times(3, { sets: 3, reps: 3, kg: 42.5, left: 3 });
const fives = (left: number) => times(3, { sets: 5, reps: 5, kg: 35, left });

test("three in reserve written of every load do not take a new rotation down: more was lifted before", () => {
  // By itself 35·(1 + 8/30) = 44.3: 3×5 at 37.5 is 84.6 % of it. 42.5·(1 + 6/30) = 51 was seen.
  expect(after(...threes, ...fives(3))).toEqual([
    "3×5 37.5",
    "Moved well, volume done: a step on, 35 to 37.5 kg.",
  ]);
  expect(after(...fives(3))[1]).toMatch(/^At 35 kg: more would leave/);
});

test("one or none left of every load, however light, takes load off once and not week by week", () => {
  const fives = (kg: number, left: number) => times(1, { sets: 5, reps: 5, kg, left });
  expect(after(...fives(80, 1))[0]).toBe("5×5 77.5");
  expect(after(...fives(80, 1), ...fives(77.5, 1))[0]).toBe("5×5 77.5");
  expect(after(...fives(80, 0))[0]).toBe("5×5 75");
  expect(after(...fives(80, 0), ...fives(75, 0), ...fives(75, 0))[0]).toBe("5×5 75");
  // A whole turn of the rotation later the heavier load says nothing more.
  const again = times(12, { sets: 5, reps: 5, kg: 77.5, left: 1 });
  expect(after(...fives(80, 1), ...again)[0]).toBe("5×5 75");
  // None left where one was left of more: weaker now.
  expect(after(...fives(80, 1), ...fives(77.5, 0))[0]).toBe("5×5 75");
});

test("one left now counts whatever was lifted before, and so do fewer at the same load", () => {
  expect(after(...threes, ...fives(1))[1]).toMatch(/^1 repetition was left in reserve/);
  // 3×5 at 42.5 of 40·(1 + 7/30) = 49.3 leaves fewer than two, of 40·(1 + 9/30) = 52 two and a bit.
  const easy = times(2, { sets: 5, reps: 5, kg: 40, left: 4 });
  const hard = times(1, { sets: 5, reps: 5, kg: 40, left: 2 });
  expect(after(...easy, ...easy.slice(1))[0]).toBe("3×5 42.5");
  expect(after(...easy, ...hard)[0]).toBe("3×5 40");
});
