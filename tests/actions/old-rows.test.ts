import { squadView } from "../../src/actions/squad/squad-view";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const book = memoryWorkbook({
  Athletes: [["Athlete"], ["Ilka Brandmoor"]],
  Sets: [
    ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)"],
    ["2025-07-04", "Ilka Brandmoor", "back squat", 1, 5, 80],
    ["2025-07-08", "Ilka Brandmoor", "back squat", 1, 5, 80],
  ],
});
const seen = (today: string) => {
  const day = dayFromIso(today)!;
  return [squadView(book, day).asOfWords, weekView(book, day, null, []).notes[0]];
};

test("a workbook of another year says whose rows it judges, and from which week it goes on", () => {
  expect(seen("2026-06-10")).toEqual([
    "Rows up to 13 Jul 2025",
    "The last rows are of the week to 13 Jul 2025: what is proposed goes on from there. For a first week back after time off, choose the week of 15 Jun.",
  ]);
  expect(seen("2025-09-10")).toEqual([
    "Rows up to 13 Jul",
    "The last rows are of the week to 13 Jul: what is proposed goes on from there. For a first week back after time off, choose the week of 15 Sep.",
  ]);
});

test("rows that are still current are judged as of today, and nothing is said of it", () => {
  expect(seen("2025-07-10")).toEqual([
    "Rows up to 10 Jul",
    expect.not.stringContaining("The last rows"),
  ]);
});

/** Two weeks of three fives at 80 kg, the last on Tuesday 8 July. */
const lifted = memoryWorkbook({
  Athletes: [
    ["Athlete", "Sessions a week"],
    ["Ilka Brandmoor", 1],
  ],
  Sets: [
    ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Movement ok"],
    ...["2025-07-01", "2025-07-08"].flatMap((day) =>
      [1, 2, 3].map((set) => [day, "Ilka Brandmoor", "back squat", set, 5, 80, "y"]),
    ),
  ],
});
const weekOf = (today: string, monday: string | null) => {
  const view = weekView(
    lifted,
    dayFromIso(today)!,
    monday === null ? null : dayFromIso(monday),
    [],
  );
  const [one] = view.lines;
  return {
    view,
    monday: view.monday,
    loads: one!.sessions.map(({ loadKg }) => loadKg),
    why: one!.why[0],
  };
};

test("after a squad's month off the week to come is proposed as after time off, not the week after the last rows", () => {
  // 8 July to Tuesday 12 August: 35 days less a rhythm of 7. 80 less 30 % is 56, on plates 55.
  const { monday, loads, why } = weekOf("2025-08-10", null);
  expect([monday, loads]).toEqual(["2025-08-11", [55]]);
  expect(why).toContain("Off 28 days longer than usual: 30 % off");
});

test("after rows of a season before the week to come can be chosen, and comes back from time off", () => {
  const { view, monday } = weekOf("2025-09-10", null);
  expect(monday).toBe("2025-07-14");
  expect(view.mondays.map((one) => one.monday)).toContain("2025-09-15");
  const chosen = weekOf("2025-09-10", "2025-09-15");
  expect(chosen.loads).toEqual([55]);
  expect(chosen.why).toContain("30 % off");
  expect(chosen.view.notes.join()).not.toContain("The last rows");
});
