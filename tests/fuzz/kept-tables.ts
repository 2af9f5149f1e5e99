import fc from "fast-check";
import { tableColumns } from "../../src/rows/header/columns";
import { type TableName, tableNames } from "../../src/rows/table-name";
import type { Table } from "./tables";

/** A table as a coach may keep it, the row where its data begin, and the tables its tab may be. */
export type KeptTable = {
  readonly table: TableName;
  readonly cells: Table;
  readonly first: number;
  /** Sets and jumps are kept in one tab: what one passes over the other reads. */
  readonly also: readonly TableName[];
  readonly title: string;
};

const pick = <Value>(...values: Value[]) => fc.constantFrom(...values);
const words = (text: string) => fc.constantFrom(...text.split("|"));
const athletes = words("Ilka Brandmoor|Kofi Anstruther|Wren Calloway|Priya Tellander");
const days = fc.oneof(
  words("2026-05-12|2026-05-19|2026-05-26|2026-06-02"),
  pick(new Date(2026, 4, 12), new Date(2026, 4, 19), new Date(2026, 5, 2)),
);
const speeds = pick<unknown>(0.71, 0.66, 0.62, ".58", "0,64");
const remarks = words("calm|night train|sore knee|left early");

/** Usual cells of each meaning, by table. */
const usual: { readonly [T in TableName]: Readonly<Record<string, fc.Arbitrary<unknown>>> } = {
  Athletes: {
    athlete: athletes,
    group: words("road|track"),
    event: words("mile|10 km"),
    experience: words("novice|trained"),
    birthYear: pick<unknown>(1996, 2001, "U18"),
    under18: words("y|n"),
    supervisor: words("M. Aspholt|M. Aspholt from 2026-05-05"),
    baselineFrom: days,
    baselineTo: days,
    sessions: pick(1, 2, 3),
    step: pick<unknown>("2.5 %", 0.025, 3),
    notes: remarks,
  },
  Availability: {
    athlete: athletes,
    from: words("2026-05-12|2026-05-14"),
    until: words("2026-06-12|2026-06-19"),
    mayDo: words("out|modified|full"),
    by: words("club doctor|physio"),
    site: words("knee|Achilles"),
    pain: pick(0, 2, 4),
    note: remarks,
  },
  Sets: {
    day: days,
    athlete: athletes,
    exercise: words("back squat|hip thrust"),
    minute: words("18:00|07:30"),
    set: pick(1, 2, 3),
    kind: words("work|warm-up|marker"),
    reps: pick(3, 5),
    load: pick<unknown>(60, 62.5, 85, "72,5", "80 kg"),
    speed: fc.oneof(speeds, words("0.62 0.60 0.57|.66/.64/.61")),
    speedIs: words("mean|peak"),
    tool: words("camera|band"),
    bar: pick(15, 20),
    gym: words("club gym|school hall"),
    movedWell: words("y|n"),
    reserve: pick(1, 2, 3),
    by: words("ma|jt"),
    note: remarks,
  },
  Jumps: {
    day: days,
    athlete: athletes,
    test: words("box jump|drop jump"),
    minute: words("18:00|07:30"),
    attempt: pick(1, 2, 3),
    height: pick<unknown>(41, 44.5, "46 cm"),
    stack: words("5x15+5|3x20"),
    cleared: words("y|n"),
    drop: pick(30, 40),
    landing: pick(20, 40),
    contact: pick(0.17, 0.182),
    flight: pick(0.49, 0.51),
    note: remarks,
  },
  Diary: {
    day: days,
    athlete: athletes,
    minute: words("21:00|07:30"),
    sleepH: pick<unknown>(7, 6.5, "7:30"),
    sleepQuality: pick(2, 4),
    soreness: pick(1, 3),
    fatigue: pick(2, 3),
    stress: pick(1, 4),
    mood: pick(3, 5),
    carbs: words("y|n"),
    food: words("porridge|rice"),
    newToday: words("shoes|none at all"),
    note: remarks,
    private: words("y|n"),
  },
  Runs: {
    day: days,
    athlete: athletes,
    minute: words("18:00|07:30"),
    kind: words("easy|long|interval"),
    minutes: pick<unknown>(45, 60, "1:10:00"),
    exertion: pick(3, 6),
    km: pick<unknown>(8, 12.5, "10 km"),
  },
  Races: {
    day: days,
    race: words("R5|Spring open"),
    start: words("10:00|11:30"),
    who: words("all|Ilka Brandmoor|road"),
    distance: words("10 km|half marathon|5000 m"),
    surface: words("road|grass"),
    matters: words("A|B|C"),
  },
  Plates: { mass: pick(5, 10, 15, 20), thickness: pick(21, 34, 54), owned: pick(2, 4) },
  Rules: { rule: words("Velocity loss cap|Most sets"), value: pick<unknown>("15 %", 5) },
};

const needed: { readonly [T in TableName]: readonly string[] } = {
  Athletes: ["athlete", "group", "experience"],
  Availability: ["athlete", "from", "mayDo"],
  Sets: ["day", "athlete", "exercise", "load"],
  Jumps: ["day", "athlete", "test", "height"],
  Diary: ["day", "athlete", "sleepH"],
  Runs: ["day", "athlete", "minutes"],
  Races: ["day", "race"],
  Plates: ["mass", "thickness"],
  Rules: ["rule", "value"],
};

const carriable = ["day", "athlete", "exercise", "test"];

/** One row a record, any of the table's columns in any order, some merged down, repetitions apart. */
const plain: fc.Arbitrary<KeptTable> = fc.constantFrom(...tableNames).chain((table) => {
  const fields = Object.keys(usual[table]);
  const columns: Readonly<Record<string, readonly string[]>> = tableColumns[table];
  const optional = fields.filter((field) => !needed[table].includes(field));
  return fc
    .tuple(
      fc.subarray(optional).chain((more) =>
        fc.shuffledSubarray([...needed[table], ...more], {
          minLength: needed[table].length + more.length,
        }),
      ),
      fc.integer({ min: 1, max: 6 }),
      fc.subarray(carriable),
      fc.integer({ min: 0, max: 2 }),
      table === "Sets" ? fc.constantFrom(0, 0, 3) : fc.constant(0),
    )
    .chain(([order, height, merged, titles, reps]) =>
      fc
        .tuple(
          fc.tuple(...order.map((field) => fc.constantFrom(...columns[field]!))),
          fc.array(
            fc.tuple(
              fc.tuple(...order.map((field) => usual[table][field]!)),
              fc.array(speeds, { minLength: reps, maxLength: reps }),
            ),
            { minLength: height, maxLength: height },
          ),
        )
        .map(([headings, rows]): KeptTable => {
          const lines = rows.map(([line, own], row) => [
            ...line.map((cell, at) => (merged.includes(order[at]!) && row % 2 === 1 ? "" : cell)),
            ...own,
          ]);
          const head = [...headings, ...Array.from({ length: reps }, (_, at) => `Rep ${at + 1}`)];
          const above = [["Kept by hand"], []].slice(0, titles);
          return {
            table,
            cells: [...above, head, ...lines],
            first: above.length + 1,
            also: [],
            title: "",
          };
        }),
    );
});

const schemes = words(
  "95x5x5|85x3x5 .67|105x5x4+1x3|5x5 95|57,5x2x5 .64|80x3 (bar slipped, redo)|82.5x3x5 @ .62|70x3x5 .71/.70/.69",
);
const jumpCells = fc.oneof(words("5x15+5|5x15+10*|5x15+5 o / +10 x|46 sore|41,5"), pick(42, 44.5));
const runCells = words("45 easy|10 km tempo|1:20:00 long|8x400|60' @4|50 min hilly");
const scale = pick<unknown>(2, 3, "4");
const gridDates = words("12.5.2026|19.5.2026|26.5.2026|2.6.2026").map((first) => {
  const all = ["12.5.2026", "19.5.2026", "26.5.2026", "2.6.2026", "9.6.2026"];
  return all.slice(all.indexOf(first));
});

const gridOf = {
  Sets: { title: "Back squat, kg x sets x reps", cell: schemes },
  Jumps: { title: "Straight-leg box – best clean", cell: jumpCells },
  Runs: { title: "Runs", cell: runCells },
  Diary: { title: "Soreness", cell: scale },
} as const;
type Grid = keyof typeof gridOf;

/** One row an athlete, dates across, one cell a day. */
const grid: fc.Arbitrary<KeptTable> = fc
  .tuple(fc.constantFrom<Grid>("Sets", "Jumps", "Runs", "Diary"), gridDates, fc.boolean())
  .chain(([table, dates, noted]) => {
    const { title, cell } = gridOf[table];
    const used = dates.slice(0, 3);
    const width = used.length;
    return fc
      .array(fc.tuple(athletes, fc.array(cell, { minLength: width, maxLength: width }), remarks), {
        minLength: 1,
        maxLength: 4,
      })
      .map((rows) => ({
        table,
        cells: [
          [title, "", ""],
          ["Athlete", ...used, ...(noted ? ["Notes"] : [])],
          ...rows.map(([athlete, own, note]) => [athlete, ...own, ...(noted ? [note] : [])]),
        ],
        first: 2,
        also: [],
        title: "",
      }))
      .filter(() => width >= 2);
  });

const under: { readonly [G in Grid]: readonly (readonly [string, fc.Arbitrary<unknown>])[] } = {
  Sets: [
    ["kg", pick<unknown>(80, 82.5, "85")],
    ["reps", pick(3, 5)],
    ["m/s", speeds],
    ["RIR", pick(1, 2)],
    ["notes", remarks],
    ["movement ok", words("y|n")],
  ],
  Jumps: [
    ["height", pick<unknown>(41, 44.5, "46 sore")],
    ["cleared", words("y|n")],
    ["drop", pick(30, 40)],
    ["contact ms", pick<unknown>(182, "178 sore")],
    ["flight s", pick(0.49, 0.51)],
    ["notes", remarks],
  ],
  Runs: [
    ["min", pick<unknown>(45, "1:10:00")],
    ["km", pick<unknown>(8, "10,5")],
    ["rpe", pick(3, 6)],
    ["kind", words("easy|long")],
    ["notes", remarks],
  ],
  Diary: [
    ["sleep", pick<unknown>(7, "7:30")],
    ["soreness", scale],
    ["mood", scale],
    ["carbs", words("y|n")],
    ["food", words("porridge|rice")],
    ["notes", remarks],
  ],
};

/** Dates across, several columns under each. */
const columnsUnderDates: fc.Arbitrary<KeptTable> = fc
  .tuple(fc.constantFrom<Grid>("Sets", "Jumps", "Runs", "Diary"))
  .chain(([table]) =>
    fc
      .tuple(
        fc.constant(table),
        fc.shuffledSubarray([...under[table]], { minLength: 2 }),
        fc.constantFrom(2, 3),
      )
      .chain(([, columns, dates]) =>
        fc
          .array(
            fc.tuple(
              athletes,
              fc.tuple(
                ...Array.from({ length: dates }, () => columns.map(([, cell]) => cell)).flat(),
              ),
            ),
            { minLength: 1, maxLength: 3 },
          )
          .map((rows) => ({
            table,
            cells: [
              [gridOf[table].title],
              [
                "",
                ...["12.5.2026", "19.5.2026", "26.5.2026"]
                  .slice(0, dates)
                  .flatMap((date) => columns.map((_, at) => (at === 0 ? date : ""))),
              ],
              [
                "Athlete",
                ...Array.from({ length: dates }, () => columns.map(([head]) => head)).flat(),
              ],
              ...rows.map(([athlete, own]) => [athlete, ...own]),
            ],
            first: 3,
            also: [],
            title: "",
          })),
      ),
  );

/** Weeks over weekdays, with a column of notes in each week. */
const weeks: fc.Arbitrary<KeptTable> = fc
  .array(fc.tuple(athletes, schemes, schemes, remarks, schemes, schemes, remarks), {
    minLength: 1,
    maxLength: 3,
  })
  .map((rows) => ({
    table: "Sets",
    cells: [
      ["Back squat, kg x sets x reps 2026"],
      ["", "Wk 5 (4/5)", "", "", "Wk 6 (18/5)", "", ""],
      ["Name", "Tue", "Thu", "notes", "Tue", "Thu", "notes"],
      ...rows,
    ],
    first: 3,
    also: [],
    title: "",
  }));

/** A log of shorthand: one row for several sets. */
const log: fc.Arbitrary<KeptTable> = fc
  .tuple(
    fc.array(
      fc.tuple(
        days,
        athletes,
        words("back squat|hip thrust|box jump"),
        schemes,
        fc.oneof(words(".62 .60|.66"), fc.constant("")),
        remarks,
        pick(1, 2),
      ),
      { minLength: 1, maxLength: 5 },
    ),
    fc.boolean(),
  )
  .map(([rows, shorthand]) => ({
    table: "Sets",
    cells: shorthand
      ? [
          ["Date", "Athlete", "Exercise", "kg x sets x reps", "Speed per set", "Notes", "RIR"],
          ...rows.map((row) => [...row]),
        ]
      : [
          ["Date", "Athlete", "Exercise", "Load", "Sets", "Reps", "Notes", "RIR"],
          ...rows.map(([day, who, , , , note, left]) => [
            day,
            who,
            "back squat",
            85,
            3,
            5,
            note,
            left,
          ]),
        ],
    first: 1,
    also: ["Jumps"],
    title: "",
  }));

/** Blocks one under another: an athlete, a day, a header, sets. */
const blocks: fc.Arbitrary<KeptTable> = fc
  .array(
    fc.tuple(
      athletes,
      words("12.5.2026|19.5.2026"),
      words("back squat|hip thrust"),
      fc.array(fc.tuple(pick(80, 82.5, 85), pick(3, 5), speeds, words("y|n"), remarks), {
        minLength: 1,
        maxLength: 3,
      }),
    ),
    { minLength: 1, maxLength: 2 },
  )
  .map((all) => ({
    table: "Sets",
    cells: all.flatMap(([athlete, day, lift, sets]) => [
      [athlete],
      [day],
      [lift, "kg", "reps", "m/s", "ok", "notes"],
      ...sets.map((set, at) => [at + 1, ...set]),
      [],
    ]),
    first: 3,
    also: ["Jumps"],
    title: "",
  }));

/** One row an athlete and day, a column for each lift or test. */
const testsAcross: fc.Arbitrary<KeptTable> = fc
  .tuple(
    fc.boolean(),
    fc.array(
      fc.tuple(days, athletes, schemes, schemes, jumpCells, pick(182, 178), pick(0.49), remarks),
      { minLength: 1, maxLength: 4 },
    ),
  )
  .map(([sets, rows]) => ({
    table: sets ? "Sets" : "Jumps",
    cells: sets
      ? [
          ["Date", "Athlete", "Squat kg x sets x reps", "Hip thrust kg x sets x reps", "Notes"],
          ...rows.map(([day, who, one, two, , , , note]) => [day, who, one, two, note]),
        ]
      : [
          ["Date", "Athlete", "Box jump", "Drop jump contact ms", "Drop jump flight s", "Notes"],
          ...rows.map(([day, who, , , jump, contact, flight, note]) => [
            day,
            who,
            jump,
            contact,
            flight,
            note,
          ]),
        ],
    first: 1,
    also: [sets ? "Jumps" : "Sets"],
    title: "",
  }));

/** Races down, runners across. */
const runnersAcross: fc.Arbitrary<KeptTable> = fc
  .array(
    fc.tuple(
      days,
      words("R5|Spring open"),
      words("10 km|5000 m"),
      words("A|B"),
      pick("x", ""),
      pick("x", ""),
    ),
    { minLength: 1, maxLength: 4 },
  )
  .map((rows) => ({
    table: "Races",
    cells: [["Date", "Race", "Distance", "Matters", "Ilka Brandmoor", "Kofi Anstruther"], ...rows],
    first: 1,
    also: [],
    title: "",
  }));

/** Tables of one athlete: the name in the tab's title. */
const ofOne: fc.Arbitrary<KeptTable> = fc
  .array(
    fc.tuple(days, words("back squat|hip thrust"), pick(80, 85), pick(3, 5), speeds, remarks),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((rows) => ({
    table: "Sets",
    cells: [["Date", "Exercise", "Load", "Reps", "Speed", "Notes"], ...rows],
    first: 1,
    also: [],
    title: "Ilka Brandmoor",
  }));

export const keptTable: fc.Arbitrary<KeptTable> = fc.oneof(
  { weight: 5, arbitrary: plain },
  { weight: 3, arbitrary: grid },
  { weight: 3, arbitrary: columnsUnderDates },
  weeks,
  { weight: 2, arbitrary: log },
  { weight: 2, arbitrary: blocks },
  { weight: 2, arbitrary: testsAcross },
  runnersAcross,
  ofOne,
);
