import { isoFromDay } from "../../../src/coaching/calendar/day";
import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { notes, problems, shortJump, shortSet, today } from "./short";

// What a grid may have at its edges: a column too many, a mark out of place; all invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });

test("of two columns of names the first counts", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["Athlete", "Name", "5/5", "28/5"],
    ["Ilka", "I.B.", "85x5", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5"]);
});

test("however many columns stand left of the dates, a row that heads names heads a grid; they are asked about", () => {
  const heads = (name: string) =>
    read(
      "Jumps",
      [
        ["Set", "kg", "km", "Event", name, "5/5/2026", "28/5/2026"],
        ["zq", 7, 9, "800", "Ilka", 40, 41],
      ],
      { title: "Box jump" },
    );
  const { reading, questions } = heads("Athlete");
  expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 40 cm", "05-28 Ilka 41 cm"]);
  expect(problems(reading)).toEqual([]);
  expect(questions.map(({ heading, samples }) => `${heading} ${samples}`)).toEqual([
    "Set zq",
    "kg 7",
    "km 9",
    "Event 800",
  ]);
  expect(heads("Runs").layout).not.toBe("dates across");
});

test("a tab said to hold jumps of which none is found is not passed over", () => {
  const ofSets = [
    ["Ilka", "", ""],
    ["Set", "kg", "m/s"],
    [1, 85, 0.62],
  ];
  const problemsOf = (more: object) => problems(read("Jumps", ofSets, more).reading);
  expect(problemsOf({ said: true })).toEqual(["A1 no-header: Ilka"]);
  expect(problemsOf({})).toEqual([]);
});

test("names may stand in the second column, also of a single athlete", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["", "", "5/5", "28/5"],
    ["", "Ilka", "85x5", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5"]);
});

test("a date beside a title is no test's name", () => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", new Date(2026, 4, 30), "", ""],
    ["", "5/5", "12/5", "28/5"],
    ["Ilka", 40, 41, ""],
  ]);
  expect(reading.records.map(({ test, heightCm }) => [test, heightCm])).toEqual([
    ["Box jump 2026", 40],
    ["Box jump 2026", 41],
  ]);
});

test("a footnote is no athlete, also with a word beside it, and stands beside the cell's own words", () => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "2x15+5* tired", ""],
    ["* hands on knees", "", "see card"],
  ]);
  expect(reading.records.map((jump) => `${shortJump(jump)} ${jump.note}`)).toEqual([
    "05-05 Ilka 15 15 5 ✗ tired; hands on knees",
  ]);
  expect(problems(reading)).toEqual([]);
  expect(notes(reading)).toEqual(["B3 Ilka: tired"]);
});

test("a star before a name is no footnote where figures stand in the row, or words on several days", () => {
  const rows = (...line: readonly string[]) => {
    const { reading } = read("Sets", [
      ["Squat, kg x sets x reps", "26/5/2026", "28/5/2026"],
      ["Tane", "80x1x5", "80x1x5"],
      [...line],
    ]);
    return [reading.records.map(shortSet).slice(2), notes(reading)];
  };
  const lifted = (name: string) => [`05-26 ${name} 1 60x5`];
  for (const name of ["*Ilka", "* Ilka", "† Ilka"]) {
    expect(rows(name, "60x1x5", "")).toEqual([lifted(name), []]);
    expect(rows(name, "ill", "away")).toEqual([[], [`B3 ${name}: ill`, `C3 ${name}: away`]]);
  }
  expect(rows("* back in week 2", "", "see card")).toEqual([[], []]);
});

test("only a session of a day before is copied, also where the later day stands first", () => {
  const { reading } = read("Sets", [
    ["Squat, kg x sets x reps", "", ""],
    ["", "28/5/2026", "26/5/2026"],
    ["Ilka", "85x2x5", "as Thu"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-28 Ilka 1 85x5", "05-28 Ilka 2 85x5"]);
  expect(problems(reading)).toEqual(["C3 nothing-to-repeat: as Thu"]);
});

test("notes beside a grid of runs belong to the week", () => {
  const { reading } = read("Runs", [
    ["Runs, min", "", "", ""],
    ["", "5/5/2026", "28/5/2026", "notes"],
    ["Ilka", 40, "", "windy"],
  ]);
  expect(
    reading.notes?.map(({ day, span }) => [day === null ? "" : isoFromDay(day), span]),
  ).toEqual([["2026-05-25", "week"]]);
});

test("a set without a load is told at its own cell", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "85x5", "5x5"],
  ]);
  expect(problems(reading)).toEqual(["C3 load-blank: 5x5"]);
  expect(notes(reading)).toEqual([]);
});

test("one block of answers is enough for its tab to be a diary", () => {
  const { layout, reading } = read("Diary", [
    ["Mood", "", ""],
    ["", "5/5/2026", "28/5/2026"],
    ["Ilka", 3, 4],
    ["Mood", "", ""],
    ["", "2/6/2026", "15/6/2026"],
    ["Ilka", "", ""],
  ]);
  expect(layout).toBe("dates across");
  expect(reading.records.map(({ mood }) => mood)).toEqual([3, 4]);
});

test("a test's name keeps no gap where its drop stood", () => {
  const { reading } = read("Jumps", [
    ["Drop jump  30 to floor, left", "", ""],
    ["", "5/5/2026", "28/5/2026"],
    ["Ilka", 40, ""],
  ]);
  expect(reading.records.map(({ test, dropCm }) => [test, dropCm])).toEqual([
    ["Drop jump, left", 30],
  ]);
});

test("contact and flight in columns that name no test are a drop jump's", () => {
  const { reading } = read("Jumps", [
    ["Date", "Athlete", "Contact ms", "Flight s"],
    ["2026-05-12", "Ilka", 182, 0.49],
  ]);
  expect(reading.records.map((jump) => `${jump.test} ${shortJump(jump)}`)).toEqual([
    "drop jump 05-12 Ilka 0.182/0.49",
  ]);
});

test("rows of jumps with two dates each are no grid of dates", () => {
  const { layout, reading } = read("Jumps", [
    ["Date", "Athlete", "Test", "Next on"],
    ["2026-05-12", "Ilka", "hop", "2026-06-12"],
    ["2026-05-12", "Kofi", "hop", "2026-06-12"],
  ]);
  expect(layout).toBe("plain rows");
  expect(problems(reading)).toEqual(["A2 no-figure: ", "A3 no-figure: "]);
});

test("races without a day are not read, whatever marks stand beside them", () => {
  const { layout, reading } = read("Races", [
    ["Race", "Ilka", "Kofi"],
    ["Mile", "x", ""],
    ["Relay", "", "x"],
  ]);
  expect(layout).toBe("not recognised");
  expect(problems(reading)).toEqual(["A1 column-missing: "]);
});

test("a distance out of bounds in a grid of runs is told by what it is", () => {
  const { reading } = read("Runs", [
    ["Runs, km", "", ""],
    ["", "5/5/2026", "28/5/2026"],
    ["Ilka", 900, 10],
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts.heading])).toEqual([
    ["B3", "implausible", "km"],
  ]);
});

test("blanks of spaces beside a title do not hide its year", () => {
  const { reading } = read(
    "Sets",
    [
      [" ", "Squat 2025", " "],
      ["", "5/5", "28/5"],
      ["Ilka", "85x5", ""],
    ],
    { today: null },
  );
  expect(reading.records.map(({ day }) => isoFromDay(day))).toEqual(["2025-05-05"]);
});

test("a note is found again by its row and column", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "85x5", "ride"],
  ]);
  expect(reading.notes?.map(({ row, column, cell }) => [row, column, cell])).toEqual([
    [3, 3, "C3"],
  ]);
});

test("a column that the coach said to leave alone is no lift of a log either", () => {
  const { layout } = read(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      ["2026-05-12", "Ilka", "squat", "85x1x5"],
    ],
    { answers: { columns: [{ column: 3, field: null }] } },
  );
  expect(layout).toBe("not recognised");
});

test("a blank row in a log of merged names is nobody's", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "kg x sets x reps"],
    ["2026-05-12", "Ilka", "squat", "85x1x5"],
    ["2026-05-14", "", "squat", "86x1x5"],
    ["", "", "", ""],
    ["2026-05-12", "Kofi", "squat", "95x1x5"],
    ["2026-05-14", "", "squat", "96x1x5"],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 85x5",
    "05-14 Ilka 1 86x5",
    "05-12 Kofi 1 95x5",
    "05-14 Kofi 1 96x5",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("a heading of two letters is no test's name", () => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", "", ""],
    ["Nr", "5/5", "28/5"],
    ["Ilka", 40, ""],
  ]);
  expect(reading.records.map(({ test }) => test)).toEqual(["Box jump 2026"]);
});

test("words of a row that ends before its name are nobody's, and the name is missed", () => {
  const heads = (test: string) => ["Date", test, "Athlete", "Note"];
  const jumps = read("Jumps", [heads("Box jump (cm)"), ["2026-05-12", "sore"]]).reading;
  expect([...notes(jumps), ...problems(jumps)]).toEqual(["B2 : sore", "C2 needed-blank: "]);
  const sets = read("Sets", [heads("Squat"), ["2026-05-12", "ride"]]).reading;
  expect([...notes(sets), ...problems(sets)]).toEqual(["B2 : ride", "C2 needed-blank: "]);
});

test("a jump in a log says whether it was cleared, also without a space", () => {
  const { reading } = read("Jumps", [
    ["Date", "Athlete", "Exercise", "kg x sets x reps"],
    ["2026-05-12", "Ilka", "squat", "85x5"],
    ["2026-05-12", "Ilka", "box jump", "5x15o"],
    ["2026-05-12", "Ilka", "box jump", "4x15"],
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-12 Ilka 15 15 15 15 15 ✓",
    "05-12 Ilka 15 15 15 15 ?",
  ]);
});

test("a week's label may name the weekday in its brackets", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", "", ""],
    ["", "Wk 19 (Mon 4/5)", "", "Wk 20 (Mon 11/5)", ""],
    ["Athlete", "Mon", "Wed", "Mon", "Wed"],
    ["Ilka", "85x5", "", "", "86x5"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-04 Ilka 1 85x5", "05-13 Ilka 1 86x5"]);
});

test("loads in a unit that nothing settles are asked about at the header of their grid", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["", "5/5", "12/5", "28/5"],
    ["Ilka", "135x5", "185x5", "225x5"],
    ["Kofi", "135x5", "185x5", "225x5"],
  ]);
  expect(reading.issues.map(({ cell, code }) => [cell, code])).toEqual([["B2", "unit-unsettled"]]);
});

test("a row that stands in a grid twice counts once, also when it is the first", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "85x5", ""],
    ["Ilka", "85x5", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5"]);
  expect(reading.issues.map(({ row, code }) => [row, code])).toEqual([[4, "doubled-row"]]);
});

test("two headings under the dates are a header", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Athlete", "kg", "kg"],
    ["Ilka", 80, 85],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka work 80x?", "05-28 Ilka work 85x?"]);
  expect(problems(reading)).toEqual([]);
});

test("whose availability it is, is never taken from the tab's name", () => {
  const { layout, reading } = read(
    "Availability",
    [
      ["From", "May do"],
      ["2026-05-12", "out"],
    ],
    { title: "Ilka Brandmoor" },
  );
  expect(layout).toBe("not recognised");
  expect(reading.records).toEqual([]);
});

test("what stands beside shorthand in a log is read in the unit of its heading, and told with it", () => {
  const { reading } = read("Sets", [
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speed (cm/s)", "Reps left"],
    ["2026-05-12", "Ilka", "squat", "85x1x5", 62, 2],
    ["2026-05-14", "Ilka", "squat", "85x1x5", 61, 40],
  ]);
  expect(reading.records.map(({ setSpeed }) => setSpeed)).toEqual([0.62, 0.61]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts.heading])).toEqual([
    ["F3", "implausible", "Reps left"],
  ]);
});

test("a figure beside a day above the dates is told, a day or a figure alone is a title", () => {
  const above = (...title: readonly unknown[]) =>
    read("Jumps", [
      title,
      ["CMJ cm", "5/5/2026", "28/5/2026"],
      ["Ilka", 31, 32],
      ["Kofi", 33, 34],
    ]).reading.issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow]);
  expect(above("4 May 2026", 80, "")).toEqual([["A1", "row-unread", true]]);
  expect(above("4 May 2026", "", "")).toEqual([]);
  expect(above("Squad", 2026, "")).toEqual([]);
});

test("the column of athletes is the one headed so, whatever words stand before it", () => {
  const { reading } = read("Jumps", [
    ["CMJ cm", "", "", ""],
    ["Group", "Athlete", "5/5/2026", "28/5/2026"],
    ["road", "Ilka", 31, 32],
  ]);
  expect(reading.records.map(({ athlete }) => athlete)).toEqual(["Ilka", "Ilka"]);
});

test("a star behind a name makes no footnote of it, and two stars are a mark of their own", () => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka *new", "2x15+5", ""],
    ["Kofi", "2x15+5**", "2x15*"],
    ["* hands on knees", "", ""],
    ["** off one leg", "", ""],
  ]);
  expect(reading.records.map(({ athlete, note }) => `${athlete}: ${note}`)).toEqual([
    "Ilka *new: ",
    "Kofi: off one leg",
    "Kofi: hands on knees",
  ]);
});

test("the unit in a grid's title is its loads' alone", () => {
  const { reading } = read("Sets", [
    ["Back squat (lb)", "", "", "", ""],
    ["", "5/5/2026", "", "28/5/2026", ""],
    ["Name", "load", "speed", "load", "speed"],
    ["Ilka", 176, 0.62, 180, 0.6],
  ]);
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(({ loadKg, setSpeed }) => [Math.round(loadKg!), setSpeed])).toEqual([
    [80, 0.62],
    [82, 0.6],
  ]);
});

test("notes beside the headings under the dates are the athlete's, also by another name", () => {
  for (const heading of ["Notes", "coach comments"]) {
    const { reading } = read("Sets", [
      ["Back squat", "", "", "", ""],
      ["", "", "5/5/2026", "28/5/2026", ""],
      ["Name", heading, "kg", "kg", heading],
      ["Ilka", "sore", 80, 82.5, "better"],
    ]);
    expect(notes(reading)).toEqual(["B4 Ilka: sore", "E4 Ilka: better"]);
    expect(problems(reading)).toEqual([]);
  }
});

test("a column of marks beside a column of runners is no runner, nor is one of marks and words", () => {
  const races = (...cells: readonly (readonly unknown[])[]) =>
    read("Races", cells).reading.records.map(({ who }) => who);
  expect(
    races(
      ["Date", "Race", "Who", "Bus"],
      ["5/5/2026", "Mile", "Ilka", "x"],
      ["28/5/2026", "5 km", "Kofi", ""],
    ),
  ).toEqual(["Ilka", "Kofi"]);
  expect(
    races(
      ["Date", "Race", " Ilka ", "Hotel"],
      ["5/5/2026", "Mile", "x", "booked"],
      ["28/5/2026", "5 km", "x", "x"],
    ),
  ).toEqual(["Ilka", "Ilka"]);
});

test("of two titles above a grid of answers the nearer says what is answered", () => {
  const { reading } = read("Diary", [
    ["Mood", "", ""],
    ["Sleep", "", ""],
    ["", "5/5/2026", "28/5/2026"],
    ["Ilka", 7, 8],
  ]);
  expect(reading.records.map(({ mood, sleepH }) => [mood, sleepH])).toEqual([
    [null, 7],
    [null, 8],
  ]);
});

test("a figure beside the dates that nothing explains is asked about, an unticked box is not", () => {
  const beside = (box: unknown) =>
    read("Jumps", [
      ["CMJ cm", "", "", ""],
      ["Name", "Xyz", "5/5/2026", "28/5/2026"],
      ["Ilka", box, 31, 32],
    ]).questions.length;
  expect([beside(false), beside(true), beside(7)]).toEqual([0, 1, 1]);
});

test("the twelfth of December heads a column", () => {
  const { reading } = read("Jumps", [
    ["CMJ cm 2025", "", ""],
    ["", "12/12", "13/12"],
    ["Ilka", 31, 32],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["12-12 Ilka 31 cm", "12-13 Ilka 32 cm"]);
});

test("steps up in one cell are read without spaces too; a doubt behind them is a word", () => {
  for (const cell of ["5x15 o / +10 x", "5x15 o/+10x", "5x15o/+10 x"])
    expect(
      read("Jumps", [
        ["Box jump", "", ""],
        ["", "5/5/2026", "28/5/2026"],
        ["Ilka", cell, ""],
        ["Kofi", "5x15 tired?", ""],
      ]).reading.records.map((jump) => `${shortJump(jump)} ${jump.note}`.trim()),
    ).toEqual([
      "05-05 Ilka 15 15 15 15 15 ✓",
      "05-05 Ilka 15 15 15 15 15 10 ✗",
      "05-05 Kofi 15 15 15 15 15 ✓ tired?",
    ]);
});

test("a cell that cannot be read repeats nothing, also where another of its day stands to its left", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["", "26/5/2026", "26/5/2026", "26/5/2026"],
    ["Ilka", "85x5", "lots 5", "as Tue"],
  ]);
  expect(reading.records.map(shortSet)).toEqual(["05-26 Ilka 1 85x5"]);
  expect(problems(reading)).toEqual(["C3 scheme-unread: lots 5", "D3 nothing-to-repeat: as Tue"]);
});

test("a doubtful figure is told with what it would be, one that is no figure without", () => {
  const { reading } = read("Jumps", [
    ["Box jump 2026", "", "", "", ""],
    ["", "5/5", "12/5", "14/5", "28/5"],
    ["Ilka", "41,5 ?", "2x15?", "-5", "41?!"],
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["B3", "unsure", { mend: 41.5, heading: "Box jump 2026" }],
    ["C3", "unsure", {}],
    ["D3", "jump-unread", {}],
    ["E3", "jump-unread", {}],
  ]);
});

test("marks under no heading are nobody's race, and columns of runners are not asked about", () => {
  for (const untitled of ["", " "]) {
    const { reading, questions } = read("Races", [
      ["Date", "Race", "Ilka", "Kofi", untitled],
      ["5/5/2026", "Mile", "x", "", "x"],
      ["28/5/2026", "5 km", "", "x", ""],
    ]);
    expect(reading.records.map(({ race, who }) => `${race} ${who}`)).toEqual([
      "Mile Ilka",
      "5 km Kofi",
    ]);
    expect(questions.map(({ column }) => column)).toEqual([5]);
  }
});

test("a column of ticks and words is no runner's", () => {
  const { layout } = read("Races", [
    ["Date", "Race", "Hotel"],
    ["5/5/2026", "Mile", "booked"],
    ["28/5/2026", "5 km", "✓"],
  ]);
  expect(layout).toBe("plain rows");
});

test("what holds of rows without dates across is read alike on any day", () => {
  let asked = false;
  const { layout } = understandTable(
    "Jumps",
    [
      ["Date", "Athlete", "Box jump (cm)"],
      ["2026-05-12", "Ilka", 41],
    ],
    {
      get today() {
        asked = true;
        return today;
      },
    },
  );
  expect([layout, asked]).toEqual(["tests across", false]);
});

test("an implausible speed in a grid is told as a speed", () => {
  const { reading } = read("Sets", [
    ["Squat 2026", "", "", ""],
    ["", "5/5", "", "28/5"],
    ["Athlete", "kg", "m/s", "kg"],
    ["Ilka", 80, 62, ""],
  ]);
  expect(reading.issues.map(({ code, facts }) => [code, facts.heading])).toEqual([
    ["implausible", "speed"],
  ]);
});

test("a name at the first of an athlete's lifts stands for those below it, until a title or another name", () => {
  const grid = (...rows: readonly (readonly unknown[])[]) =>
    read("Sets", [["Athlete", "Lift", "5/5/2026", "28/5/2026"], ...rows]).reading;
  const reading = grid(
    ["Ilka", "Back squat", "85x5", "87.5x5"],
    ["", "RDL", "60x6", ""],
    ["Kofi", "Back squat", "100x5", ""],
    ["", "Bench press", "", "70x5"],
    ["Women", "", "", ""],
    ["", "Bench press", "40x5", ""],
    ["", "", "ride", ""],
  );
  expect(reading.records.map((set) => `${shortSet(set)} ${set.exercise}`)).toEqual([
    "05-05 Ilka 1 85x5 Back squat",
    "05-28 Ilka 1 87.5x5 Back squat",
    "05-05 Ilka 1 60x6 RDL",
    "05-05 Kofi 1 100x5 Back squat",
    "05-28 Kofi 1 70x5 Bench press",
  ]);
  expect(problems(reading)).toEqual(["A7 needed-blank: ", "A8 needed-blank: "]);
  // One blank among many names is a name left out.
  const one = grid(
    ["Ilka", "Back squat", "85x5", ""],
    ["Kofi", "Back squat", "100x5", ""],
    ["Bea", "Back squat", "70x5", ""],
    ["", "Back squat", "60x5", ""],
  );
  expect([one.records.length, problems(one)]).toEqual([3, ["A5 needed-blank: "]]);
});

test("a name at the first of an athlete's tests stands for those below it", () => {
  const { reading } = read("Jumps", [
    ["", "Test", "5/5/2026", "28/5/2026"],
    ["Ilka", "CMJ", 31, 32],
    ["", "Squat jump", 29, ""],
    ["Kofi", "CMJ", 40, 41],
    ["", "Squat jump", 37, 38],
  ]);
  expect(reading.records.map((jump) => `${shortJump(jump)} ${jump.test}`)).toEqual([
    "05-05 Ilka 31 cm CMJ",
    "05-28 Ilka 32 cm CMJ",
    "05-05 Ilka 29 cm Squat jump",
    "05-05 Kofi 40 cm CMJ",
    "05-28 Kofi 41 cm CMJ",
    "05-05 Kofi 37 cm Squat jump",
    "05-28 Kofi 38 cm Squat jump",
  ]);
  expect(problems(reading)).toEqual([]);
});
