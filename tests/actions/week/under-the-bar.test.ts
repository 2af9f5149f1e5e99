import { cardPages } from "../../../src/actions/pages/card-pages";
import { printableWeek } from "../../../src/actions/pages/printable-week";
import { rackPages } from "../../../src/actions/pages/rack-pages";
import { isoFromDay } from "../../../src/coaching/calendar/day";
import { firstDay, wobble } from "../../coaching/series/invented-season";
import { memoryWorkbook } from "../memory-workbook";

// A novice lifts 12 kg, a dumbbell: less than any bar.
const name = "Ada Fenwright";
const speeds = (kg: number, count: number, day: number) =>
  Array.from({ length: count }, (_, at) =>
    (1.2 - 0.02 * kg + 0.02 * wobble(day) - 0.006 * at).toFixed(2),
  ).join(" ");
const days = [0, 1, 2].flatMap((week) => [1, 3].map((at) => firstDay + 7 * week + at));
const book = memoryWorkbook({
  Athletes: [
    ["Athlete", "Experience"],
    [name, "novice"],
  ],
  Sets: [
    ["Date", "Athlete", "Exercise", "Kind", "Reps", "Load (kg)", "Rep speeds"],
    ...days.flatMap((day) =>
      [["marker", 3, 8] as const, ...Array(3).fill(["work", 5, 12] as const)].map(
        ([kind, reps, kg]) => [
          isoFromDay(day),
          name,
          "squat",
          kind,
          reps,
          kg,
          speeds(kg, reps, day),
        ],
      ),
    ),
  ],
});

test("a load under the bar's is not printed beside “empty bar”, which weighs more", () => {
  const week = printableWeek(book, firstDay + 20, null, []);
  const cards = cardPages(week);
  expect(cards).toHaveLength(2);
  for (const { bands, lift, marker } of cards) {
    expect([bands[0]!.lift, bands[0]!.plates]).toEqual(["12", "less than the bar"]);
    expect([lift.load, lift.plates]).toEqual(["12 kg", "less than the bar"]);
    expect([marker!.load, marker!.plates]).toEqual(["8 kg", "less than the bar"]);
  }
  expect(rackPages(week)[0]!.racks[0]!.lines[0]).toMatchObject({
    marker: "8",
    markerChange: "",
    load: "12",
    plates: "less than the bar",
  });
});
