import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const head = ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Movement ok"];
const view = (movement: string, heading = "Movement ok") => {
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
    Sets: [[...head.slice(0, -1), heading], ...sets],
  });
  const { notes, lines } = weekView(book, dayFromIso("2026-06-13") as number, null, []);
  return {
    asked: notes.filter((note) => note.includes("may say how sets moved")),
    told: notes.some((note) => note.includes("No set says how it moved")),
    odd: lines.filter(({ odd }) => odd).map(({ athlete }) => athlete),
  };
};

test("where no set says how it moved, that is told once and puts nobody before the coach", () => {
  expect(view("")).toEqual({ asked: [], told: true, odd: [] });
  expect(view("y")).toEqual({ asked: [], told: false, odd: ["Ilka Brandmoor"] });
});

test("where a column that may say it waits for an answer, that is told in place of what to write", () => {
  expect(view("y", "Bar path")).toEqual({
    asked: [
      "“Bar path” in Sets may say how sets moved: answer under Set up. Until then no load goes up.",
    ],
    told: false,
    odd: [],
  });
  for (const heading of ["Tech ok", "Moved ok"])
    expect(view("y", heading)).toEqual({ asked: [], told: false, odd: ["Ilka Brandmoor"] });
});
