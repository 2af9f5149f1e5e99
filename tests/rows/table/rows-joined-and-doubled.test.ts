import { dayFromIso } from "../../../src/coaching/calendar/day";
import { IssueLog } from "../../../src/rows/issue-log";
import { understandTable } from "../../../src/rows/read-table";
import { carriedColumns } from "../../../src/rows/table/carried-columns";
import { withConstants } from "../../../src/rows/table/constant-columns";
import { oddDayFacts, oddDays } from "../../../src/rows/table/odd-days";
import { isBlankLine } from "../../../src/rows/table/read-lines";
import { viewReaders } from "../../../src/rows/table/read-view";
import { speedMeaning, speedNotSaid } from "../../../src/rows/table/set-kinds";
import { namesSummary } from "../../../src/rows/table/summary-lines";
import { endOfRows } from "../../../src/rows/table/trim-padding";
import type { TableName } from "../../../src/rows/table-name";
import { counts, problems, shortSet, today } from "../layouts/short";

type Row = readonly unknown[];
const sets = (head: Row, ...rows: readonly Row[]) =>
  understandTable("Sets", [["Date", "Athlete", "Exercise", ...head], ...rows], { today }).reading;

test.each([
  ["2", 2, "work"],
  [2, 2, "work"],
  ["S2", 2, "work"],
  ["set 2", 2, "work"],
  ["Satz 2.", 2, "work"],
  ["2)", 2, "work"],
  ["#2", 2, "work"],
  ["ws 2", 2, "work"],
  ["2/3", 2, "work"],
  ["2nd", 2, "work"],
  ["Set 3rd", 3, "work"],
  ["2 of 12", 2, "work"],
  ["2 von 3", 2, "work"],
  ["work", null, "work"],
  ["top set", null, "work"],
  ["wu", null, "warm-up"],
  ["WU 2", null, "warm-up"],
  ["wu 12", null, "warm-up"],
  ["wu2", null, "warm-up"],
  ["S12", 12, "work"],
  ["2/12", 2, "work"],
  ["2/ 3", 2, "work"],
  ["2 of3", 2, "work"],
  ["2 of  3", 2, "work"],
  ["marker 1", null, "marker"],
  ["last w/u", null, "marker"],
  ["n/a", null, "work"],
])("a set's number written %p", (cell, set, kind) => {
  const reading = sets(["Set", "Load"], ["2026-05-12", "Ilka", "squat", cell, 80]);
  expect(reading.records).toMatchObject([{ set, kind }]);
  expect(problems(reading)).toEqual([]);
});

test.each(["x2", "w2u", "2 of", "2/", "2 3", "2.5", "reset 2"])(
  "“%s” is no set's number",
  (cell) => {
    const reading = sets(["Set", "Load"], ["2026-05-12", "Ilka", "squat", cell, 80]);
    expect(reading.records).toMatchObject([{ set: null, kind: "work" }]);
    expect(reading.issues).toHaveLength(1);
  },
);

test("single repetitions join while day, athlete, lift, number, kind and load stay the same", () => {
  const row = (change: Record<number, unknown>) =>
    ["2026-05-12", "Ilka", "squat", 1, 1, "work", 80, 0.6].map((cell, at) => change[at] ?? cell);
  const joined = (change: Record<number, unknown>) =>
    sets(["Set", "Rep", "Kind", "Load", "Speed"], row({}), row({ 4: 2, ...change })).records
      .length === 1;
  expect(joined({})).toBe(true);
  expect(joined({ 6: "" })).toBe(true);
  for (const change of [
    { 0: "2026-05-13" },
    { 1: "Kofi" },
    { 2: "bench" },
    { 3: 2 },
    { 4: 1, 7: 0.59 },
    { 5: "wu" },
    { 6: 82.5 },
  ])
    expect([change, joined(change)]).toEqual([change, false]);
});

test("what one repetition says of form and reserve holds for its set", () => {
  const rep = (number: number, well: string, reserve: unknown, note: string) => [
    "2026-05-12",
    "Ilka",
    "squat",
    1,
    number,
    80,
    0.6,
    well,
    reserve,
    note,
  ];
  const one = (...rows: readonly Row[]) =>
    sets(["Set", "Rep", "Load", "Speed", "ok", "RIR", "Note"], ...rows).records[0]!;
  expect(one(rep(1, "y", 3, ""), rep(2, "", "", "a"))).toMatchObject({
    movedWell: true,
    repsInReserve: 3,
    note: "a",
  });
  expect(one(rep(1, "", "", "a"), rep(2, "y", 2, ""))).toMatchObject({
    movedWell: true,
    repsInReserve: 2,
    note: "a",
  });
  expect(one(rep(1, "n", "", "a"), rep(2, "y", "", "b"))).toMatchObject({
    movedWell: false,
    note: "a; b",
  });
  expect(one(rep(3, "", "", ""), ["2026-05-12", "Ilka", "squat", 1, "", 80, 0.5])).toMatchObject({
    reps: 4,
    repSpeeds: [null, null, 0.6, 0.5],
  });
  expect(one(rep(3, "", "", ""), rep(5, "", "", ""))).toMatchObject({
    reps: 5,
    repSpeeds: [null, null, 0.6, null, 0.6],
  });
});

test("of rows alike but for a load, or for a column that is not known, each is found when it comes again", () => {
  const row = ["2026-05-12", "Ilka", "squat", 1];
  const doubled = (...rows: readonly Row[]) =>
    problems(sets(["Set", "Load", "Xyz"], ...rows.map((cells) => [...row, ...cells]))).map(
      (told) => told.split(":")[0],
    );
  expect(doubled([80, "a"], [85, "a"], [90, "a"], [85, "a"])).toEqual(["A5 doubled-row"]);
  expect(doubled([80, "a"], [80, "b"], [80, "c"])).toEqual([]);
  expect(doubled([80, "a"], [80, "b"], [80, "c"], [80, "c"], [80, "a"])).toEqual([
    "A5 doubled-row",
    "A6 doubled-row",
  ]);
});

test("a row typed twice: numbered, timed or with three repetitions or more; unknown columns count too", () => {
  const row = ["2026-05-12", "Ilka", "squat"];
  const doubled = (head: Row, cells: Row, again: Row = cells) =>
    problems(sets(head, [...row, ...cells], [...row, ...again])).map((told) => told.split(":")[0]);
  expect(doubled(["Set", "Load"], [1, 80])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Load"], [80])).toEqual([]);
  expect(doubled(["Time", "Load"], ["17:30", 80])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Set", "Rep", "Load", "Speed"], [1, 2, 80, 0.6])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Load", "Speeds"], [80, ".6 .59 .58"])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Load", "Speeds"], [80, ".6 .59"])).toEqual([]);
  expect(doubled(["Set", "Load", "Xyz"], [1, 80, "a"], [1, 80, "b"])).toEqual([]);
  expect(
    doubled(["Set", "Load", "Note"], [1, 80, "a".repeat(40)], [1, 80, `${"a".repeat(39)}b`]),
  ).toEqual([]);
  const may = (date: number) => new Date(2026, 4, date);
  const unknown = (cell: unknown, again: unknown) =>
    doubled(["Set", "Load", "Xyz"], [1, 80, cell], [1, 80, again]);
  expect(unknown(may(12), may(12))).toEqual(["A3 doubled-row"]);
  expect(unknown(may(12), may(13))).toEqual([]);
  expect(unknown(may(12), "12 May")).toEqual([]);
  expect(unknown("12 May", may(12))).toEqual([]);
  expect(doubled(["Set", "Load"], [1, 80], [1, 80, ""])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Set", "Load"], [1, 80, ""], [1, 80])).toEqual(["A3 doubled-row"]);
  for (const [one, other] of [
    ["", "late"],
    ["late", ""],
  ])
    expect(doubled(["Set", "Load", "Xyz"], [1, 80, one], [1, 80, other])).toEqual([]);
  const heads = ["Xyz", "Date", "Athlete", "Exercise", "Set", "Load"];
  const led = (again: string) =>
    problems(
      understandTable("Sets", [heads, ["a", ...row, 1, 80], [again, ...row, 1, 80]], { today })
        .reading,
    );
  expect([led("a"), led("b")]).toEqual([["A3 doubled-row: "], []]);
  // Ragged rows: a remark past the headings is a difference, in whichever of the two it stands.
  expect(doubled(["Set", "Load"], [1, 80], [1, 80, "late"])).toEqual([]);
  expect(doubled(["Set", "Load"], [1, 80, "late"], [1, 80])).toEqual([]);
  expect(doubled(["Set", "Load", "ok"], [1, 80, true])).toEqual(["A3 doubled-row"]);
  expect(doubled(["Set", "Load", "ok"], [1, 80, true], [1, 80, false])).toEqual([]);
  expect(doubled(["Set", "Load", "Speed"], [1, 80, "fast"])).toEqual([
    "F2 not-a-number",
    "A3 doubled-row",
  ]);
});

test("runs typed twice are told by their time as well as by their distance", () => {
  const run = ["2026-05-12", "17:30", "Ilka", 40];
  const { reading } = understandTable("Runs", [["Date", "Time", "Athlete", "Minutes"], run, run], {
    today,
  });
  expect(problems(reading)).toEqual(["A3 doubled-row: "]);
});

test("real dates of one moment are one day, and another date is another row", () => {
  const at = (hour: number) => [new Date(2026, 4, 12, hour), "Ilka", "squat", 1, 80];
  expect(problems(sets(["Set", "Load"], at(17), at(17), at(18)))).toEqual(["A3 doubled-row: "]);
});

test("figures of a set by their heading: mean or peak, the best repetition or the mean of them", () => {
  const said = (words: string) => {
    const { speedIs, setSpeedIs, ofReps } = speedMeaning(words);
    return [speedIs, setSpeedIs, ofReps];
  };
  expect(said("mean speed")).toEqual(["mean", "mean of reps", false]);
  expect(said("peak speed")).toEqual(["peak", "mean of reps", false]);
  expect(said("best speed")).toEqual([null, "best rep", false]);
  expect(said("schnellste wdh")).toEqual([null, "best rep", false]);
  expect(said("rep speeds")).toEqual([null, "mean of reps", true]);
  expect(said("speed per rep")).toEqual([null, "mean of reps", true]);
  expect(said("mv")).toEqual(["mean", "mean of reps", false]);
  expect(said("peak of mean")).toEqual(["peak", "mean of reps", false]);
  expect(said(speedNotSaid)).toEqual([null, null, false]);
  expect(said("meaning")).toEqual([null, "mean of reps", false]);
});

test("words that begin a row of sums, and rows of nothing", () => {
  expect(["AVG", "Total:", "Ø", "max.", "Schnitt"].map(namesSummary)).toEqual(Array(5).fill(true));
  expect(["Maxine", "total set", "", 5, "S.D"].map(namesSummary)).toEqual(Array(5).fill(false));
  expect([["", false, null, " "], [], [undefined]].map(isBlankLine)).toEqual([true, true, true]);
  expect([["", 0], [true], ["x"]].map(isBlankLine)).toEqual([false, false, false]);
  expect([endOfRows([["a"], [""], [false]]), endOfRows([[""]]), endOfRows([])]).toEqual([1, 0, 0]);
});

test("a table of sums, headings printed again, blanks and rows above the header are each counted once", () => {
  const head = ["Date", "Athlete", "Exercise", "Load"];
  const { reading } = understandTable("Sets", [
    ["Quillbeck", "", "", ""],
    ["", "", "", ""],
    head,
    ["2026-05-12", "Ilka", "squat", 80],
    head,
    ["", "", "", ""],
    ["Total", "", "", 80],
    ["", "total", "", 80],
    [],
    [null, "", null, null],
    [false, "", "", ""],
    ["Total", "Ilka", "squat", 80],
    ["", "", "", false],
  ]);
  expect(counts(reading)).toEqual([1, 1, 6, 5]);
  expect(problems(reading)).toEqual(["A12 not-a-day: Total"]);
});

test("what is whole is no sum, and no more is a row with a real date", () => {
  const { reading } = understandTable("Races", [
    ["Race", "Date", "Distance"],
    ["Total", "2026-05-12", 10],
    ["Total", "", 10],
  ]);
  expect(counts(reading)).toEqual([1, 0, 0, 2]);
  const dated = understandTable("Sets", [
    ["Xyz", "Date", "Athlete", "Exercise", "Load"],
    ["total", new Date(2026, 4, 12), "", "", 80],
    ["", new Date(2026, 4, 12), "Ilka", "squat", 80],
  ]).reading;
  expect(problems(dated)).toEqual(["C2 needed-blank: "]);
});

test.each([
  ["three in ten blank", ["a", "", "", "b", "", "c", "d", "e", "f", "g"], true],
  ["two in ten blank", ["a", "", "", "b", "c", "d", "e", "f", "g", "h"], false],
  ["the first one blank", ["", "a", "", "", "b"], false],
  ["all but the first", ["a", "", ""], true],
  ["two rows", ["a", ""], false],
])("blanks are carried down with %s", (_, column, carried) => {
  const cells = column.map((cell) => [cell, "x"]);
  const day = { index: 0, unit: null, heading: "Date", words: "date" };
  expect(carriedColumns(cells, 0, cells.length, { day }).has("day")).toBe(carried);
  const padded = [...cells, ["", ""], ["", ""], ["", ""], ["", ""], ["", ""]];
  expect(carriedColumns(padded, 0, padded.length, { day }).has("day")).toBe(carried);
});

test("a name for the whole tab stands in a column of its own, in rows of data alone", () => {
  const cells = [["Date", "Load"], ["12 May", 80], ["13 May"], ["", ""], ["total", 80]];
  const more = withConstants(cells, 1, { athlete: "Ilka" }, undefined);
  expect(more.cells).toEqual([
    ["Date", "Load"],
    ["12 May", 80, "Ilka"],
    ["13 May", "", "Ilka"],
    ["", ""],
    ["total", 80],
  ]);
  expect(more.fields).toEqual({
    athlete: { index: 2, unit: null, heading: "athlete", words: "athlete" },
  });
  const two = withConstants(cells, 1, { athlete: "Ilka", exercise: "squat" }, undefined);
  expect(two.cells[1]).toEqual(["12 May", 80, "Ilka", "squat"]);
  expect(Object.values(two.fields).map(({ index }) => index)).toEqual([2, 3]);
  expect(withConstants(cells, 1, {}, undefined)).toEqual({ cells, fields: {} });
});

const day = (iso: string) => dayFromIso(iso) as number;
const odd = (...days: readonly (number | string)[]) =>
  oddDays(new Map(days.map((one) => [typeof one === "string" ? day(one) : one, 1])));
/** So many days from a Tuesday on, a week apart. */
const tuesdays = (count: number) =>
  Array.from({ length: count }, (_, at) => day("2026-04-07") + 7 * at);

test("a day more than a hundred days from the rest is odd, once there are six days and nine in ten together", () => {
  const far = (gap: number, count = 10) =>
    odd(...tuesdays(count), tuesdays(count).at(-1)! + gap).length;
  expect([far(100), far(101)]).toEqual([0, 1]);
  expect([far(101, 4), far(101, 9), far(101, 8)]).toEqual([0, 1, 0]);
  expect(odd(...tuesdays(20), "2027-01-01", "2027-01-02")).toMatchObject([
    { oddBy: "distance", swapped: null },
    { oddBy: "distance" },
  ]);
});

test("swapped, an odd day must fall within a fortnight of the others", () => {
  // Ten Tuesdays from 7 April to 9 June 2026; 5 December swapped is 12 May, 7 February is 2 July.
  expect(odd(...tuesdays(10), "2026-12-05")).toMatchObject([{ swapped: day("2026-05-12") }]);
  expect(odd(...tuesdays(10), "2026-12-13")).toMatchObject([{ swapped: null }]);
  expect(odd(...tuesdays(10), "2026-11-11")).toMatchObject([{ swapped: null }]);
  expect(odd(...tuesdays(10), "2025-07-02")).toMatchObject([{ swapped: null }]);
});

test("the only one of its weekday is odd where it would be a usual day when swapped, from a dozen days on", () => {
  // 6 April 2026 is a Monday, 4 June a Thursday; the other days begin on Tuesday 12 May.
  const thursdays = (count: number) => tuesdays(count).map((one) => one + 2);
  const days = (count: number) =>
    odd(...[...tuesdays(count), ...thursdays(count)].map((one) => one + 35), "2026-04-06");
  expect(days(6)).toMatchObject([
    { day: day("2026-04-06"), oddBy: "weekday", swapped: day("2026-06-04") },
  ]);
  expect(days(5)).toEqual([]);
  const dozen = [...tuesdays(6), ...thursdays(5)].map((one) => one + 35);
  expect(odd(...dozen, "2026-04-06")).toHaveLength(1);
  expect(odd(...tuesdays(12), "2026-04-06")).toEqual([]);
  expect(odd(...tuesdays(6), ...thursdays(6), "2026-04-06", "2026-04-13")).toEqual([]);
  expect(odd(...tuesdays(6), ...thursdays(6), "2026-04-20")).toEqual([]);
});

test("a swapped day fits up to a fortnight before the first of the others and after the last", () => {
  // 1 December 2026 swapped is 12 January.
  const fits = (first: string) =>
    odd(...Array.from({ length: 10 }, (_, at) => day(first) + 7 * at), "2026-12-01").map(
      ({ swapped }) => swapped === day("2026-01-12"),
    );
  expect([fits("2026-01-26"), fits("2026-01-27")]).toEqual([[true], [false]]);
  // The last of the others on 29 and on 28 December 2025.
  expect([fits("2025-10-27"), fits("2025-10-26")]).toEqual([[true], [false]]);
});

test("a lone weekday is lone though a day of a wrong year falls on it too", () => {
  // 6 April 2026 and 5 April 2027 are Mondays; 4 June 2026 is a Thursday.
  const others = tuesdays(6).flatMap((one) => [one + 35, one + 37]);
  expect(odd(...others, "2026-04-06", "2027-04-05")).toMatchObject([
    { day: day("2026-04-06"), oddBy: "weekday" },
    { day: day("2027-04-05"), oddBy: "distance" },
  ]);
});

test("an odd day is told with its weekday, 0 Monday, and its mend where it has one", () => {
  const facts = (swapped: number | null) =>
    oddDayFacts({ day: day("2026-12-05"), oddBy: "distance", swapped });
  expect(facts(null)).toEqual({ weekday: 5 });
  expect(facts(day("2026-05-12"))).toEqual({ weekday: 5, mend: "2026-05-12" });
  const week = Array.from(
    { length: 7 },
    (_, at) =>
      oddDayFacts({ day: day("2026-05-04") + at, oddBy: "weekday", swapped: null }).weekday,
  );
  expect(week).toEqual([0, 1, 2, 3, 4, 5, 6]);
});

test("an odd day is asked about once, with its rows", () => {
  const rows = tuesdays(10).map((_, at) => [new Date(2026, 3, 7 + 7 * at), "Ilka", "squat", 1, 65]);
  const late = (set: number) => [new Date(2027, 3, 7), "Ilka", "squat", set, 65];
  const reading = sets(["Set", "Load"], ...rows, late(1), late(2));
  expect(reading.issues).toMatchObject([
    { code: "day-questioned", cell: "A12", facts: { rows: 2 } },
  ]);
  expect(reading.records.map(shortSet)).toHaveLength(12);
});

test("a row typed twice is found among ten thousand of one day, and among days without end", () => {
  const many = Array.from({ length: 10_000 }, (_, i) => i);
  const doubled = (rows: readonly Row[]) =>
    sets(["Set", "Load"], ...rows, rows[4321]!).issues.flatMap(({ code, row, facts }) =>
      code === "doubled-row" ? [[row, facts.earlierRow]] : [],
    );
  const oneDay = many.map((i) => ["2026-05-12", `Runner ${i >> 5}`, "squat", (i & 31) + 1, 80]);
  expect(doubled(oneDay)).toEqual([[10_002, 4_323]]);
  const days = many.map((i) => [new Date(1996, 0, 1 + i), "Ilka", "squat", 1, 80]);
  expect(doubled(days)).toEqual([[10_002, 4_323]]);
});

test("a load left blank is asked about in a row that ends before it too, once its lift has loads", () => {
  const rows = (blank: Row) =>
    problems(
      sets(
        ["Load"],
        ["2026-05-12", "Ilka", "squat", 80],
        ["2026-05-13", "Ilka", "squat", ...blank],
      ),
    );
  for (const blank of [[], [""], [null]]) expect(rows(blank)).toEqual(["D3 load-blank: "]);
});

test("a table without a time, a bar or a kind of set has none", () => {
  const { records } = sets(["Load"], ["2026-05-12", "Ilka", "squat", 80]);
  expect(records[0]).toMatchObject({ minute: null, barKg: null, kind: "work" });
});

test("a bar that cannot be leaves its set in, without the bar", () => {
  const reading = sets(["Load", "Bar (kg)"], ["2026-05-12", "Ilka", "squat", 80, 200]);
  expect(reading.issues).toMatchObject([{ code: "implausible", cell: "E2", dropsRow: false }]);
  expect(reading.records).toMatchObject([{ loadKg: 80, barKg: null }]);
});

test("a drop in centimetres is a height, in plates a stack; without its column there is neither", () => {
  const drops = (head: Row, ...rows: readonly Row[]) =>
    understandTable("Jumps", [head, ...rows], { today }).reading.records.map(
      ({ dropCm, dropStackKg }) => [dropCm, dropStackKg],
    );
  const row = (drop: unknown) => ["2026-05-12", "Ilka", "drop jump", 30, drop];
  expect(
    drops(
      ["Date", "Athlete", "Test", "Height", "Drop (cm)"],
      row(20),
      row("20"),
      row("2x20+5"),
      row(""),
    ),
  ).toEqual([
    [20, undefined],
    [20, undefined],
    [null, [20, 20, 5]],
    [null, undefined],
  ]);
  expect(
    drops(["Date", "Stack", "Athlete", "Test"], ["2026-05-12", "5x15+5", "Ilka", "box jump"]),
  ).toEqual([[null, undefined]]);
});

test("a diary's own time of day counts before the date's", () => {
  const { records } = understandTable(
    "Diary",
    [
      ["Date", "Time", "Athlete", "Sleep"],
      ["2026-05-12 07:00", "8:00", "Ilka", 8],
      ["2026-05-13 07:00", "", "Ilka", 8],
    ],
    { today },
  ).reading;
  expect(records.map(({ minute }) => minute)).toEqual([480, 420]);
});

test("rows of a diary, of jumps and of runs that lack what they need are said and not counted", () => {
  const left = (table: TableName, head: Row, ...rows: readonly Row[]) => {
    const { reading } = understandTable<TableName>(table, [head, ...rows], { today });
    for (const issue of reading.issues) {
      expect(issue.dropsRow).toBe(true);
      expect(issue.facts.heading).toBe(head[issue.column - 1]);
    }
    return [reading.records.length, reading.rowsReported, ...problems(reading)];
  };
  const ilka = ["2026-05-12", "Ilka"];
  expect(left("Diary", ["Date", "Athlete", "Sleep"], ["soon", "Ilka", 8], [...ilka, 8])).toEqual([
    1,
    1,
    "A2 not-a-day: soon",
  ]);
  expect(left("Runs", ["Date", "Athlete", "Km"], ["soon", "Ilka", 8], [...ilka, 8])).toEqual([
    1,
    1,
    "A2 not-a-day: soon",
  ]);
  const jump = [...ilka, "CMJ", 31];
  const jumps = ["Date", "Athlete", "Test", "Height"];
  expect(left("Jumps", jumps, [...ilka, "", 31], jump)).toEqual([1, 1, "C2 needed-blank: "]);
});

test("the first row of those that a layout laid out flat is found when typed twice", () => {
  // Rows of a layout have no headings above them.
  const flat = (table: TableName, fields: readonly string[], row: Row) => {
    const log = new IssueLog(table);
    const view = {
      ...{
        table,
        cells: [row, row],
        headerRow: -1,
        first: 0,
        end: 2,
        repColumns: [],
        year: null,
        log,
      },
      fields: Object.fromEntries(
        fields.map((field, index) => [field, { index, unit: null, heading: field, words: field }]),
      ),
    };
    const reading = viewReaders[table](view);
    expect(reading.issues.map(({ dropsRow }) => dropsRow)).toEqual([true]);
    return [
      reading.records.length,
      ...reading.issues.map(({ code, facts }) => [code, facts.earlierRow]),
    ];
  };
  const once = [1, ["doubled-row", 1]];
  const ilka = ["2026-05-12", "Ilka"];
  const whole = [...ilka, "squat", 1, 80];
  expect(flat("Sets", ["day", "athlete", "exercise", "set", "load"], whole)).toEqual(once);
  const hop = [...ilka, "hop", 1, 31];
  expect(flat("Jumps", ["day", "athlete", "test", "attempt", "height"], hop)).toEqual(once);
  expect(flat("Diary", ["day", "athlete", "sleepH"], [...ilka, 8])).toEqual(once);
  expect(flat("Runs", ["day", "athlete", "km"], [...ilka, 8])).toEqual(once);
  expect(flat("Races", ["day", "race", "who"], ["2026-05-12", "Mile", "Ilka"])).toEqual(once);
  const spell = ["Ilka", "2026-05-12", "out"];
  expect(flat("Availability", ["athlete", "from", "mayDo"], spell)).toEqual(once);
});

test("set numbers in a column of their own count before a column “Sets”", () => {
  const { records } = sets(
    ["Set", "Sets", "Load"],
    ["2026-05-12", "Ilka", "squat", 2, 1, 80],
    ["2026-05-12", "Ilka", "squat", 3, 2, 80],
  );
  expect(records.map(({ set }) => set)).toEqual([2, 3]);
});
