import { understandTable } from "../../../src/rows/read-table";
import type { TableName } from "../../../src/rows/table-name";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Words and figures that stand where a block hardly expects them; all invented.

const read = <T extends TableName>(table: T, cells: readonly (readonly unknown[])[], more = {}) =>
  understandTable<T>(table, cells, { today, ...more });

test("a name under a jump test starts that athlete's block, also in the second column", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    ["SL box", "5x15", "o"],
    ["", "Kofi Anstruther", ""],
    ["5 May", "", ""],
    ["SL box", "4x15", "o"],
  ]);
  expect(reading.records.map(shortJump)).toEqual([
    "05-05 Ilka Brandmoor 15 15 15 15 15 ✓",
    "05-05 Kofi Anstruther 15 15 15 15 ✓",
  ]);
});

test("sessions a week beside the day are a note and no gym", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", ""],
    ["5 May", "2 gym/ 3 runs", ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.gym])).toEqual([
    ["05-05 Ilka Brandmoor 1 80x? 0.6", ""],
  ]);
  expect(notes(reading)).toEqual(["B2 Ilka Brandmoor: 2 gym/ 3 runs"]);
  expect(problems(reading)).toEqual([]);
});

test("words in two cells beside a jump are one note", () => {
  const { reading } = read("Jumps", [
    ["Ilka Brandmoor", "", "", "", ""],
    ["5 May", "", "", "", ""],
    ["SQUAT", "kg", "m/s", "", ""],
    ["SL box", "5x15", "o", "straps", "good"],
  ]);
  expect(reading.records.map(({ note }) => note)).toEqual(["straps; good"]);
  expect(notes(reading)).toEqual(["D4 Ilka Brandmoor: straps; good"]);
});

test("a club named above all days is nobody's gym", () => {
  const { reading } = read("Sets", [
    ["Quillbeck club log", "", "", ""],
    ["Ilka Brandmoor", "", "", ""],
    ["SQUAT", "kg", "m/s", "Date"],
    [1, 80, 0.6, "5 May"],
  ]);
  expect(reading.records.map((set) => [shortSet(set), set.gym])).toEqual([
    ["05-05 Ilka Brandmoor 1 80x? 0.6", ""],
  ]);
});

test("shorthand alone in a row counts only where loads stand; elsewhere it is a note", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", "note"],
    [1, 80, 0.6, ""],
    ["", "", "", "85x5"],
    ["", "90x5", "", ""],
  ]);
  expect(reading.records.map(({ loadKg }) => loadKg)).toEqual([80, 90]);
  expect(notes(reading)).toEqual(["D5 Ilka Brandmoor: 85x5"]);
});

test("a day far from all others is questioned at its own cell of the block", () => {
  const weekly = ["7 Apr", "14 Apr", "21 Apr", "28 Apr", "5 May", "12 May", "19 May", "26 May"];
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["SQUAT", "kg", "m/s", "Date"],
    ...[...weekly, "2 June", "9 June", "16 June"].map((day) => [1, 80, 0.6, `${day} 2026`]),
    [1, 80, 0.6, "26 May 2024"],
  ]);
  expect(reading.issues.map(({ cell, code }) => [cell, code])).toEqual([["D14", "day-questioned"]]);
});

test("the last warm-up is the marker however it is shortened", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "m/s", "note"],
    ["wu", 60, 0.9, "last wu"],
    [1, 80, 0.6, ""],
  ]);
  expect(reading.records.map(({ kind }) => kind)).toEqual(["marker", "work"]);
});

test("an answer about a bar holds where spaces stand around what is written of it", () => {
  const { reading } = read(
    "Sets",
    [
      ["Ilka Brandmoor", "", ""],
      ["5 May", " their bar (15?) ", ""],
      ["SQUAT", "kg", "m/s"],
      [1, 80, 0.6],
    ],
    { tab: { bars: new Map([["their bar (15?)", 15]]) } },
  );
  expect(reading.records.map(({ loadKg, barKg }) => [loadKg, barKg])).toEqual([[80, 15]]);
  expect(problems(reading)).toEqual([]);
});

test("a bar above the sets that hardly exists is told of their rows", () => {
  const { reading } = read("Sets", [
    ["Ilka Brandmoor", "", ""],
    ["bar 99", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.issues.map(({ cell, column, code }) => [cell, column, code])).toEqual([
    ["A5", 0, "implausible"],
  ]);
});

const block = (...rows: readonly (readonly unknown[])[]) =>
  read("Sets", [["Ilka", "", "", "", "", ""], ["5 May", "", "", "", "", ""], ...rows]).reading;

test("headings that mean the same are one column, whatever they are called: a load missing in one is told", () => {
  const told = (load: string, speed: string) =>
    problems(
      block(["squat"], ["Set", "kg", "m/s"], [1, 80, 0.6], ["Set", load, speed], ["wu", "", 0.9]),
    );
  expect(told("Weight (kg)", "m/s")).toEqual(["B7 load-blank: "]);
  expect(told("kg", "m/s")).toEqual(["B7 load-blank: "]);
});

test("ten repetitions in columns of their own are read in order", () => {
  const heads = Array.from({ length: 10 }, (_, at) => `Rep ${at + 1}`);
  const speeds = [0.7, 0.69, 0.68, 0.67, 0.66, 0.65, 0.64, 0.63, 0.62, 0.61];
  const { records } = block(["SQUAT", "kg", ...heads], [1, 40, ...speeds]);
  expect(records[0]!.repSpeeds).toEqual(speeds);
});

test("a column that only another block has is blank in this one", () => {
  const { records } = block(
    ["Tool", "SQUAT", "kg", "reps"],
    ["belt sensor", "", "80x5", ""],
    ["belt sensor", 2, 82.5, 5],
    ["", "Set", "kg", "reps"],
    ["", "", "85x5", ""],
    ["", 2, 87.5, 5],
  );
  expect(records.map(({ loadKg, tool }) => `${loadKg} ${tool}`)).toEqual([
    "80 belt sensor",
    "82.5 belt sensor",
    "85 ",
    "87.5 ",
  ]);
});

test("a day in question that stands above its sets is told of their row", () => {
  const days = ["7 Apr", "14 Apr", "21 Apr", "28 Apr", "5 May", "12 May", "19 May", "26 May"];
  const all = [...days, "2 June", "9 June", "16 June"].map((day) => `${day} 2026`);
  const { reading } = read("Sets", [
    ["Ilka", "", "", ""],
    ["SQUAT", "kg", "m/s", ""],
    ...[...all, "26 May 2024"].flatMap((day) => [
      ["", day, "", ""],
      [1, 80, 0.6, ""],
    ]),
  ]);
  expect(reading.issues.map(({ cell, column, code }) => [cell, column, code])).toEqual([
    ["A26", 0, "day-questioned"],
  ]);
});

test("words beside a set lose the spaces around them", () => {
  const reading = block(["SQUAT", "kg", "reps", ""], [1, 80, 5, "  slow start "]);
  expect(reading.records.map(({ note }) => note)).toEqual(["slow start"]);
  expect(notes(reading)).toEqual(["D4 Ilka: slow start"]);
});

test("a set's number may have spaces around it", () => {
  expect(block(["SQUAT", "kg", "reps"], [" 2 ", 80, 5]).records.map(shortSet)).toEqual([
    "05-05 Ilka 2 80x5",
  ]);
});

test("speeds in shorthand are the repetitions', whatever heads the same speeds beside it", () => {
  const reading = block(
    ["SQUAT", "kg x sets x reps", "m/s per set"],
    ["", "85x1x5 .62 .60", ".62 .60"],
  );
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5 0.62 0.6"]);
});

test("repetitions in columns count where the column of all speeds is blank, up to the last one done", () => {
  const reading = block(
    ["SQUAT", "kg x sets x reps", "m/s", "r1", "r2", "r3", "r4"],
    ["", "85x1x3", "", 0.62, 0.6, 0.58, ""],
    ["", "90x1x3", "", 0.5, "fast", "", ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka 1 85x3 0.62 0.6 0.58",
    "05-05 Ilka 2 90x3 0.5 -",
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts.heading])).toEqual([
    ["E5", "not-a-number", "m/s"],
  ]);
});

test("a cell of signs nobody sees beside a day is no note", () => {
  const { reading } = read("Sets", [
    ["Ilka", "", ""],
    ["5 May", "\u200b", "bar 20 "],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(notes(reading)).toEqual(["C2 Ilka: bar 20"]);
});

test.each([
  ["2gym/3 runs", ""],
  ["2  gym/ 3 runs", ""],
  ["home gym/garage", "home gym/garage"],
])("“%s” beside a day is the gym %j", (words, gym) => {
  const { reading } = read("Sets", [
    ["Ilka", "", ""],
    ["5 May", words, ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.records.map((set) => set.gym)).toEqual([gym]);
});

test("a bar named above all days holds, whatever else is said of bars there", () => {
  const { reading } = read("Sets", [
    ["bar 20", "", ""],
    ["our own bar", "", ""],
    ["Ilka", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    [1, 80, 0.6],
  ]);
  expect(reading.records.map(({ barKg }) => barKg)).toEqual([20]);
});

test("days in any column settle the order of day and month, fractions elsewhere do not", () => {
  const rows = (head: readonly string[], ...cells: readonly (readonly unknown[])[]) =>
    read("Sets", [["Ilka"], ["squat"], [...head], ...cells]).reading;
  expect(
    rows(["Set", "Date", "kg"], [1, "4/5", 80], [1, "13/5", 85]).records.map(shortSet),
  ).toEqual(["05-04 Ilka 1 80x?", "05-13 Ilka 1 85x?"]);
  const fraction = read("Sets", [
    ["Ilka", "", "", ""],
    ["4/5", "", "", ""],
    ["SQUAT", "note", "kg", "reps"],
    [1, "13/5", 80, 5],
  ]).reading;
  expect(problems(fraction)[0]).toBe("A2 date-order-unsettled: 4/5");
});

test("a jump named anywhere but where set numbers stand begins no test", () => {
  const jumps = (head: readonly string[], ...cells: readonly (readonly unknown[])[]) =>
    read("Jumps", [["Ilka", "", "", ""], ["5 May", "", "", ""], [...head], ...cells]).reading;
  const beside = jumps(["SQUAT", "kg", "m/s", "note"], ["", "", "", "CMJ"], ["", 42, "", ""]);
  expect(beside.records).toEqual([]);
  expect(notes(beside)).toEqual(["D4 Ilka: CMJ"]);
  const lift = jumps(["Exercise", "kg", "m/s", "note"], ["CMJ", "", "", ""], ["", 42, "", ""]);
  expect(lift.records).toEqual([]);
  expect(notes(lift)).toEqual(["A4 Ilka: CMJ"]);
});

test("under a jump a stack where its name would stand is a note, a number before the attempts is none", () => {
  const { reading } = read("Jumps", [
    ["Ilka", "", "", ""],
    ["5 May", "", "", ""],
    ["", "Set", "kg", "m/s"],
    ["", "CMJ", "", ""],
    ["", "5x15 o", "", ""],
    [3, "", "", ""],
    ["", "", 41, ""],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 41 cm"]);
  expect(notes(reading)).toEqual(["B5 Ilka: 5x15 o"]);
});

test("a jump of nobody is told as such", () => {
  const { reading } = read("Jumps", [
    ["5 May", "", ""],
    ["SQUAT", "kg", "m/s"],
    ["CMJ", 41, ""],
  ]);
  expect(problems(reading)).toEqual(["A3 athlete-missing: CMJ"]);
});

test("repetitions beside shorthand in two parts must be those of both", () => {
  const reading = block(
    ["SQUAT", "kg x sets x reps", "reps", "m/s"],
    ["", "85x3x5+1x3", 5, ""],
    ["", "90x2x5+1x5", 5, ""],
    ["", "95x1x5", "-", ""],
  );
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["C4", "meaning-twice", { other: "85x3x5+1x3" }],
  ]);
  expect(reading.records.map(({ loadKg, reps }) => `${loadKg}x${reps ?? "?"}`)).toEqual([
    ...Array(4).fill("85x?"),
    ...Array(3).fill("90x5"),
    "95x5",
  ]);
});

test("a column nobody explains is asked about by its heading, without the spaces around it", () => {
  const { questions } = read("Sets", [
    ["Ilka", "", "", ""],
    ["5 May", "", "", ""],
    ["SQUAT", "kg", "reps", " Xyz "],
    [1, 80, 5, true],
  ]);
  expect(questions.map(({ column, heading }) => [column, heading])).toEqual([[4, "Xyz"]]);
});

test("a time beside a day counts also where the spreadsheet made a time of it", () => {
  const minute = (cell: unknown) =>
    read("Sets", [
      ["Ilka", "", ""],
      ["5 May", cell, ""],
      ["SQUAT", "kg", "m/s"],
      [1, 80, 0.6],
    ]).reading.records.map((set) => set.minute);
  expect(minute(new Date(1899, 11, 30, 17, 30))).toEqual([1050]);
  expect(minute(new Date(1899, 11, 30))).toEqual([0]);
});

test("jumps under headers without a load are read, block after block", () => {
  const { reading } = read("Jumps", [
    ["Ilka", "", ""],
    ["5 May", "", ""],
    ["SQUAT", "reps", "m/s"],
    ["CMJ", 41, ""],
    ["BENCH", "reps", "m/s"],
    ["CMJ", 42, ""],
  ]);
  expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 41 cm", "05-05 Ilka 42 cm"]);
});

test("two days beside one another in a tab of blocks do not make it a grid", () => {
  const { reading, layout } = read("Sets", [
    ["", "Ilka", ""],
    ["12.5.2026", "12.5.2026", ""],
    ["", "SQUAT", "kg", "m/s"],
    ["", 1, 80, 0.6],
    ["", 2, 80, 0.58],
  ]);
  expect(layout).toBe("blocks one under another");
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 80x? 0.6",
    "05-12 Ilka 2 80x? 0.58",
  ]);
  // Where the rows are no blocks either, the grid says what it lacks.
  const nobody = read("Sets", [
    ["Squat", "5/5/2026", "28/5/2026"],
    ["", "85x5", "85x5"],
  ]);
  expect([nobody.layout, ...problems(nobody.reading)]).toEqual([
    "dates across",
    "A2 needed-blank: ",
  ]);
});
