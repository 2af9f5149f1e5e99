import { understandTable } from "../../../src/rows/read-table";
import { counts, problems, shortSet } from "./short";

// Ten ways plain rows come with quirks; athletes, dates and figures are invented.
const sets = (cells: unknown[][], options = {}) => understandTable("Sets", cells, options);
const short = (cells: unknown[][]) => sets(cells).reading.records.map(shortSet);

test("merged titles above, a row of units below the header, averages at the end", () => {
  const { reading } = sets([
    ["QUILLBECK RC – strength", "", "", "", "", ""],
    ["", "", "", "", "", ""],
    ["Date", "Athlete", "Lift", "Set", "Weight", "Speed"],
    ["", "", "", "", "(lb)", "m/s"],
    ["2026-05-12", "Nils", "squat", 1, 185, 0.66],
    ["2026-05-12", "Nils", "squat", 2, 195, 0.6],
    ["Average", "", "", "", 190, 0.63],
  ]);
  expect(reading.records.map(({ loadKg }) => Math.round((loadKg ?? 0) * 10) / 10)).toEqual([
    83.9, 88.5,
  ]);
  expect(counts(reading)).toEqual([2, 0, 1, 4]);
});

test("a header over two rows: rep speeds over 1, 2, 3", () => {
  expect(
    short([
      ["Date", "Athlete", "Exercise", "Set", "Load (kg)", "Rep speeds m/s", "", ""],
      ["", "", "", "", "", 1, 2, 3],
      ["2026-05-12", "Ilka", "squat", 1, 65, 0.66, 0.65, 0.63],
    ]),
  ).toEqual(["05-12 Ilka 1 65x? 0.66 0.65 0.63"]);
});

const repsOfTwo = ["05-12 Ilka 1 65x3 0.66 0.65 0.63", "05-12 Ilka 2 65x3 0.64 0.64 0.62"];

test.each([
  ["each row numbers its set", ["Set"], [[1], [2]], repsOfTwo],
  [
    "rows go on with the day, the athlete and the lift above",
    [],
    [[], []],
    repsOfTwo.map((one) => one.replace(/ [12] /, " work ")),
  ],
])("numbers alone over speeds count repetitions where %s", (_, heading, numbers, read) => {
  const head = ["Date", "Athlete", "Exercise", ...heading, "Load (kg)", "Reps", 1, 2, 3, "RIR"];
  const rows = (first: unknown[], second: unknown[]) =>
    short([
      head,
      [...first, ...numbers[0]!, 65, 3, 0.66, 0.65, 0.63, 2],
      [...second, ...numbers[1]!, 65, 3, 0.64, 0.64, 0.62, 2],
    ]);
  const ilka = ["2026-05-12", "Ilka", "squat"];
  expect(rows(ilka, ilka)).toEqual(read);
  expect(rows(ilka, ['"', "dto.", "as above"])).toEqual(read);
});

test("numbers alone over the speeds of one row a lift stay those of its sets", () => {
  const head = ["Date", "Athlete", "Exercise", "Load (kg)", "Reps", 1, 2];
  expect(
    short([
      head,
      ["2026-05-12", "Ilka", "squat", 65, 5, 0.66, 0.65],
      ["2026-05-12", "Kofi", "squat", 95, 5, 0.61, 0.6],
      ["2026-05-14", "Ilka", "squat", 65, 5, 0.64, 0.63],
      ["2026-05-14", "Kofi", "squat", 95, 5, 0.6, 0.58],
    ]),
  ).toHaveLength(8);
});

test("a German log over two rows: units and numbers under its headings, sums below each day", () => {
  const { reading } = sets([
    ["Krafttraining Sommersaison", "", "", "", "", "", "", "", "", "", ""],
    ["Datum", "Athlet", "Übung", "Satz", "Last", "Wdh.", "Bar-Geschw.", "", "", "RIR", "Bem."],
    ["", "", "", "", "kg", "", 1, 2, 3, "", ""],
    ["12.05.2026", "Ilka", "Kniebeuge", 1, 65, 3, "0,66", "0,65", "0,63", 3, ""],
    ["", "dto.", '"', 2, 65, 3, 0.64, 0.64, 0.62, 2, "Knie zu"],
    ["", "Summe", "", "", 130, "", "", "", "", "", ""],
  ]);
  expect(reading.records.map(shortSet)).toEqual(repsOfTwo);
  expect(reading.records.map(({ repsInReserve, note }) => [repsInReserve, note])).toEqual([
    [3, ""],
    [2, "Knie zu"],
  ]);
  expect(problems(reading)).toEqual([]);
});

test("date, athlete and lift written once a block, as under merged cells", () => {
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "Mean speed"],
    [new Date(2026, 4, 12), "Ilka", "squat", 1, 65, 0.66],
    ["", "", "", 2, 65, 0.64],
    ["", "Kofi", "squat", 1, 105, 0.62],
    ["", "", "", 2, 105, 0.61],
    [new Date(2026, 4, 14), "Ilka", "squat", 1, 67.5, 0.62],
    ["", "", "", 2, 67.5, 0.6],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 65x? 0.66",
    "05-12 Ilka 2 65x? 0.64",
    "05-12 Kofi 1 105x? 0.62",
    "05-12 Kofi 2 105x? 0.61",
    "05-14 Ilka 1 67.5x? 0.62",
    "05-14 Ilka 2 67.5x? 0.6",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("blocks with a blank line before each, also before the first", () => {
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "Mean speed"],
    ["", "", "", "", "", ""],
    [new Date(2026, 4, 12), "Ilka", "squat", 1, 65, 0.66],
    ["", "", "", 2, 65, 0.64],
    ["", "", "", "", "", ""],
    [new Date(2026, 4, 14), "Ilka", "squat", 1, 67.5, 0.62],
    ["", "", "", 2, 67.5, 0.6],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 65x? 0.66",
    "05-12 Ilka 2 65x? 0.64",
    "05-14 Ilka 1 67.5x? 0.62",
    "05-14 Ilka 2 67.5x? 0.6",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("one forgotten date among many is reported, not carried down", () => {
  const rows = Array.from({ length: 10 }, (_, at) => ["2026-05-12", "Ilka", "squat", at + 1, 65]);
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Set", "Load"],
    ...rows,
    ["", "Kofi", "squat", 1, 105],
  ]);
  expect(problems(reading)).toEqual(["A12 needed-blank: "]);
  expect(counts(reading)).toEqual([10, 1, 0, 1]);
});

test("ditto marks in every column", () => {
  expect(
    short([
      ["Date", "Athlete", "Exercise", "Set", "Load", "Speed"],
      ["2026-05-12", "Ilka", "squat", 1, 65, 0.66],
      ['"', '"', "ditto", 2, '"', 0.64],
      ["〃", "as above", '"', 3, "as above", 0.63],
    ]),
  ).toEqual(["05-12 Ilka 1 65x? 0.66", "05-12 Ilka 2 65x? 0.64", "05-12 Ilka 3 65x? 0.63"]);
});

test("German headers with decimal commas, day first settled by one 28th", () => {
  expect(
    short([
      [
        "Tag",
        "Athletin",
        "Übung",
        "Satz",
        "Wdh",
        "Gewicht [kg]",
        "Geschwindigkeit (m/s)",
        "Technik ok?",
      ],
      ["12/5/2026", "Oona", "Kniebeuge", 1, 5, "57,5", "0,64", "ja"],
      ["28/5/2026", "Oona", "Kniebeuge", 1, 5, "60,0", "0,61", "nein"],
    ]),
  ).toEqual(["05-12 Oona 1 57.5x5 0.64", "05-28 Oona 1 60x5 0.61"]);
});

test("month first settled by one 28th; nothing settles it: asked, and the answer is used", () => {
  const rows = (last: string) => [
    ["Date", "Athlete", "Exercise", "Load"],
    ["5/12/2026", "Nils", "squat", 90],
    [last, "Nils", "squat", 90],
  ];
  expect(short(rows("5/28/2026"))).toEqual(["05-12 Nils work 90x?", "05-28 Nils work 90x?"]);
  const open = sets(rows("6/9/2026"));
  expect(problems(open.reading)).toEqual([
    "A2 date-order-unsettled: 5/12/2026",
    "A3 date-order-unsettled: 6/9/2026",
  ]);
  expect(open.questions).toEqual([
    {
      column: 1,
      heading: "Date",
      about: "date order",
      samples: ["5/12/2026", "6/9/2026"],
      guess: null,
      choices: ["day first", "month first"],
    },
  ]);
  const answers = { columns: [{ column: 1, dateOrder: "month first" as const }] };
  expect(sets(rows("6/9/2026"), { answers }).reading.records.map(shortSet)).toEqual([
    "05-12 Nils work 90x?",
    "06-09 Nils work 90x?",
  ]);
});

test("loads that look like pounds without saying so are asked about, never guessed", () => {
  const rows = [
    ["Date", "Athlete", "Exercise", "Load", "Speed"],
    ...[135, 155, 185, 205, 225].map((load, at) => [
      `2026-05-${12 + at}`,
      "Nils",
      "squat",
      load,
      0.8 - at / 20,
    ]),
  ];
  const open = sets(rows);
  expect(open.reading.records.every(({ loadKg }) => loadKg === null)).toBe(true);
  expect(problems(open.reading)).toEqual(["D1 unit-unsettled: Load"]);
  expect(open.questions).toMatchObject([{ column: 4, about: "unit", choices: ["kg", "lb"] }]);
  const answered = sets(rows, { answers: { columns: [{ column: 4, unit: "lb" }] } });
  expect(answered.reading.records[0]?.loadKg).toBeCloseTo(61.2, 1);
  expect(answered.questions).toEqual([]);
});

test("a whole column of 62, 60, 58 is cm/s; two such cells among m/s are slips with a mend", () => {
  const rows = (speeds: number[]) => [
    ["Date", "Athlete", "Exercise", "Load", "Speed"],
    ...speeds.map((speed, at) => ["2026-05-12", "Ilka", "squat", 65 + at, speed]),
  ];
  expect(sets(rows([62, 60, 58, 57, 55, 61])).reading.records[0]?.setSpeed).toBe(0.62);
  const slips = sets(rows([0.62, 60, 0.58, 0.57, 0.55, 61])).reading;
  expect(slips.issues.map(({ cell, facts }) => [cell, facts.mend])).toEqual([
    ["E3", 0.6],
    ["E7", 0.61],
  ]);
});

test("ticks, crosses, yes and no in several forms; blank is not recorded", () => {
  const said = ["y", "N", "✓", "✗", "yes", "ja", "nein", true, "OK!", "", "-", "x"];
  const { reading } = sets([
    ["Date", "Athlete", "Exercise", "Load", "Movement ok?"],
    ...said.map((ok, at) => ["2026-05-12", "Ilka", "squat", 65 + at, ok]),
  ]);
  expect(reading.records.map(({ movedWell }) => movedWell)).toEqual([
    true,
    false,
    true,
    false,
    true,
    true,
    false,
    true,
    true,
    null,
    null,
    null,
  ]);
  expect(problems(reading)).toEqual(["E13 not-yes-or-no: x"]);
});

test("a header printed again on each page is no row; “Sets” that run 1, 2, 3 are set numbers", () => {
  const head = ["Date", "Athlete", "Exercise", "Sets", "Reps", "Load"];
  const { reading } = sets([
    head,
    ["2026-05-12", "Ilka", "squat", 1, 5, 65],
    ["2026-05-12", "Ilka", "squat", 2, 5, 65],
    head,
    ["2026-05-12", "Ilka", "squat", 3, 5, 65],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 65x5",
    "05-12 Ilka 2 65x5",
    "05-12 Ilka 3 65x5",
  ]);
  expect(counts(reading)).toEqual([3, 0, 0, 2]);
});

test("“Sets” that count: three sets of five from one row", () => {
  const { reading, layout } = sets([
    ["Date", "Athlete", "Exercise", "Sets", "Reps", "Load (kg)", "Speed per set"],
    ["2026-05-12", "Ilka", "squat", 3, 5, 65, "0.66 0.65 0.64"],
    ["2026-05-14", "Ilka", "squat", 3, 5, 67.5, 0.62],
  ]);
  expect(layout).toBe("rows of several sets");
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka 1 65x5 0.66",
    "05-12 Ilka 2 65x5 0.65",
    "05-12 Ilka 3 65x5 0.64",
    "05-14 Ilka 1 67.5x5 0.62",
    "05-14 Ilka 2 67.5x5",
    "05-14 Ilka 3 67.5x5",
  ]);
});

test("misspelt headings that their values bear out are used; a strange one is asked about", () => {
  const rows = [
    ["Dtae", "Atlete", "Exercize", "Load", "X7", "Weather"],
    ...Array.from({ length: 4 }, (_, at) => [
      "2026-05-12",
      "Ilka",
      "squat",
      65,
      0.6 + at / 100,
      "rain",
    ]),
  ];
  const { reading, columns, questions } = sets(rows);
  expect(reading.rowsRead).toBe(4);
  expect(
    columns
      .filter(({ by }) => by === "near heading")
      .map(({ field, sureness }) => [field, sureness]),
  ).toEqual([
    ["day", 0.85],
    ["athlete", 0.85],
    ["exercise", 0.85],
  ]);
  expect(questions.map(({ heading, guess, samples }) => [heading, guess, samples])).toEqual([
    ["X7", "speed", ["0.6", "0.61", "0.62"]],
    ["Weather", null, ["rain"]],
  ]);
  const answers = {
    columns: [
      { column: 5, field: "speed" },
      { column: 6, field: null },
    ],
  };
  const answered = sets(rows, { answers });
  expect(answered.reading.records[0]?.setSpeed).toBe(0.6);
  expect(answered.questions).toEqual([]);
});

test("load and speed under each other's headings are asked about", () => {
  const { questions } = sets([
    ["Date", "Athlete", "Exercise", "Speed", "Load"],
    ...Array.from({ length: 6 }, (_, at) => [
      "2026-05-12",
      "Ilka",
      "squat",
      65 + at,
      0.6 + at / 100,
    ]),
  ]);
  expect(questions.map(({ heading, guess }) => [heading, guess])).toEqual([
    ["Speed", "load"],
    ["Load", "speed"],
  ]);
});

test("ratings of form are left alone and asked about; body mass is never taken for the load", () => {
  const { reading, questions } = sets([
    ["Date", "Athlete", "Body mass (kg)", "Exercise", "Load (kg)", "Form"],
    ...Array.from({ length: 6 }, (_, at) => [
      "2026-05-12",
      "Ilka",
      54,
      "squat",
      65 + at,
      3 + (at % 3),
    ]),
  ]);
  expect(reading.records.map(({ loadKg, movedWell }) => [loadKg, movedWell])).toEqual(
    [65, 66, 67, 68, 69, 70].map((load) => [load, null]),
  );
  expect(problems(reading)).toEqual([]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Form", "Body mass (kg)"]);
});

test("a comma before three digits is settled by its column, or reported", () => {
  const heights = (cells: string[]) =>
    understandTable("Jumps", [
      ["Date", "Athlete", "Test", "Height (cm)", "Landing height (mm)"],
      ...cells.map((cell) => ["2026-05-12", "Kofi", "box jump", 50, cell]),
    ]).reading;
  expect(problems(heights(["1,250", "300"]))).toEqual(["E2 comma-unsettled: 1,250"]);
  expect(heights(["1,250", "1,000.5"]).records[0]?.landingCm).toBe(125);
  expect(heights(["1,250", "300,5"]).records[0]?.landingCm).toBe(0.125);
});
