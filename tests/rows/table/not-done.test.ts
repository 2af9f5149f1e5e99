import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, shortSet, today } from "../layouts/short";

// Rows in which words say that nothing was done; athletes and figures are invented.

const head = ["Date", "Athlete", "Exercise", "Set", "kg", "Reps", "m/s", "Note"];
const read = (...rows: unknown[][]) => understandTable("Sets", [head, ...rows], { today }).reading;
const row = (...cells: unknown[]) => ["2026-05-12", "Ilka", ...cells];

test.each([
  [["squat", 1, "ill", "", "", ""], "E2 Ilka: ill"],
  [["squat", 1, "", "malade", "", ""], "F2 Ilka: malade"],
  [["squat", 1, "", "", "calf pain 4/10", ""], "G2 Ilka: calf pain 4/10"],
  [["rest", "", "", "", "", ""], "C2 Ilka: rest"],
  [["", "", "away – camp", "", "", ""], "E2 Ilka: away – camp"],
  [["squat", 1, "", "", "", "Ill, did not train"], "H2 Ilka: Ill, did not train"],
  [["squat", "", "-", "", "", "didn’t train today (calf)"], "H2 Ilka: didn’t train today (calf)"],
  [["squat", 1, "", "", "", "sick"], "H2 Ilka: sick"],
  [["squat", 1, "", "", "", "missed"], "H2 Ilka: missed"],
  [["squat", "", "", "", "", "ill, stayed home"], "H2 Ilka: ill, stayed home"],
  [["squat", 1, "", "", "", "Sick (flu?)"], "H2 Ilka: Sick (flu?)"],
  [["squat", 1, "", "", "", "stayed at home"], "H2 Ilka: stayed at home"],
  [["squat", 1, "", "", "", "zu Hause geblieben"], "H2 Ilka: zu Hause geblieben"],
  [["squat", 1, "", "", "", "didn't come"], "H2 Ilka: didn't come"],
])("a row that says why nothing was done is no set, and its words are kept: %j", (cells, words) => {
  const reading = read(row(...cells));
  expect([reading.records, problems(reading), notes(reading)]).toEqual([[], [], [words]]);
  expect(counts(reading)).toEqual([1, 0, 0, 1]);
});

test.each([[["squat", 1, "DNS", "-", "n/a", ""]], [["squat", "skipped", "", "", "", ""]]])(
  "marks that say no more than that nothing was done are no words: %j",
  (cells) => {
    const reading = read(row(...cells));
    expect([reading.records, problems(reading), notes(reading)]).toEqual([[], [], []]);
  },
);

test("its own note is kept beside them", () => {
  expect(notes(read(row("squat", 1, "ill", "", "", "back on Monday")))).toEqual([
    "E2 Ilka: ill",
    "H2 Ilka: back on Monday",
  ]);
});

test.each([
  [["squat", 1, 80, "ill", "", ""], "05-12 Ilka 1 80x?"],
  [["squat", 1, "ill", 3, "", ""], "05-12 Ilka 1 ?x3"],
  [["squat", 1, "80 ill", "", "", ""], "05-12 Ilka 1 ?x?"],
  [["pull-up", 1, "BW", "", "", ""], "05-12 Ilka 1 ?x?"],
  [["plank", 1, "-", "", "", ""], "05-12 Ilka 1 ?x?"],
  [["squat", 1, true, "ill", "", ""], "05-12 Ilka 1 ?x?"],
  [["squat", 1, 80, "", "", "Ill, did not train"], "05-12 Ilka 1 80x?"],
  [["pull-up", 1, "", "", "", "slight knee pain"], "05-12 Ilka 1 ?x?"],
  [["pull-up", 1, "", "", "", "did not train well"], "05-12 Ilka 1 ?x?"],
  [["squat", 1, 80, "", "", "ill, stayed home after"], "05-12 Ilka 1 80x?"],
  [["pull-up", 1, "", "", "", "felt ill afterwards"], "05-12 Ilka 1 ?x?"],
  [["pull-up", 1, "", "", "", "did not train, 3 easy ones"], "05-12 Ilka 1 ?x?"],
])("a row with a figure, or with words that do not say so, stays a set: %j", (cells, set) => {
  expect(read(row(...cells)).records.map(shortSet)).toEqual([set]);
});

test("under merged cells it is no set of the lift above", () => {
  const reading = read(
    row("squat", 1, 80, 5, 0.6, ""),
    ["", "", "", 2, 80, 5, 0.59, ""],
    ["2026-05-14", "", "", "", "ill", "", "", ""],
    ["2026-05-19", "", "", 1, 80, 5, 0.6, ""],
    ["", "", "", 2, 80, 5, 0.6, ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x5 0.6",
    "05-12 Ilka 2 80x5 0.59",
    "05-19 Ilka 1 80x5 0.6",
    "05-19 Ilka 2 80x5 0.6",
  ]);
  expect(notes(reading)).toEqual(["E4 Ilka: ill"]);
});

test("in blocks they are the athlete's of the day as well", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Ilka", "", ""],
      ["12 May 2026", "", ""],
      ["squat", "kg", "m/s"],
      [1, "ill", ""],
    ],
    { today },
  );
  expect([reading.records, notes(reading)]).toEqual([[], ["B4 Ilka: ill"]]);
});

const plan = (done: string, ...rows: unknown[][]) =>
  understandTable(
    "Sets",
    [["Date", "Athlete", "Exercise", "kg", "m/s", done, "Note"], ...rows.map((of) => row(...of))],
    { today },
  );

test.each(["Done?", "Completed", "Erledigt", "Hecho"])(
  "of a plan with a column “%s” only what is ticked, or has a speed, was lifted",
  (heading) => {
    const { reading, questions } = plan(
      heading,
      ["squat", 80, "", true, ""],
      ["squat", 82.5, "", false, "felt flat"],
      ["squat", 85, 0.6, false, ""],
      ["bench", 40, "", "", ""],
    );
    expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 85]);
    expect([problems(reading), questions]).toEqual([[], []]);
    expect(notes(reading)).toEqual(["G3 Ilka: felt flat"]);
    expect(counts(reading)).toEqual([4, 0, 0, 1]);
  },
);

test("boxes of which none is ticked say nothing; where one is, a blank says no", () => {
  const loads = (...done: unknown[]) =>
    plan("Done", ...done.map((cell, at) => ["squat", 80 + at, "", cell, ""])).reading.records.map(
      ({ loadKg }) => loadKg,
    );
  expect(loads(false, false)).toEqual([80, 81]);
  expect(loads("y", "n", "")).toEqual([80]);
  expect(loads("✓", "", "")).toEqual([80]);
});

test("a column of loads called done is asked about, as any other", () => {
  const { questions } = plan("Done", ["squat", 80, "", 82.5, ""]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Done"]);
});

test("a row of several sets that was not done is none of them", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "Sets", "Reps", "kg", "Done"],
      row("squat", 2, 5, 80, true),
      row("squat", 2, 5, 85, false),
    ],
    { today },
  );
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 80]);
});

test("where no box is ticked, a speed beside one row of several sets leaves the others sets", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "Sets x reps", "kg", "m/s", "Done"],
      row("squat", "2x5", 80, 0.62, "n"),
      row("squat", "2x5", 85, "", "n"),
    ],
    { today },
  );
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 80, 85, 85]);
});

test("where an athlete's boxes are ticked no more, the rows up to today are told once; those to come are a plan", () => {
  const on = (day: string, who: string, kg: number, done: boolean) => [
    day,
    who,
    "squat",
    kg,
    "",
    done,
    "",
  ];
  const { reading } = understandTable(
    "Sets",
    [
      ["Date", "Athlete", "Exercise", "kg", "m/s", "Done?", "Note"],
      on("2026-05-05", "Ilka", 80, true),
      on("2026-05-05", "Ilka", 82.5, false),
      on("2026-05-05", "Bea", 40, true),
      on("2026-05-07", "Ilka", 80, false),
      on("2026-05-12", "Ilka", 80, false),
      on("2026-05-12", "Bea", 40, true),
      on("2099-05-19", "Bea", 40, false),
    ],
    { today },
  );
  expect(reading.records.map(({ athlete, loadKg }) => `${athlete} ${loadKg}`)).toEqual([
    "Ilka 80",
    "Bea 40",
    "Bea 40",
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["F5", "boxes-open", { athlete: "Ilka" }],
  ]);
});

test("a speed beside several sets says that all of them were done, though the box is not ticked", () => {
  const of = (sets: string, reps: number, speed: unknown, done: boolean) =>
    row("squat", sets, reps, speed, done);
  const cells = [
    ["Date", "Athlete", "Exercise", "Sets x reps", "kg", "m/s", "Done?"],
    of("2x5", 80, "", true),
    of("2x3", 90, 0.5, false),
    of("2x2", 95, "0.5 0.49", false),
    of("2x5", 85, "", false),
  ];
  const { reading } = understandTable("Sets", cells, { today });
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x5",
    "05-12 Ilka 2 80x5",
    "05-12 Ilka 3 90x3 0.5",
    "05-12 Ilka 4 90x3",
    "05-12 Ilka 5 95x2",
    "05-12 Ilka 6 95x2",
  ]);
  expect(problems(reading)).toEqual(["F4 speeds-unsettled: 0.5 0.49"]);
});
