import { noTabAnswers } from "../../../src/rows/layout/tab-answers";
import { Unfolded } from "../../../src/rows/layout/unfolded";
import { withTabAnswer } from "../../../src/rows/layout/with-tab-answer";
import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

// Rows and headings at the edges of logs of shorthand, and what holds for a whole tab; all invented.

const understand = <T extends TableName>(
  table: T,
  cells: readonly (readonly unknown[])[],
  more = {},
) => understandTable<T>(table, cells, { today, ...more });
const logOf = (head: readonly string[], ...rows: readonly (readonly unknown[])[]) =>
  understand("Sets", [["Date", "Athlete", "Exercise", ...head], ...rows]).reading;

test("two dates in a title do not make a grid of complete rows", () => {
  const runs = [
    ["Runs", "4 May", "31 May"],
    ["Date", "Athlete", "Minutes"],
    ["2026-05-05", "Ilka", 40],
  ];
  const diary = [
    ["Sleep", "4 May", "31 May"],
    ["Date", "Athlete", "Sleep h"],
    ["2026-05-05", "Ilka", 7],
  ];
  expect(understand("Runs", runs).reading.records).toMatchObject([
    { athlete: "Ilka", minutes: 40 },
  ]);
  expect(understand("Diary", diary).reading.records).toMatchObject([
    { athlete: "Ilka", sleepH: 7 },
  ]);
});

test("blank loads say nothing of how a log is written; set numbers beside counts number the rows", () => {
  const row = (...cells: unknown[]) => ["2026-05-12", "Ilka", "squat", ...cells];
  const layout = (...cells: readonly (readonly unknown[])[]) => understand("Sets", cells).layout;
  const head = ["Date", "Athlete", "Exercise"];
  expect(layout([...head, "Load"], row("85x3x5"), row(""), row(""))).toBe("rows of several sets");
  const both = [...head, "Set", "Sets", "Load"];
  expect(layout(both, row(1, 3, 80), row(2, 3, 80), row(3, 3, 80))).toBe("plain rows");
});

test("pounds in a heading hold for loads and bars of a log, whatever else is written there", () => {
  const [set] = logOf(
    ["sets x reps", "Load (lb)", "Bar (lb)"],
    ["2026-05-12", "Ilka", "squat", "1x5", 100, 45],
  ).records;
  // The international pound is 0.45359237 kg exactly (NIST SP 811, appendix B).
  expect(set!.loadKg).toBeCloseTo(45.359237, 9);
  expect(set!.barKg).toBeCloseTo(20.41165665, 9);
});

test("a rest in the first row is read; a sum's word before a name is no row of sums", () => {
  const reading = logOf(
    ["kg x sets x reps"],
    ["2026-05-12", "Ilka", " rest ", ""],
    ["Total", "Ilka", "squat", "85x1x5"],
    ["Total", "", "", "85x1x5"],
  );
  expect(notes(reading)).toEqual(["D2 Ilka: rest"]);
  expect(problems(reading)).toEqual(["A3 not-a-day: Total"]);
  expect(counts(reading)).toEqual([1, 1, 0, 2]);
});

test("set numbers and single repetitions beside shorthand are asked about where they stand, blanks are not", () => {
  const asked = (set: unknown) =>
    problems(
      logOf(
        ["Set", "kg x sets x reps"],
        ["2026-05-12", "Ilka", "squat", set, "85x1x5"],
        ["2026-05-13", "Ilka", "squat", set, "85x1x5"],
      ),
    );
  expect(asked(7)).toEqual(["D1 heading-unknown: Set"]);
  expect(asked("")).toEqual([]);
});

test("words beside a jump that was not done are its day's note, joined to the cell's own", () => {
  const jump = (cell: unknown, note: string) => {
    const { reading } = understand("Jumps", [
      ["Date", "Athlete", "Exercise", "kg x sets x reps", "Note"],
      ["2026-05-12", "Ilka", "CMJ ", cell, note],
    ]);
    return [
      ...reading.records.map((one) => [shortJump(one), one.note].join(" | ")),
      ...reading.notes!.map(({ cell: at, span, words }) => `${at} ${span}: ${words}`),
    ];
  };
  expect(jump("DNS", "sore")).toEqual(["D2 day: CMJ: sore"]);
  expect(jump("42?", "sore")).toEqual(["D2 day: CMJ: sore"]);
  expect(jump("tired", "sore")).toEqual(["D2 day: CMJ: tired; sore"]);
  expect(jump("tired", "")).toEqual(["D2 day: CMJ: tired"]);
  expect(jump("43 late", "sore")).toEqual(["05-12 Ilka 43 cm | sore", "D2 day: late"]);
});

const squat = (...cells: unknown[]) => ["2026-05-12", "Ilka", "squat", ...cells];
const done = squat("85x1x5", "", "");

test("without shorthand a speed is a set without a load, told at the shorthand's cell; a word is a note", () => {
  const head = ["kg x sets x reps", "Speeds", "Note"];
  const speed = logOf(head, done, squat("", 0.6, "calm"));
  expect(speed.records.map((set) => `${shortSet(set)} ${set.note}`)).toEqual([
    "05-12 Ilka 1 85x5 ",
    "05-12 Ilka work ?x? 0.6 calm",
  ]);
  expect(problems(speed)).toEqual(["D3 load-blank: "]);
  const word = logOf(head, done, squat("", "fast", "calm"));
  expect(word.records).toHaveLength(1);
  expect(problems(word)).toEqual([]);
  expect(notes(word)).toEqual(["D3 Ilka: squat; calm; Speeds fast"]);
});

test("a load in its own column counts, also where no shorthand or only words stand beside it", () => {
  const reading = logOf(
    ["sets x reps", "kg", "Note"],
    squat("1x5", 80, ""),
    squat("", 82.5, "calm"),
    squat("amrap", 85, "late"),
    squat("amrap", "-", ""),
  );
  expect(reading.records.map((set) => `${shortSet(set)} ${set.note}`)).toEqual([
    "05-12 Ilka 1 80x5 ",
    "05-12 Ilka work 82.5x? calm",
    "05-12 Ilka work 85x? late; amrap",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("counts beside shorthand that says nothing are words of the note", () => {
  const reading = logOf(["sets x reps", "Reps", "Note"], squat("", 5, ""), squat("80x1x5", "", ""));
  expect(notes(reading)).toEqual(["D2 Ilka: squat; Reps 5"]);
});

test("repetitions alone say that a set was done; without a column for them nothing does", () => {
  const reps = logOf(["Load", "Sets", "Reps"], squat("85x5", "", ""), squat("", "", 5));
  expect(reps.records.map(shortSet)).toEqual(["05-12 Ilka 1 85x5", "05-12 Ilka 2 ?x5"]);
  const speeds = understand("Sets", [
    ["Date", "Speed", "Athlete", "Exercise", "Load"],
    ["2026-05-12", 0.6, "Ilka", "squat", "85x5"],
    ["2026-05-12", 0.6, "Ilka", "squat", ""],
  ]).reading;
  expect(speeds.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 85x5 0.6",
    "05-12 Ilka work ?x? 0.6",
  ]);
});

test("sets without a load in the load's column have a blank load", () => {
  const reading = logOf(["Load"], squat("85x5"), squat("1x5"));
  expect(reading.records.map(shortSet)).toEqual(["05-12 Ilka 1 85x5", "05-12 Ilka 2 ?x5"]);
  expect(problems(reading)).toEqual(["D3 load-blank: 1x5"]);
});

test("words of a load's cell are told there, the row's note is its own", () => {
  const reading = logOf(
    ["Load", "Sets", "Reps", "Note"],
    squat(80, 2, 5, ""),
    squat("light", 1, 5, "own"),
  );
  expect(reading.records.map(({ note }) => note)).toEqual(["", "", "own"]);
  expect(problems(reading)).toEqual(["D3 not-a-number: light"]);
});

test("what is wrong with a copied row's speeds is told with their heading", () => {
  const reading = logOf(["kg x sets x reps", "Speeds"], squat("85x1x5", ""), [
    "2026-05-14",
    "Ilka",
    "as Tue",
    "",
    ".6?",
  ]);
  expect(reading.issues.map(({ cell, facts }) => [cell, facts.heading])).toEqual([
    ["E3", "Speeds"],
  ]);
});

test("the header itself and a label without a name name nobody; spaces around a label do no harm", () => {
  const diary = (...cells: readonly (readonly unknown[])[]) =>
    understand("Diary", cells).reading.records.map(({ athlete }) => athlete);
  const rows = [
    ["2026-05-12", 7],
    ["2026-05-13", 8],
  ];
  expect(diary([" Name: Ilka Brandmoor ", ""], ["Date", "Sleep"], ...rows)[0]).toBe(
    "Ilka Brandmoor",
  );
  expect(diary(["Name: Ilka Brandmoor (U18)", ""], ["Date", "Sleep"], ...rows)[0]).toBe(
    "Ilka Brandmoor",
  );
  expect(diary(["Name: 5", ""], ["Date", "Sleep"], ...rows)).toEqual([]);
  expect(diary(["Sportler", "Datum"], ["x", "2026-05-12"], ["y", "2026-05-13"])).toEqual([]);
});

test("the lift the coach named for the tab holds for rows that have no other figure than a load", () => {
  const cells = [
    ["Date", "Athlete", "kg"],
    ["2026-05-12", "Ilka", 80],
  ];
  const { reading } = understand("Sets", cells, { tab: { exercise: "squat" } });
  expect(reading.records.map((set) => `${shortSet(set)} ${set.exercise}`)).toEqual([
    "05-12 Ilka work 80x? squat",
  ]);
});

test("a title's year counts wherever the title stands alone, and no number among words is one", () => {
  const year = (...title: unknown[]) =>
    understand("Jumps", [
      title,
      ["Date", "Athlete", "Test", "Height"],
      ["12 May", "Ilka", "CMJ", 41],
    ]).reading.issues.map(({ code }) => code);
  expect(year("", "", "JUMP TESTS 2026", "")).toEqual([]);
  expect(year(2026, "a", "b", "c")).toEqual(["year-missing"]);
  expect(year("JUMP TESTS 2026", "a", "b", "c")).toEqual([]);
});

test("a mass that is not one number with kg behind it is no bar", () => {
  const bar = (said: string) =>
    withTabAnswer(noTabAnswers, "bar", "their bar", said)?.bars?.get("their bar") ?? null;
  expect(["15", "15 kg", "12,5kg", "2kg5", "kg 15"].map(bar)).toEqual([15, 15, 12.5, null, null]);
});

test("a blank cell raises no question of a tab", () => {
  const into = new Unfolded("Sets", [["", ".6 .5"]], 0);
  into.ask("speeds", "");
  into.ask("speeds", ".6 .5");
  expect(into.asks).toEqual([{ about: "speeds", sample: ".6 .5" }]);
});

test("a row of a grid with one good cell counts as read, and a cell that cannot be read leaves out itself", () => {
  const { reading } = understand("Sets", [
    ["Squat 2026, kg x sets x reps", "", ""],
    ["", "5/5", "28/5"],
    ["Ilka", "85x1x5", "85?x"],
    ["Kofi", "95?x", "95x1x5"],
  ]);
  expect(counts(reading)).toEqual([2, 0, 0, 2]);
  expect(reading.issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow])).toEqual([
    ["C3", "scheme-unread", false],
    ["B4", "scheme-unread", false],
  ]);
});

test("the row's own note is parted from the words of its cells without spaces between", () => {
  const reading = logOf(["kg x sets x reps", "Note"], squat("85x1x5 slipped", " late "));
  expect(reading.records.map(({ note }) => note)).toEqual(["late; slipped"]);
});

test("rows of one session go on numbering its sets; only a row of several sets typed twice is one", () => {
  const typed = ["Load", "Sets", "Reps"];
  const reading = logOf(
    typed,
    squat("3x5 80", "", ""),
    squat("2x5 80", "", ""),
    squat(80, 1, 5),
    squat(80, 1, 5),
    squat("2x5 80", "", ""),
  );
  expect(reading.records.map((set) => `${set.row} ${set.set}`)).toEqual([
    "2 1",
    "2 2",
    "2 3",
    "3 4",
    "3 5",
    "4 6",
    "5 7",
  ]);
  expect(problems(reading)).toEqual(["A6 doubled-row: "]);
});

test("a warm-up and another session of the day are numbered by themselves", () => {
  const reading = logOf(
    ["Load", "Set kind", "Time"],
    squat("1x5 60", "warm-up", ""),
    squat("2x5 80", "work", ""),
    squat("2x5 80", "work", "18:00"),
  );
  expect(reading.records.map((set) => `${set.row} ${set.set}`)).toEqual([
    "2 1",
    "3 1",
    "3 2",
    "4 1",
    "4 2",
  ]);
});

test("the sign behind a figure is pounds, and kilos are kilograms", () => {
  const reading = logOf(
    ["Load"],
    squat("140# 3x3"),
    squat("3x3 145 #"),
    squat("50KGS 3x3"),
    squat("130 pounds 3x3"),
    squat("60 kilos 3x3"),
  );
  expect(problems(reading)).toEqual([]);
  const loads = reading.records.map(({ loadKg }) => loadKg!.toFixed(1));
  expect([...new Set(loads)]).toEqual(["63.5", "65.8", "50.0", "59.0", "60.0"]);
});
