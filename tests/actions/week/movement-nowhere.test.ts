import { weekView } from "../../../src/actions/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const head = ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Movement ok"];
const view = (movement: string) => {
  const sets = ["2026-06-02", "2026-06-04", "2026-06-09", "2026-06-11"].flatMap((day) =>
    ["Nils Quarrington", "Ilka Brandmoor"].flatMap((name) =>
      [1, 2, 3].map((set) => [
        day,
        name,
        "back squat",
        set,
        5,
        80,
        name[0] === "N" ? movement : "",
      ]),
    ),
  );
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Nils Quarrington"], ["Ilka Brandmoor"]],
    Sets: [head, ...sets],
  });
  const { notes, lines } = weekView(book, dayFromIso("2026-06-13") as number, null, []);
  return {
    told: notes.some((note) => note.includes("No set says how it moved")),
    odd: lines.filter(({ odd }) => odd).map(({ athlete }) => athlete),
  };
};

test("where no set says how it moved, that is told once and puts nobody before the coach", () => {
  expect(view("")).toEqual({ told: true, odd: [] });
  expect(view("y")).toEqual({ told: false, odd: ["Ilka Brandmoor"] });
});
