import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

test("a log long enough to be read in place has its next week, and the weeks ahead", () => {
  // Eight athletes, eight weeks of two evenings, three sets each: every cell says plainly what it means.
  const names = Array.from({ length: 8 }, (_, at) => `Athlete ${"ABCDEFGH"[at]}`);
  const rows = Array.from({ length: 16 }, (_, at) => at).flatMap((evening) =>
    names.flatMap((name) =>
      [1, 2, 3].map((set) => {
        const day = new Date(2026, 3, 7 + 7 * Math.floor(evening / 2) + 2 * (evening % 2));
        return [day, name, "squat", set, 5, 60, 3, "y"];
      }),
    ),
  );
  const head = ["Day", "Name", "Lift", "Set", "Reps", "kg", "RIR", "Movement ok?"];
  const book = memoryWorkbook({
    Athletes: [["Name", "Level", "Born"], ...names.map((name) => [name, "trained", 1999])],
    Sets: [head, ...rows],
  });
  const { lines } = weekView(book, dayFromIso("2026-05-31")!, null, []);
  expect(lines.map(({ athlete }) => athlete)).toEqual(names);
  for (const { sessions, ahead } of lines) {
    expect(sessions[0]).toMatchObject({ block: "5×3", loadKg: 62.5 });
    expect(ahead[0]!.steps.map(({ block, loadKg }) => `${block} ${loadKg}`)).toEqual([
      "5×3 62.5",
      "5×3 62.5",
      "5×3 62.5",
      "3×3 65",
    ]);
  }
});
