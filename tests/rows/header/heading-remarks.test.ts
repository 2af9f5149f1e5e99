import { recogniseHeader } from "../../../src/rows/header/recognise-header";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet } from "../layouts/short";

const meaning = (heading: string) => Object.keys(recogniseHeader("Sets", [heading]).fields)[0];

test.each([
  ["Comments (anything that hurt?)", "note"],
  ["Lift (squat unless said)", "exercise"],
  ["Load in kg (incl. bar!)", "load"],
  ["Gewicht kg (mit der Stange)", "load"],
  ["Mean speed m/s (from the app)", "speed"],
  ["RIR (how many left, 0-5)", "reserve"],
  ["RIR (0-5)", "reserve"],
  ["Movement ok (y/n)", "movedWell"],
  ["Date (day first please)", "day"],
])("a remark in the brackets of “%s” leaves it what it is", (heading, field) => {
  expect(meaning(heading)).toBe(field);
});

test.each([
  "Load (per hand)",
  "Load (plates only)",
  "Load (incl. bar, lb)",
  "Load (kg) (without bar)",
  "Load (planned for today)",
  "Reps (set 2)",
  "Speed (last set)",
  "Notes (coach only)",
  "Date (of birth)",
  "Exercise (next week)",
  "(anything that hurt?)",
])("what the brackets of “%s” say may change what stands below", (heading) => {
  expect(meaning(heading)).toBeUndefined();
});

test("a table whose headings explain themselves is read as it stands", () => {
  const { reading, layout, columns } = understandTable("Sets", [
    ["Gym log 2026, please fill in on the day!", "", "", "", "", "", "", ""],
    [
      "Date (dd/mm/yy)",
      "Who?",
      "Lift (squat unless said)",
      "Set no.",
      "Reps done",
      "Load in kg (incl. bar!)",
      "Mean speed m/s (from the app)",
      "Comments (anything that hurt?)",
    ],
    ["13/05/26", "Nils", "Squat", 1, 5, 80, 0.62, ""],
    ["13/05/26", "Nils", "Squat", 2, 5, 82.5, 0.6, "left knee"],
  ]);
  expect([layout, problems(reading)]).toEqual(["plain rows", []]);
  expect(reading.records.map((set) => `${shortSet(set)} ${set.exercise} ${set.note}`)).toEqual([
    "05-13 Nils 1 80x5 0.62 Squat ",
    "05-13 Nils 2 82.5x5 0.6 Squat left knee",
  ]);
  // The coach's own heading is what the columns are called by.
  expect(columns.find(({ field }) => field === "load")?.heading).toBe("Load in kg (incl. bar!)");
});
