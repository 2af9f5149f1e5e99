import { readWorkbook } from "../../../src/actions/read-workbook";
import { serveRequest } from "../../../src/actions/requests";
import { rowCheck } from "../../../src/actions/row-check/row-check";
import { squadView } from "../../../src/actions/squad/squad-view";
import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const iso = "2026-05-29";
const today = dayFromIso(iso)!;
const name = "Wren Castellow";
const evening = (day: string, exercise: string) =>
  [1, 2, 3].map((set) => [day, name, exercise, set, 5, 80]);
const days = ["2026-05-05", "2026-05-07", "2026-05-12", "2026-05-14", "2026-05-19"];
const bookOf = (exercise: string) =>
  memoryWorkbook({
    Athletes: [["Athlete"], [name]],
    Sets: [
      ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)"],
      ...days.flatMap((day) => evening(day, "back squat")),
      ...evening("2026-05-21", exercise),
    ],
  });

test("a lift that may be a slip in another's name is listed at its first cell until it is said to be right", () => {
  const book = bookOf("Black squat");
  const listed = () => rowCheck(book, today).problems;
  expect(listed()).toEqual([
    {
      tab: "Sets",
      tabId: book.tabNamed("Sets").id,
      cell: "C17",
      found: "“Black squat”",
      why: "It counts as a lift of its own, beside back squat.",
      toDo: "In 3 rows; “back squat” in 15. Correct it where it is a slip, or say it is right.",
      kind: "lift-near",
      mend: null,
      right: "black squat beside back squat",
    },
  ]);
  expect([squadView(book, today).toCheck, weekView(book, today, null, []).toCheck]).toEqual([1, 1]);
  const set = "black squat beside back squat";
  serveRequest(book, "answerSet", { today: iso, set });
  expect([listed(), squadView(book, today).toCheck]).toEqual([[], 0]);
  serveRequest(book, "forgetSet", { today: iso, set });
  expect(listed()).toHaveLength(1);
});

test("a lift of its own is not asked about, and nothing is merged", () => {
  expect(rowCheck(bookOf("hack squat"), today).problems).toEqual([]);
  const { sets } = readWorkbook(bookOf("Black squat"), today).rows;
  expect(sets.filter(({ exercise }) => exercise === "Black squat")).toHaveLength(3);
});

test("a lift named above its figures is told at their row", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], [name]],
    Gym: [
      ["Trap bar deadlift", ...days],
      [name, ...days.map(() => "80x5x5")],
    ],
    More: [
      ["Trapbar deadlift", ...days.slice(3)],
      [name, "80x5", "80x5"],
    ],
  });
  expect(rowCheck(book, today).problems.map(({ tab, cell }) => `${tab} ${cell}`)).toEqual([
    "More A2",
  ]);
});

test("a variant in a title is a lift of its own, no set of the lift it is a variant of", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], [name]],
    Gym: [
      ["Hack squat", ...days],
      [name, ...days.map(() => "120x5x5")],
    ],
  });
  const { sets } = readWorkbook(book, today).rows;
  expect(new Set(sets.map(({ exercise }) => exercise))).toEqual(new Set(["hack squat"]));
});
