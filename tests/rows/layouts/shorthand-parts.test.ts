import { dayFromIso } from "../../../src/coaching/calendar/day";
import { nearYear } from "../../../src/rows/column/near-year";
import { DaySettler } from "../../../src/rows/layout/day-settler";
import { schemeGroups } from "../../../src/rows/layout/shorthand/scheme";
import {
  noSense,
  orderFromWords,
  schemeSense,
} from "../../../src/rows/layout/shorthand/scheme-order";
import { SessionMemory } from "../../../src/rows/layout/shorthand/session-memory";
import { setCell } from "../../../src/rows/layout/shorthand/set-cell";
import { figuresFor, spreadSpeeds } from "../../../src/rows/layout/shorthand/spread-speeds";
import { likelyAthlete } from "../../../src/rows/layout/tab-athlete";
import { understandTable } from "../../../src/rows/read-table";
import { dayFromText } from "../../../src/rows/value/day-text";
import { sayRowIssue } from "../../../src/words/row-issues";
import { notes, problems, shortSet } from "./short";

const day = (iso: string) => dayFromIso(iso) as number;
const short = (text: string, sense = noSense, speeds = 0) => {
  const groups = schemeGroups(text, sense, speeds);
  return Array.isArray(groups)
    ? groups
        .map(({ load, sets, reps, unit }) => `${load}${unit?.name ?? ""} ${sets}x${reps}`)
        .join(", ")
    : groups;
};
const setsFirst = schemeSense(["sets", "reps"], undefined);
const repsFirst = schemeSense(["reps", "sets"], undefined);

test.each([
  ["85x3x3", "85 3x3"],
  ["5x5x95", "95 5x5"],
  ["5x57.5x5", "57.5 5x5"],
  ["85kgx3x3", "85kg 3x3"],
  ["185lbx3x3", "185lb 3x3"],
  ["85x5", "85 1x5"],
  ["5x85", "85 1x5"],
  ["5x3", "null 5x3"],
  ["85x3x5", "unsettled"],
  ["85x3x3+1x2", "85 3x3, 85 1x2"],
  ["85x95x5", null],
  ["3x5x8", null],
  ["85x95", null],
  ["85", null],
  ["85x3x70", null],
  ["85x3x3+two", null],
  ["85x3x3+0x2", null],
  ["85x3x3+13x2", null],
  ["ax3x5", null],
])("“%s” without a word on its order is %p", (text, meant) => {
  expect(short(text)).toBe(meant);
});

test("the order is as heading or coach say, else as the number of speeds shows", () => {
  expect(short("85x3x5", setsFirst)).toBe("85 3x5");
  expect(short("85x3x5", repsFirst)).toBe("85 5x3");
  expect(short("5x3", repsFirst)).toBe("null 3x5");
  expect(short("85x3x5", noSense, 3)).toBe("85 3x5");
  expect(short("85x3x5", noSense, 5)).toBe("85 5x3");
  expect(short("3x5x12", schemeSense(["sets", "reps", "load"], undefined))).toBe("12 3x5");
  // Three sets of three and "5x1" beside eight speeds: five more sets of one, not one of five.
  expect(short("85x3x3+1x5", noSense, 8)).toBe("85 3x3, 85 5x1");
  expect(short("85x3x3+1x5", noSense, 4)).toBe("85 3x3, 85 1x5");
  expect(orderFromWords("kg x Wdh x Sätze")).toEqual(["load", "reps", "sets"]);
  expect(orderFromWords("sets x sets")).toBeNull();
  expect(orderFromWords("kg, reps")).toBeNull();
});

test("speeds written together go to the sets they belong to", () => {
  const shown = (
    speeds: (number | null)[],
    sets: number,
    reps: number | null,
    said: Parameters<typeof spreadSpeeds>[2],
  ) => {
    const spread = spreadSpeeds(speeds, Array(sets).fill(reps), said);
    return typeof spread === "string"
      ? spread
      : spread.map((one) => (one.reps.length > 0 ? one.reps.join(" ") : one.single));
  };
  const five = [0.6, 0.58, 0.57, 0.55, 0.54];
  expect(shown([null, null], 2, 5, null)).toEqual([null, null]);
  expect(shown([0.6], 3, 5, null)).toEqual([0.6, null, null]);
  expect(shown([0.6, 0.58], 1, 5, null)).toEqual(["0.6 0.58"]);
  expect(shown([0.6, 0.58], 1, null, null)).toEqual(["0.6 0.58"]);
  expect(shown([0.6, 0.58, 0.57], 3, 5, null)).toEqual([0.6, 0.58, 0.57]);
  expect(shown([0.6, 0.58, 0.57], 2, 3, null)).toEqual(["0.6 0.58 0.57", null]);
  expect(shown([0.6, 0.58, 0.57], 3, 3, null)).toBe("unsettled");
  expect(shown([0.6, 0.58, 0.57], 3, 3, "each set")).toEqual([0.6, 0.58, 0.57]);
  expect(shown([0.6, 0.58], 3, 5, "each set")).toEqual([0.6, 0.58, null]);
  expect(shown([0.6], 1, 5, "each set")).toEqual([0.6]);
  expect(shown([0.6, 0.58], 3, 5, "each rep")).toEqual(["0.6 0.58", null, null]);
  expect(shown([0.6, 0.58, 0.57, 0.55], 3, 5, null)).toBe("unsettled");
  expect(shown([0.6, 0.58], 3, 5, null)).toBe("unsettled");
  // Said to be a set's each, five are too many for one set or three, though each has five repetitions.
  expect(shown(five, 1, 5, "each set")).toBe("too many");
  expect(shown(five, 3, 5, "each set")).toBe("too many");
  // More than the repetitions there were, and no figure for each set either.
  expect(shown(five, 1, 3, null)).toBe("too many");
  expect(shown(five, 1, 3, "each rep")).toBe("too many");
  expect(shown(five, 2, 4, "each rep")).toBe("too many");
  expect(shown(five, 2, 3, null)).toBe("too many");
  expect(shown(five, 2, null, null)).toBe("unsettled");
  // As many as all sets have repetitions: each set's own, once somebody says so.
  expect(shown([0.6, 0.5, 0.61, 0.51], 2, 2, null)).toBe("unsettled");
  expect(shown([0.6, 0.5, 0.61, 0.51], 2, 2, "each rep")).toEqual(["0.6 0.5", "0.61 0.51"]);
  const uneven = spreadSpeeds([0.6, 0.59, 0.58, 0.57, 0.5], [2, 3], "each rep");
  expect(uneven).toEqual([
    { reps: [0.6, 0.59], single: null },
    { reps: [0.58, 0.57, 0.5], single: null },
  ]);
  expect(["speeds je satz", "rep speeds", "speed"].map(figuresFor)).toEqual([
    "each set",
    "each rep",
    null,
  ]);
});

test.each([
  ["", { is: "none", note: "" }],
  [false, { is: "none", note: "" }],
  [new Date(2026, 4, 1), { is: "unread" }],
  ["n/a", { is: "none", note: "" }],
  ['"', { is: "ditto" }],
  ["wie Di", { is: "as-weekday", weekday: 1 }],
  ["see on Friday", { is: "as-weekday", weekday: 4 }],
  ["85x3x5", { is: "order-unsettled" }],
])("%p in a cell of sets", (cell, said) => {
  expect(setCell(cell, noSense)).toEqual(said);
});

test("a copied weekday is the athlete's own, the one near spelling's, or nobody's", () => {
  const memory = new SessionMemory();
  const session = (athlete: string, row: number) => ({
    athlete,
    row,
    exercise: "squat",
    groups: [],
  });
  // Tuesday and Thursday of one week.
  const [tuesday, thursday] = [day("2026-05-12"), day("2026-05-14")];
  memory.keep(tuesday, session("Ilka Brandmoor", 2));
  memory.keep(tuesday, session("Kofi Anstruther", 3));
  memory.keep(null, session("Wren Ito", 4));
  const rows = (athlete: string, weekday: number) =>
    memory.onWeekday(athlete, weekday, thursday).map(({ row }) => row);
  expect(rows("ilka brandmoor", 1)).toEqual([2]);
  expect(rows("Ilka B.", 1)).toEqual([2]);
  expect(rows("Nils Ost", 1)).toStrictEqual([]);
  expect(rows("Ilka Brandmoor", 2)).toStrictEqual([]);
  expect(rows("Ilka Brandmoor", 4)).toStrictEqual([]);
  expect(memory.before("Wren Ito")?.row).toBe(4);
  expect(memory.before("Nils Ost")).toBeNull();
  memory.keep(tuesday, session("Ilka Bergman", 5));
  expect(rows("Ilka B.", 1)).toStrictEqual([]);
  memory.keep(tuesday, session("Ilka Brandmoor", 6));
  expect(rows("Ilka Brandmoor", 1)).toEqual([2, 6]);
});

test("days of a tab: order and year from all of them, today's year when none is written", () => {
  const texts = (...of: string[]) => of.map((text) => dayFromText(text)!);
  const settled = (
    of: string[],
    title: number | null,
    today: string | null,
    order?: "month first",
  ) => {
    const days = texts(...of);
    const settler = new DaySettler(days, title, today === null ? null : day(today), order);
    return days.map((text) => {
      const one = settler.settle(text);
      return "day" in one ? one.day : one.code;
    });
  };
  expect(settled(["5/6", "28/5"], 2026, null)).toEqual([day("2026-06-05"), day("2026-05-28")]);
  expect(settled(["5/6", "5/28"], 2026, null)).toEqual([day("2026-05-06"), day("2026-05-28")]);
  expect(settled(["5/6"], 2026, null)).toEqual(["date-order-unsettled"]);
  expect(settled(["5/6"], 2026, null, "month first")).toEqual([day("2026-05-06")]);
  expect(settled(["5 May"], null, null)).toEqual(["year-missing"]);
  expect(settled(["30 Feb", "31/31"], 2026, null)).toEqual(["not-a-day", "not-a-day"]);
  expect(settled(["5 May"], null, "2026-06-16")).toEqual([day("2026-05-05")]);
});

test("a year left out is the one nearest the date before", () => {
  const december = day("2025-12-28");
  expect(nearYear(dayFromText("5 Jan")!, december, null)).toBe(2026);
  expect(nearYear(dayFromText("5/1/")!, december, null)).toBe(2026);
  expect(nearYear(dayFromText("12/28/")!, december, null)).toBe(2025);
  expect(nearYear(dayFromText("5 Jan")!, null, 2024)).toBe(2024);
});

test("a tab's title is offered as its athlete only when it may be a name", () => {
  expect(likelyAthlete("Ilka")).toBe("Ilka");
  expect(likelyAthlete("2026")).toBeNull();
});

const log = (cells: unknown[][], options = {}) => understandTable("Sets", cells as never, options);

test("speeds that fit no set are reported with what was said of them, and asked about only when an answer would tell", () => {
  const { reading, tabQuestions } = log([
    ["Date", "Athlete", "Exercise", "Sets x reps x kg", "Speeds each set"],
    ["2026-05-12", "Ilka Brandmoor", "squat", "1x5x85", "0.62 0.61 0.60 0.58 0.57"],
    ["2026-05-14", "Ilka Brandmoor", "squat", "2x3x85", "0.62 0.61 0.60"],
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka Brandmoor 1 85x5",
    "05-14 Ilka Brandmoor 1 85x3",
    "05-14 Ilka Brandmoor 2 85x3",
  ]);
  expect(reading.issues.map(({ cell, code, dropsRow }) => [cell, code, dropsRow])).toEqual([
    ["E2", "speeds-too-many", false],
    ["E3", "speeds-too-many", false],
  ]);
  expect(reading.issues.map((issue) => sayRowIssue(issue).whyItMatters)).toEqual([
    "The sets count without their speeds: 5 speeds, said to be one for each set, do not fit 1 set of 5 repetitions.",
    "The sets count without their speeds: 3 speeds, said to be one for each set, do not fit 2 sets of 3 repetitions.",
  ]);
  expect(tabQuestions).toEqual([]);
});

test("a scheme of sets and repetitions alone is read as blocks are spoken of: 5x3 is five sets of three", () => {
  const { reading } = log([
    ["Date", "Athlete", "Exercise", "Scheme", "Load (kg)"],
    ["2026-05-12", "Ilka Brandmoor", "squat", "5x3", 85],
  ]);
  expect(reading.records.map(shortSet)).toEqual(
    [1, 2, 3, 4, 5].map((set) => `05-12 Ilka Brandmoor ${set} 85x3`),
  );
});

test("a log of shorthand with its own column of speeds, doubtful and unread ones reported", () => {
  const { reading } = log([
    ["Date", "Athlete", "Exercise", "Sets x reps x kg", "Speeds per set"],
    ["2026-05-12", "Ilka Brandmoor", "squat", "3x5x85", "0.62 0.6? 0.58"],
    ["2026-05-14", "Ilka Brandmoor", "squat", "wie Di", "0.61 x 0.57"],
    ["2026-05-19", "Ilka Brandmoor", "squat", '"', ""],
    ["2026-05-21", "Ilka Brandmoor", "squat", "wie Fr", ""],
    ["2026-05-22", "Ilka Brandmoor", "swim", "", ""],
    ["2026-05-23", "", "squat", "", "0.6"],
    ["2026-05-24", "Ilka Brandmoor", "squat", "lots", ""],
  ]);
  expect(problems(reading)).toEqual([
    "E2 unsure: 0.62 0.6? 0.58",
    "D5 nothing-to-repeat: wie Fr",
    "B7 needed-blank: ",
  ]);
  expect(reading.records.map(shortSet)).toEqual([
    "05-12 Ilka Brandmoor 1 85x5 0.62",
    "05-12 Ilka Brandmoor 2 85x5",
    "05-12 Ilka Brandmoor 3 85x5 0.58",
    "05-14 Ilka Brandmoor 1 85x5 0.61",
    "05-14 Ilka Brandmoor 2 85x5",
    "05-14 Ilka Brandmoor 3 85x5 0.57",
    "05-19 Ilka Brandmoor 1 85x5",
    "05-19 Ilka Brandmoor 2 85x5",
    "05-19 Ilka Brandmoor 3 85x5",
  ]);
  expect(notes(reading)).toEqual([
    "D6 Ilka Brandmoor: swim",
    "D7 : squat",
    "D8 Ilka Brandmoor: squat; lots",
  ]);
});

test("“as Tue” is the athlete's own session of that day, whatever near names stand there, and none of its own day", () => {
  const log = (...rows: readonly (readonly unknown[])[]) => {
    const { reading } = understandTable("Sets", [
      ["Date", "Athlete", "Exercise", "kg x sets x reps"],
      ...rows,
    ]);
    return [...reading.records.map(shortSet), ...problems(reading)];
  };
  // 12 May 2026 is a Tuesday.
  expect(
    log(
      ["2026-05-12", "Ilka B.", "squat", "60x1x5"],
      ["2026-05-12", "Ilka Brandmoor", "squat", "80x1x5"],
      ["2026-05-14", "Ilka Brandmoor", "squat", "as Tue"],
    ),
  ).toEqual(["05-12 Ilka B. 1 60x5", "05-12 Ilka Brandmoor 1 80x5", "05-14 Ilka Brandmoor 1 80x5"]);
  expect(
    log(
      ["2026-05-12", "Ilka Brandmoor", "squat", "80x1x5"],
      ["2026-05-12", "Ilka Brandmoor", "squat", "as Tue"],
    ),
  ).toEqual(["05-12 Ilka Brandmoor 1 80x5", "D3 nothing-to-repeat: as Tue"]);
});

test("repetitions beside shorthand must be those of all its sets", () => {
  const { reading } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "kg x sets x reps", "Reps"],
    ["2026-05-12", "Ilka", "squat", "105x2x5+1x12", 5],
  ]);
  expect(reading.issues).toMatchObject([
    { code: "meaning-twice", cell: "E2", facts: { other: "105x2x5+1x12" } },
  ]);
  expect(reading.records.map(({ reps }) => reps)).toEqual([null, null, null]);
});

test.each([
  ["62.25/70/77.5", ["1 62.25x?", "2 70x?", "3 77.5x?"]],
  ["60/70/80x5", ["1 60x5", "2 70x5", "3 80x5"]],
  ["60/70/80x12", ["1 60x12", "2 70x12", "3 80x12"]],
  ["140/160/180lb", ["1 63.5x?", "2 72.57x?", "3 81.65x?"]],
  ["60/70/80x5x3", []],
])(
  "loads one after another are a set each, all with the repetitions behind them: %s",
  (cell, told) => {
    const { reading } = understandTable("Sets", [
      ["Date", "Athlete", "Lift", "Load"],
      ["2026-05-05", "Ilka", "Squat", cell],
      ["2026-05-05", "Bram", "Squat", "80x5"],
    ]);
    const own = reading.records.filter(({ athlete }) => athlete === "Ilka");
    expect(
      own.map(({ loadKg, ...set }) =>
        shortSet({ ...set, loadKg: Math.round(100 * loadKg!) / 100 }).slice("05-05 Ilka ".length),
      ),
    ).toEqual(told);
    expect(reading.rowsReported).toBe(told.length > 0 ? 0 : 1);
  },
);

const said = (cell: string, sense = repsFirst) => {
  const set = setCell(cell, sense);
  if (set.is !== "sets") return set.is;
  const groups = set.groups.map(({ load, reps, sets }) => `${load}x${reps}x${sets}`);
  return `${groups.join(" ")} ${[...set.speeds, set.note].join(" ")}`.trim();
};

test.each([
  ["80x5x3 @8", "80x5x3 RPE 8"],
  ["80x5x3@8.5", "80x5x3 RPE 8.5"],
  ["5x3 80 @ 10", "80x5x3 RPE 10"],
  ["80x5 85x5 @9", "80x5x1 85x5x1 RPE 9"],
  // Whichever it may be: repetitions, sets without a load, a slip in a speed, two efforts.
  ["80 @8", "unread"],
  ["80 @10", "unread"],
  ["5x3 @8", "unread"],
  ["80x5x3 @5", "unread"],
  ["80x5x3 @8.2", "unread"],
  ["80x5x3 @11", "unread"],
  ["80x5 @8, 85x5 @9", "unread"],
  ["80x5x3 @8 RIR 1", "unread"],
  ["80x5x3 8", "unread"],
  // A speed stays one.
  ["80x5x3 @.8", "80x5x3 0.8"],
])("an effort behind the sign “at” is read where nothing else can be meant: %s", (cell, meant) => {
  expect(said(cell)).toBe(meant);
});

test("behind sets whose order is open an effort leaves the question of their order", () => {
  expect(said("80x5x3 @8", noSense)).toBe("order-unsettled");
});

test("what cannot be read is told with how an effort is written", () => {
  const issue = { code: "scheme-unread", facts: {}, found: "5x3 @8" };
  expect(
    sayRowIssue({ table: "Sets", row: 1, column: 1, cell: "A1", dropsRow: false, ...issue })
      .whatToDo,
  ).toBe(
    "Write load, repetitions and sets as the heading says, for example “95x5x5 @ .62”, and an effort as “RPE 8”.",
  );
});
