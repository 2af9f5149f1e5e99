import fc from "fast-check";
import { tableColumns } from "../../src/rows/header/columns";
import { tableNames } from "../../src/rows/table-name";
import { csvCells } from "../rows/layouts/csv-cells";

export type Table = readonly (readonly unknown[])[];

/** Tables a coach might keep, to be spoilt: the four layouts and one plain table of each kind. */
export const samples: readonly Table[] = [
  ...[
    "01-squad-grid-wide-weeks.csv",
    "02-one-tab-per-athlete.csv",
    "03-shorthand-log-decimal-comma.csv",
    "05-jumps-wide-test-days.csv",
  ].map((name) => csvCells(name, "numbers")),
  [
    [
      "Date",
      "Time",
      "Athlete",
      "Exercise",
      "Set",
      "Kind",
      "Reps",
      "Load (kg)",
      "Rep 1",
      "Rep 2",
      "Rep 3",
      "Movement ok?",
      "Note",
    ],
    [
      new Date(2026, 4, 12),
      "18:00",
      "Ilka Brandmoor",
      "back squat",
      "",
      "marker",
      3,
      52.5,
      0.81,
      0.8,
      0.8,
      "",
      "",
    ],
    [
      new Date(2026, 4, 12),
      "18:05",
      "Ilka Brandmoor",
      "back squat",
      1,
      "work",
      5,
      65,
      0.66,
      0.65,
      0.63,
      "y",
      "calm",
    ],
    [
      new Date(2026, 4, 12),
      "18:09",
      "Ilka Brandmoor",
      "back squat",
      2,
      "work",
      5,
      65,
      0.66,
      0.64,
      0.62,
      "y",
      "",
    ],
  ],
  [
    ["Date", "Athlete", "Test", "Height (cm)", "Plates", "Contact ms", "Flight (s)", "Cleared?"],
    ["12/5/2026", "Kofi Anstruther", "box jump", 56, "5x15+5", "", "", "✓"],
    ["26/5/2026", "Kofi Anstruther", "drop jump", "", "", 170, 0.55, ""],
  ],
  [
    ["Date", "Athlete", "Sleep (h)", "Soreness", "Carbs in session?", "Note", "Private?"],
    ["2026-05-12", "Priya Tellander", "5:30", 3, "yes", "night train", "n"],
  ],
  [
    ["Athlete", "Group", "Experience", "Birth year", "Supervisor", "Sessions a week"],
    ["Bea Lindqvale", "track", "novice", 2009, "M. Aspholt from 2026-05-05", 2],
    ["Oona Petrakell", "road", "trained", 1993, "", 1],
  ],
  [
    ["Athlete", "From", "Until", "May do", "By whom", "Pain 0-10"],
    ["Dario Quell", "18/5/2026", "1/6/2026", "out", "club doctor", ""],
  ],
  [
    ["Date", "Athlete", "Kind", "Minutes", "RPE", "km"],
    ["2026-06-16", "Ilka Brandmoor", "interval", "1:05:00", 7, 12.5],
  ],
  [
    ["Date", "Start time", "Race", "Who", "Distance", "Matters"],
    ["2026-08-02", "10:00", "R5", "all", "half marathon", "A"],
  ],
  [
    ["Mass (kg)", "Thickness (mm)", "Number owned"],
    [15, 34, 10],
  ],
  [
    ["Rule", "Value"],
    ["Velocity loss cap", "15 %"],
  ],
];

const headings = tableNames.flatMap((table) =>
  Object.values<readonly string[]>(tableColumns[table]).flat(),
);

/** Cells that coaches, spreadsheets and accidents produce. */
export const cell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: fc.constant("") },
  { weight: 2, arbitrary: fc.constantFrom(...headings) },
  fc.double(),
  fc.integer({ min: -5, max: 300 }),
  fc.double({ min: 0, max: 2, noNaN: true }),
  fc.constantFrom<unknown>(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    -0,
    1e308,
    46000,
    null,
    undefined,
    true,
    false,
  ),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: "grapheme", maxLength: 8 }),
  fc.date({ noInvalidDate: false }),
  fc.constantFrom<unknown>(
    new Date(Number.NaN),
    new Date(2026, 4, 12, 18),
    new Date(1899, 11, 30, 18, 5),
    {},
    [],
  ),
  fc.constantFrom(
    ...'5x5 95|95x5x5 @ .62|105x5x4+1x3|85x3x5  .67|57,5x2x5 .64|5x15+5|5x15+10*|5x15+5 o / +10 x|182/.49|0..70|0.58?|62|.62 .60 .57|0,62/0,61/|DNS|-|n/a|""|as above|wie Di|as Tue|ill|bike only|12/5|5/12/2026|2026-05-12|12.05.26|05.05.|Tue 26 May – pm|Thurs 28/5|Wk 5 (4/5)|Tue|Thu|AVG|Schnitt|total|16/hand|185 lb|5:30|1,204|1.234,5|2-3|y|N|x|✓|✗|wu|marker|u18|Ilka|I. Brandmoor|Brandmor I.|Kofi Anstruther|back squat|KB|box jump|SL box|bar (15?)|kg x sets x reps|=1+1|__proto__|constructor'.split(
      "|",
    ),
  ),
);

const randomTable: fc.Arbitrary<Table> = fc
  .tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 12 }))
  .chain(([width, height]) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
      minLength: height,
      maxLength: height,
    }),
  );

type Spoil = (table: unknown[][]) => void;

const spoil: fc.Arbitrary<Spoil> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.tuple(fc.nat(), fc.nat(), cell).map(
      ([r, c, value]): Spoil =>
        (table) => {
          const line = table[r % Math.max(table.length, 1)];
          if (line !== undefined && line.length > 0) line[c % line.length] = value;
        },
    ),
  },
  fc.nat().map(
    (r): Spoil =>
      (table) =>
        void table.splice(r % Math.max(table.length, 1), 1),
  ),
  fc.nat().map(
    (r): Spoil =>
      (table) =>
        void table.splice(r % (table.length + 1), 0, []),
  ),
  fc.nat().map(
    (r): Spoil =>
      (table) => {
        const line = table[r % Math.max(table.length, 1)];
        if (line !== undefined) table.push([...line]);
      },
  ),
  fc.tuple(fc.nat(), fc.nat()).map(
    ([a, b]): Spoil =>
      (table) => {
        const [i, j] = [a % Math.max(table.length, 1), b % Math.max(table.length, 1)];
        if (table[i] !== undefined && table[j] !== undefined)
          [table[i], table[j]] = [table[j], table[i]];
      },
  ),
  fc.tuple(fc.nat(9), fc.nat(9)).map(
    ([a, b]): Spoil =>
      (table) => {
        for (const line of table) [line[a], line[b]] = [line[b], line[a]];
      },
  ),
  fc.nat(9).map(
    (c): Spoil =>
      (table) => {
        for (const line of table) line.splice(c, 1);
      },
  ),
  fc.tuple(fc.nat(9), cell).map(
    ([c, value]): Spoil =>
      (table) => {
        for (const line of table) line.splice(c, 0, value);
      },
  ),
);

const spoiltSample: fc.Arbitrary<Table> = fc
  .tuple(fc.constantFrom(...samples), fc.array(spoil, { maxLength: 6 }))
  .map(([sample, spoils]) => {
    const table = sample.map((line) => [...line]);
    for (const change of spoils) change(table);
    return table;
  });

const stacked: fc.Arbitrary<Table> = fc
  .tuple(spoiltSample, spoiltSample)
  .map(([a, b]) => [...a, [], ...b]);

/** Random tables, spoilt samples, and two samples one under another. */
export const anyTable: fc.Arbitrary<Table> = fc.oneof(
  { weight: 2, arbitrary: randomTable },
  { weight: 5, arbitrary: spoiltSample },
  { weight: 1, arbitrary: stacked },
);
