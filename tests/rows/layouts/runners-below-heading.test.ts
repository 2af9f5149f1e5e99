import { understandTable } from "../../../src/rows/read-table";

const races = (...cells: readonly unknown[][]) => {
  const { reading, questions, layout } = understandTable("Races", cells);
  return {
    layout,
    races: reading.records.map(({ race, who, row }) => `${row} ${race}: ${who}`),
    issues: reading.issues.map(({ code, cell }) => `${code} ${cell}`),
    questions: questions.map(({ column }) => column),
  };
};
const head = ["Date", "Race", "Runners", "", ""];
const names = ["", "", "Ilka", "Tomas", "Wren"];

test("runners named below one heading over them all are runners, not what the heading is", () => {
  expect(
    races(
      head,
      names,
      ["2026-06-13", "Mill ten", "", "x", ""],
      ["2026-06-20", "Champs", "x", "", "x"],
      ["2026-06-27", "Open", "", "", ""],
    ),
  ).toEqual({
    layout: "runners across",
    races: ["3 Mill ten: Tomas", "4 Champs: Ilka", "4 Champs: Wren"],
    issues: ["race-without-runner C5"],
    questions: [],
  });
});

test("a heading of their own above the same names counts where no name stands below it", () => {
  const { races: read } = races(
    ["Date", "Race", "Runners", "Guests", "Pim"],
    ["", "", "Ilka", "Tomas", ""],
    ["2026-06-13", "Mill ten", "x", "", "x"],
  );
  expect(read).toEqual(["3 Mill ten: Ilka", "3 Mill ten: Pim"]);
});

test("names in the cells under “Runners” are names as ever, and marks without a row of names are asked about", () => {
  const written = races(head.slice(0, 3), ["2026-06-13", "Mill ten", "Ilka, Tomas"]);
  expect([written.layout, written.races]).toEqual(["plain rows", ["2 Mill ten: Ilka, Tomas"]]);
  expect(races(head.slice(0, 3), ["2026-06-13", "Mill ten", "x"]).races).toEqual(["2 Mill ten: x"]);
});
