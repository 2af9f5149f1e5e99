import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { notes, problems, shortJump, shortSet, today } from "./short";

// Several columns under each date of a grid; athletes and figures are invented.

const sets = (under: readonly string[], ...rows: readonly (readonly unknown[])[]) =>
  understandTable(
    "Sets",
    [
      ["Squat 2026", ...under.map(() => "")],
      ["", "5/5", ...under.slice(1).map((_, at) => (at === under.length / 2 - 1 ? "28/5" : ""))],
      ["Athlete", ...under],
      ...rows,
    ],
    { today },
  ).reading;

const jumps = (under: readonly string[], ...rows: readonly (readonly unknown[])[]) =>
  understandTable(
    "Jumps",
    [
      ["Drop jump 2026", ...under.map(() => "")],
      ["", "5/5", ...under.slice(2).map(() => ""), "28/5"],
      ["Athlete", ...under],
      ...rows,
    ],
    { today },
  ).reading;

test("load and scheme, reserve and note in columns of their own hold for each set", () => {
  const reading = sets(
    ["kg", "sets x reps", "m/s", "RIR", "kg", "sets x reps", "m/s", "RIR"],
    ["Ilka", 85, "3x5", ".62/.6/.58", 2, "", "", "", ""],
    ["Kofi", 60, "1x5 tired", "", "", 62.5, "-", "", 3],
  );
  expect(reading.records.map((set) => [shortSet(set), set.repsInReserve, set.note])).toEqual([
    ["05-05 Ilka 1 85x5 0.62", 2, ""],
    ["05-05 Ilka 2 85x5 0.6", 2, ""],
    ["05-05 Ilka 3 85x5 0.58", 2, ""],
    ["05-05 Kofi 1 60x5", null, "tired"],
  ]);
  expect([problems(reading), notes(reading)]).toEqual([[], []]);
});

test("a scheme that cannot be read, or says words only, is no set of its load", () => {
  const reading = sets(
    ["kg", "sets x reps", "kg", "sets x reps"],
    ["Ilka", 85, "3xfive 5", 85, "as Tue"],
    ["Kofi", 85, "ride", 85, 80],
  );
  expect(reading.records).toEqual([]);
  expect(problems(reading)).toEqual([
    "C4 scheme-unread: 3xfive 5",
    "E4 nothing-to-repeat: as Tue",
    "E5 scheme-unread: 80",
  ]);
  expect(notes(reading)).toEqual(["C5 Kofi: ride"]);
});

test("a mark repeats the column of the same meaning to its left, never another athlete's", () => {
  const reading = sets(
    ["kg", "reps", "kg", "reps"],
    ["Ilka", 85, 5, 90, '"'],
    ["Kofi", '"', 5, 60, '"'],
    ["Wren", '"', "", "", ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 85x5",
    "05-28 Ilka work 90x5",
    "05-05 Kofi work ?x5",
    "05-28 Kofi work 60x5",
  ]);
  expect(problems(reading)).toEqual([
    'B5 nothing-to-repeat: "',
    'B6 nothing-to-repeat: "',
    "A5 load-blank: ",
  ]);
});

test("a title's unit holds for loads under dates that name none, not for what stands beside them", () => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Squat, lb – 2026", "", "", "", ""],
      ["", "5/5", "", "28/5", ""],
      ["Athlete", "load", "RIR", "load", "reps"],
      ["Ilka", 100, 2, "100x5", ""],
    ],
    { today },
  );
  const pounds = 100 * 0.45359237;
  expect(reading.records.map(({ loadKg, repsInReserve }) => [loadKg, repsInReserve])).toEqual([
    [pounds, 2],
    [pounds, null],
  ]);
  expect(problems(reading)).toEqual([]);
});

test("headings that begin anew under a date are another set of that day", () => {
  const reading = sets(
    ["kg", "m/s", "kg", "m/s", "kg", "m/s", "kg", "m/s"],
    ["Ilka", 80, 0.7, 85, 0.62, 90, 0.55, "", ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 80x? 0.7",
    "05-05 Ilka work 85x? 0.62",
    "05-28 Ilka work 90x? 0.55",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("two runs of one day stand in columns that begin anew; a mark repeats the run to the left", () => {
  const { reading } = understandTable(
    "Runs",
    [
      ["Runs", "", "", "", "", ""],
      ["", "12/5/2026", "", "", "28/5/2026", ""],
      ["Athlete", "km", "min", "km", "km", "min"],
      ["Ilka", 10, 45, 5, '"', 40],
      ["Kofi", '"', "", "", 8, ""],
    ],
    { today },
  );
  expect(reading.records.map(({ athlete, km, minutes }) => [athlete, km, minutes])).toEqual([
    ["Ilka", 10, 45],
    ["Ilka", 5, null],
    ["Ilka", 5, 40],
    ["Kofi", 8, null],
  ]);
  expect(problems(reading)).toEqual(['B5 nothing-to-repeat: "']);
});

test("two speeds under one heading of loads leave both out", () => {
  const reading = sets(
    ["kg", "mean speed", "peak speed", "kg", "mean speed", "peak speed"],
    ["Ilka", 80, 0.7, 0.9, 85, 0.62, ""],
    ["Kofi", "80x5", 0.7, 0.9, "", "", ""],
  );
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 80x?",
    "05-28 Ilka work 85x? 0.62",
    "05-05 Kofi 1 80x5",
  ]);
  expect(problems(reading)).toEqual(["D4 speeds-twice: 0.9", "D5 speeds-twice: 0.9"]);
});

test("two contacts beside one drop are two jumps from it", () => {
  const reading = jumps(
    ["drop cm", "contact ms", "contact ms", "contact ms"],
    ["Ilka", 30, 182, 178, 190],
  );
  expect(reading.records.map((jump) => [shortJump(jump), jump.dropCm])).toEqual([
    ["05-05 Ilka 0.182/?", 30],
    ["05-05 Ilka 0.178/?", 30],
    ["05-28 Ilka 0.19/?", null],
  ]);
});

test("a drop under the date is no test's name where the row or the title names the test", () => {
  const tests = (first: string, own: readonly unknown[]) =>
    understandTable("Jumps", [
      [first === "" ? "Drop jump" : "", "", "", ""],
      ["", "", "5 May 2026", "", "28 May 2026", ""],
      [first, "Athlete", "drop", "height", "drop", "height"],
      [...own, "Ilka", 30, 31, 30, 32],
    ]).reading.records.map(({ test, dropCm, heightCm }) => `${test} ${heightCm} from ${dropCm}`);
  const jumps = ["31 from 30", "32 from 30"];
  expect(tests("Test", ["depth jump"])).toEqual(jumps.map((one) => `depth jump ${one}`));
  expect(tests("", [""])).toEqual(jumps.map((one) => `Drop jump ${one}`));
});

test("contact and flight under one date are one jump, from the drop that stands beside them", () => {
  const reading = jumps(
    ["drop cm", "contact ms", "flight s", "contact ms"],
    ["Ilka", 30, "182 sore", 0.49, 190],
    ["Kofi", '"', 170, "", ""],
    ["Wren", 40, "", "", ""],
  );
  expect(reading.records.map((jump) => [shortJump(jump), jump.dropCm, jump.note])).toEqual([
    ["05-05 Ilka 0.182/0.49", 30, "sore"],
    ["05-28 Ilka 0.19/?", null, ""],
    ["05-05 Kofi 0.17/?", null, ""],
    ["05-05 Wren  ?", 40, ""],
  ]);
  expect(problems(reading)).toEqual(['B5 nothing-to-repeat: "', "A6 no-figure: "]);
});

test("whether a height was cleared stands beside it; headings that begin anew are another try", () => {
  const reading = jumps(
    ["height", "cleared", "height", "cleared", "height"],
    ["Ilka", 30, "y", 35, "n", "36 x"],
  );
  expect(reading.records.map((jump) => [shortJump(jump), jump.cleared])).toEqual([
    ["05-05 Ilka 30 cm", true],
    ["05-05 Ilka 35 cm", false],
    ["05-28 Ilka 36 cm", null],
  ]);
});

test("a lift named under one date holds for that date alone, a load without figures for none", () => {
  const reading = sets(
    ["lift", "kg", "lift", "kg"],
    ["Ilka", "bench press", 40, "", 80],
    ["Kofi", "", "5x5", "deadlift", 100],
  );
  expect(reading.records.slice(0, 2).map(({ exercise }) => exercise)).toEqual([
    "bench press",
    "squat",
  ]);
  expect(reading.records.at(-1)?.exercise).toBe("deadlift");
  expect(problems(reading)).toEqual(["C5 load-blank: 5x5"]);
});

test("shorthand under kg counts beside its repetitions where both say the same", () => {
  const reading = sets(["kg", "reps", "kg", "reps"], ["Ilka", "85x5", 5, "86x3", 5]);
  expect(reading.records.map(shortSet)).toEqual(["05-05 Ilka 1 85x5", "05-28 Ilka 1 86x?"]);
  expect(problems(reading)).toEqual(["E4 meaning-twice: 5"]);
});

test("units in brackets alone name what stands under the dates", () => {
  const reading = sets(["(kg)", "(m/s)", "(kg)", "(m/s)"], ["Ilka", 80, 0.7, 85, 0.62]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-05 Ilka work 80x? 0.7",
    "05-28 Ilka work 85x? 0.62",
  ]);
});

test("words under kg are a note where they stand alone, and told where a speed stands beside them", () => {
  const reading = sets(["kg", "m/s", "kg", "m/s"], ["Ilka", "ride", 0.6, "swim", ""]);
  expect(problems(reading)).toEqual(["B4 not-a-number: ride"]);
  expect(notes(reading)).toEqual(["D4 Ilka: swim"]);
  expect(reading.notes?.map(({ span }) => span)).toEqual(["day"]);
});

test("too many speeds are told at the shorthand they stand in, whatever the column of speeds says", () => {
  const reading = sets(
    ["kg", "m/s", "kg", "m/s"],
    ["Ilka", "85x3x3 .62 .6 .58 .57", "-", "85x3x3", ".62 .6 .58 .57"],
  );
  expect(problems(reading)).toEqual([
    "B4 speeds-too-many: 85x3x3 .62 .6 .58 .57",
    "E4 speeds-too-many: .62 .6 .58 .57",
  ]);
});

test("figures and words of a flight or a stack stand under their own heading", () => {
  const reading = jumps(
    ["flight s", "stack", "flight s"],
    ["Ilka", "0.49 sore", "2x15 xo", 0.5],
    ["Kofi", "", "", "late"],
  );
  expect(reading.records.map((jump) => `${shortJump(jump)} ${jump.note}`)).toEqual([
    "05-05 Ilka ?/0.49 sore",
    "05-05 Ilka 15 15 ✓ sore",
    "05-28 Ilka ?/0.5 ",
  ]);
  expect(notes(reading)).toEqual(["B4 Ilka: sore", "D5 Kofi: late"]);
});

test("minutes and hours under dates are read in the unit of their heading", () => {
  const { reading } = understandTable(
    "Runs",
    [
      ["Runs", "", "", "", ""],
      ["", "12/5/2026", "", "28/5/2026", ""],
      ["Athlete", "Duration (h)", "RPE", "min", "RPE"],
      ["Ilka", 1.5, 3, 45, 4],
      ["Kofi", "1:05:00", "", "40 min", ""],
    ],
    { today },
  );
  expect(reading.records.map(({ minutes, exertion }) => [minutes, exertion])).toEqual([
    [90, 3],
    [45, 4],
    [65, null],
    [40, null],
  ]);
  expect(problems(reading)).toEqual([]);
});

test("a load typed with its unit does not turn a row of small figures into headings", () => {
  const reading = sets(
    ["reps", "kg", "movement ok", "RIR", "reps", "notes", "movement ok", "RIR"],
    ["Ilka", 3, "85 kg", "y", 1, 3, "calm", "y", 2],
  );
  expect(reading.records.map((set) => `${shortSet(set)} ${set.repsInReserve}`)).toEqual([
    "05-05 Ilka work 85x3 1",
    "05-28 Ilka work ?x3 2",
  ]);
  expect(problems(reading)).toEqual(["A4 load-blank: "]);
  expect(notes(reading)).toEqual(["G4 Ilka: calm"]);
});

test.each([
  [["L", "R", "L", "R"], "L", "R"],
  [["left kg", "right kg", "left kg", "right kg"], "left", "right"],
])("a side named under each date is the side of the title's lift: %j", (under, left, right) => {
  const { reading } = understandTable(
    "Sets",
    [
      ["Athlete", "5 May", "", "7 May", ""],
      ["", ...under],
      ["Ilka", 40, 41, 42, 43],
    ],
    { today, title: "Split squat" },
  );
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(({ exercise, loadKg }) => [exercise, loadKg])).toEqual([
    [`split squat ${left}`, 40],
    [`split squat ${right}`, 41],
    [`split squat ${left}`, 42],
    [`split squat ${right}`, 43],
  ]);
});

test("sides under dates name no lift where no title does", () => {
  const cells = [
    ["Athlete", "5 May", "", "7 May", ""],
    ["", "L", "R", "L", "R"],
    ["Ilka", "40x5", "40x5", "42x5", "42x5"],
  ];
  const { reading } = understandTable("Sets", cells, { today, said: true });
  expect(reading.records).toEqual([]);
  expect(problems(reading)).toEqual(["A1 exercise-missing: Athlete"]);
});

test.each([[["am", "pm", ""]], [["Morning", "Evening", ""]], [["früh", "abends", ""]]])(
  "two runs of a day stand under one date, and a day with one run is as it was: %j",
  (under) => {
    const { reading, questions } = understandTable(
      "Runs",
      [
        ["Athlete", "5 May", "", "6 May"],
        ["", ...under],
        ["Ilka", "40 min easy", "20 min easy", "30 min easy"],
        ["Tomo", "50 min easy", "", ""],
      ],
      { today },
    );
    expect([problems(reading), questions]).toEqual([[], []]);
    expect(
      reading.records.map(({ athlete, day, minutes }) => [athlete, day - today, minutes]),
    ).toEqual([
      ["Ilka", -42, 40],
      ["Ilka", -42, 20],
      ["Ilka", -41, 30],
      ["Tomo", -42, 50],
    ]);
  },
);

test.each([[["Ilka", "", ""]], [["Ilka", "Ilka", "Ilka"]]])(
  "load, repetitions and speed in rows under a date are refused by their cells: names %j",
  (names) => {
    const cells = [
      ["Athlete", "What", "4 May", "7 May"],
      [names[0], "load", 80, 82.5],
      [names[1], "reps", 5, 5],
      [names[2], "speed", 0.62, 0.6],
    ];
    const found = findTables([{ name: "Squat", cells }], { today });
    expect(found.map(({ table, sureness }) => [table, sureness < 0.6])).toEqual([["Sets", true]]);
    const { reading } = found[0]!.understanding;
    expect(reading.records).toEqual([]);
    expect(problems(reading)).toEqual([
      "B2 figures-in-rows: load",
      "B3 figures-in-rows: reps",
      "B4 figures-in-rows: speed",
    ]);
  },
);
