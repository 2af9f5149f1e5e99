import { understandTable } from "../../../src/rows/read-table";
import { counts } from "./short";

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

test("whoever is named first under the heading may run none yet: then nobody else runs in their place", () => {
  const races2 = [
    ["2026-06-13", "Mill ten", "", "x", "x"],
    ["2026-06-20", "Champs", "", "x", ""],
  ];
  const run = ["3 Mill ten: Tomas", "3 Mill ten: Wren", "4 Champs: Tomas"];
  expect(races(head, names, ...races2)).toEqual({
    layout: "runners across",
    races: run,
    issues: [],
    questions: [],
  });
  // A word among that athlete's marks is no mark, and told.
  const sore = races2.map((row, at) => (at === 0 ? row.with(2, "sore") : row));
  expect(races(head, names, ...sore)).toEqual({
    layout: "runners across",
    races: run,
    issues: ["heading-unknown C2"],
    questions: [3],
  });
  // Names under the heading stay names beside marks of something else.
  expect(
    races(
      ["Date", "Race", "Runners", "Bus"],
      ["", "", "", "Mini"],
      ["2026-06-13", "Mill ten", "Ilka, Tomas", "x"],
    ).races,
  ).toEqual(["3 Mill ten: Ilka, Tomas"]);
});

test("an empty row below the headings is blank, and names nobody", () => {
  const { reading } = understandTable("Races", [
    ["Date", "Race", "Ilka", "Tomas"],
    ["", "", "", ""],
    ["2026-06-13", "Mill ten", "x", ""],
  ]);
  expect(reading.records.map(({ who }) => who)).toEqual(["Ilka"]);
  expect(counts(reading)).toEqual([1, 0, 1, 1]);
});

test("marks of a row without day and race are no names of runners", () => {
  for (const mark of ["x", "yes"]) {
    const { reading } = understandTable("Races", [
      ["Date", "Race", "Ilka", "Tomas"],
      ["", "", mark, ""],
      ["2026-06-13", "Mill ten", mark, ""],
    ]);
    expect(reading.records.map(({ who }) => who)).toEqual(["Ilka"]);
    expect(counts(reading)).toEqual([1, 1, 0, 1]);
  }
});
