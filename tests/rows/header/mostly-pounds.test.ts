import { mostlyPounds } from "../../../src/rows/header/mostly-pounds";
import { understandTable } from "../../../src/rows/read-table";

const columnsOf = (heading: string) =>
  understandTable(
    "Sets",
    [
      ["date", "athlete", "exercise", heading],
      ["2026-05-12", "Ilka Brandmoor", "back squat", 150],
    ],
    { today: null },
  ).columns;

test("masses are in pounds where most of their columns are: not where none is, nor as many as in kilograms", () => {
  const [pounds, kilograms] = [columnsOf("load lb"), columnsOf("load kg")];
  expect(mostlyPounds(pounds)).toBe(true);
  expect(mostlyPounds([...pounds, ...pounds, ...kilograms])).toBe(true);
  expect(mostlyPounds([...pounds, ...kilograms])).toBe(false);
  expect(mostlyPounds(columnsOf("set"))).toBe(false);
  // A column without a unit says neither.
  expect(mostlyPounds([...pounds, ...columnsOf("load")])).toBe(true);
});

test("masses of plates tell it, too, and no other measure beside them", () => {
  const { columns } = understandTable("Plates", [
    ["mass (lb)", "thickness (cm)"],
    [45, 4.5],
  ]);
  expect(mostlyPounds(columns)).toBe(true);
});
