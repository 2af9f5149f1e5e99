import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { countsSets } from "../../../src/rows/layout/counts-sets";
import { DaySettler } from "../../../src/rows/layout/day-settler";
import type { LayoutContext } from "../../../src/rows/layout/layout-context";
import { athleteOfTab, likelyAthlete } from "../../../src/rows/layout/tab-athlete";
import { rowSamples, tabQuestions } from "../../../src/rows/layout/tab-questions";
import { titleYear } from "../../../src/rows/layout/title-year";
import { diaryQuestion, looksAnswered } from "../../../src/rows/layout/wide/diary-question";
import { weekHeader } from "../../../src/rows/layout/wide/week-header";
import { withUnit } from "../../../src/rows/layout/with-unit";
import { yearAhead } from "../../../src/rows/layout/year-ahead";
import { dayFromText } from "../../../src/rows/value/day-text";
import { unitOf } from "../../../src/rows/value/units";
import { today } from "./short";

const tab = (
  cells: LayoutContext["cells"],
  title = "",
  more: Partial<LayoutContext> = {},
): LayoutContext => ({
  table: "Sets",
  cells,
  end: cells.length,
  title,
  today,
  dateOrder: null,
  massUnit: null,
  said: false,
  leftAlone: [],
  tab: {},
  ...more,
});

test.each([
  ["JUMP TESTS 2026", [], 2026],
  ["in 1999", [], null],
  ["20261", [], null],
  ["summer 26", [], 2026],
  ["Saison '25", [], 2025],
  ["Frühjahr 27", [], 2027],
  ["block 26", [], null],
  ["", [["Squat 2026", ""]], 2026],
  ["Season 24", [["Squat 2026", ""]], 2024],
  ["", [["Gym", "spring ’27"]], 2027],
  ["", [["Gym 2026", "a", "b"]], 2026],
  ["", [["Gym", "a", "year 2026"]], null],
  ["", [[2026, "a", "b 2026"]], 2026],
  ["", [[5, "a", "b", "c 2026"]], null],
  ["", [["12 May 2025", "x"]], null],
  ["", [[2026]], null],
  ["", [[""], [""], [""], [""], [""], ["2026"]], 2026],
  ["", [[""], [""], [""], [""], [""], [""], ["2026"]], null],
])("the tab “%s” over %j is of the year %p", (title, cells, year) => {
  expect(titleYear(tab(cells, title))).toBe(year);
});

/** The weeks of a header as "1: 05-04 [2:0 3:2]", column, day or day and month as written, weekdays. */
const weeks = (...cells: unknown[][]) =>
  weekHeader(tab(cells), 0)?.map(({ column, text, weekdays }) => {
    const [date, month] = text.pair ?? [text.date, text.month];
    return `${column}: ${date}/${month} [${weekdays.map((one) => `${one.column}:${one.weekday}`).join(" ")}]`;
  }) ?? null;

test.each([
  ["w/c 4/5"],
  ["wc 4/5"],
  ["W/C. 4/5"],
  ["week of 4 May"],
  ["Week commencing 4 May"],
  ["week 4 May"],
  ["wk 18: 4/5"],
  ["Wk 18 – 4/5"],
  ["Wk 18 (4/5)"],
  ["block 2 (4/5)"],
  ["Woche vom 4.5."],
  ["Woche ab 4.5."],
  ["ab 4. Mai"],
  ["w/c 4/5*"],
  ["w/c 4/5 * taper"],
  ["4/5"],
  ["4 May"],
])("“%s” starts a week", (label) => {
  expect(weeks([label, "", ""], ["Mon", "x", " Wed "])).toEqual(["0: 4/5 [0:0 2:2]"]);
});

test("weekdays belong to the week to their left; fewer than two name no week", () => {
  expect(weeks(["", "w/c 4/5", "", "w/c 11/5"], ["Mon", "Tue", "Thu", "Mon", "Wed"])).toEqual([
    "1: 4/5 [1:1 2:3]",
    "3: 11/5 [3:0 4:2]",
  ]);
  expect(weeks(["w/c 4/5", "w/c 11/5"], ["Mon", "Mon"])).toEqual(["0: 4/5 [0:0]", "1: 11/5 [1:0]"]);
  expect(weeks(["w/c 4/5", ""], ["Mon", "x"])).toBeNull();
  expect(weeks(["w/c 4/5", ""])).toBeNull();
  expect(weeks(["week", "off"], ["Mon", "Tue"])).toBeNull();
  expect(weeks(["xw/c 4/5", ""], ["Mon", "Tue"])).toBeNull();
  expect(weekHeader(tab([["w/c 4/5"], ["Mon", "Tue"]]), 0)![0]!.weekdays[1]).toEqual({
    row: 1,
    column: 1,
    weekday: 1,
  });
});

const day = (iso: string) => dayFromIso(iso) as number;
const settle = (
  text: string,
  all: readonly string[],
  of: { title?: number; today?: string | null; order?: "month first" } = {},
) => {
  const settler = new DaySettler(
    all.map((one) => dayFromText(one)!),
    of.title ?? null,
    of.today === null ? null : day(of.today ?? "2026-06-16"),
    of.order,
  );
  const settled = settler.settle(dayFromText(text)!);
  return "day" in settled
    ? isoFromDay(settled.day)
    : [settled.code, ...Object.values(settled.facts)].join(" ");
};

test.each([
  ["5 May", ["5 May 2024", "6 May"], {}, "2024-05-05"],
  ["5 May", ["6 May", "5 May 2024"], { title: 2025 }, "2024-05-05"],
  ["5 May", ["6 May"], { title: 2025 }, "2025-05-05"],
  ["5 May", ["6 May"], {}, "2026-05-05"],
  ["5/6", ["13/6"], {}, "2026-06-05"],
  ["5/6", ["6/13"], {}, "2026-05-06"],
  ["5/6", ["5/6"], {}, "date-order-unsettled 2026-06-05 2026-05-06"],
  ["5/6", ["5/6"], { order: "month first" }, "2026-05-06"],
  ["6/6", ["5/6"], {}, "2026-06-06"],
  ["31/6", ["13/6"], {}, "not-a-day"],
  ["6/13", ["13/6", "14/6"], {}, "2026-06-13"],
  // 5 June 2026 is a Friday.
  ["5/6", ["Fri 5/6"], {}, "2026-06-05"],
  ["5/6", ["Fri 5/6"], { today: null }, "year-missing"],
  // A fortnight ahead is this year's; past it, last year's, where nothing shows that the season goes on.
  ["30 Jun", ["30 Jun"], {}, "2026-06-30"],
  ["1 Jul", ["1 Jul"], {}, "2025-07-01"],
  ["1 Jul", ["1 Jul", "10 Jun"], {}, "2026-07-01"],
  ["20 Nov", ["20 Nov", "10 Jun"], {}, "2026-11-20"],
  ["20 Dec", ["20 Dec", "1 Jun"], {}, "2025-12-20"],
  ["13/7", ["13/7", "14/7"], {}, "2025-07-13"],
] as const)("%p in a tab of %p is %p: %s", (text, all, of, meant) => {
  expect(settle(text, all, of)).toBe(meant);
});

test.each([
  [
    "a break of a hundred days at the cut, longer than round the year",
    [0, 50],
    [200, 300],
    "last year",
  ],
  ["a break of ninety-nine days at the cut", [0, 101], [200, 300], null],
  ["a break round the year", [160, 190], [210, 240], "this year"],
  ["a break round the year of ninety-nine days", [134, 190], [210, 400], null],
  ["nothing before", [], [210], "last year"],
  ["nothing after", [190], [], "last year"],
  ["the cut's own day is before it", [200], [201], "this year"],
])("%s", (_, before, after, meant) => {
  expect(yearAhead([...before, ...after], 200 - (after[0] === 200 ? 1 : 0))).toBe(meant);
});

test.each([
  ["runs of 1, 2, 3", [1, 2, 3, 1, 2], false],
  ["starting anew from one", [2, 1, 2, 1], false],
  ["all the same", [3, 3, 3], true],
  ["one after one", [1, 1, 1], true],
  ["half of them running", [1, 2, 2], false],
  ["fewer than half", [1, 2, 2, 2], true],
  ["growing, but not from one", [3, 4, 5, 3, 4, 5], true],
  ["words and blanks between", [1, "", "x", 2, "3"], false],
  ["a single row", [3], true],
])("sets are counted: %s", (_, column, counted) => {
  expect(
    countsSets(
      column.map((cell) => [cell]),
      0,
      0,
      column.length,
    ),
  ).toBe(counted);
});

test("only two hundred rows are looked at to tell counts from numbers", () => {
  const column = [
    ...Array(200).fill([3]),
    ...Array(300)
      .fill(0)
      .map((_, at) => [at]),
  ];
  expect(countsSets(column, 0, 0, 500)).toBe(true);
  expect(countsSets(column, 0, 200, 500)).toBe(false);
});

test.each([
  [["Sleep (h)"], "sleepH", "h"],
  [["Sleep in min"], "sleepH", "min"],
  [["Schlaf, Stunden"], "sleepH", "h"],
  [["Sleep"], "sleepH", null],
  [["Sleep quality (h)"], "sleepQuality", null],
  [["How sore? soreness 1-5"], "soreness", null],
  [["Mood, 2026", "Stress"], "mood", null],
  [["Squat mood", "Stress"], "stress", null],
  [["Box jump mood", "Stress"], "stress", null],
  [["Spring", "week 3"], "fatigue", null],
])("titles %j ask for %s in %p", (titles, field, unit) => {
  const asked = diaryQuestion(titles, "Fatigue");
  expect([asked?.field, asked?.unit?.name ?? null]).toEqual([field, unit]);
});

test("words for people are not asked in a grid, and moody is no mood", () => {
  expect(diaryQuestion(["Notes", "moody", "Date"], "Spring")).toBeNull();
});

test("half of the cells on a scale of ten, or a night's length, are answers", () => {
  const mood = { field: "mood", unit: null };
  const sleep = (unit: string | null) => ({
    field: "sleepH",
    unit: unit === null ? null : unitOf(unit),
  });
  expect(looksAnswered(mood, [0, 10, 11, "x", "", ""])).toBe(true);
  expect(looksAnswered(mood, [10, 11, "x", ""])).toBe(false);
  expect(looksAnswered(mood, [-1])).toBe(false);
  expect(looksAnswered(mood, [" 7,5 "])).toBe(true);
  expect(looksAnswered(mood, ["7:30"])).toBe(false);
  expect(looksAnswered(mood, ["", null])).toBe(false);
  expect(looksAnswered(sleep(null), [18])).toBe(true);
  expect(looksAnswered(sleep(null), [18.1])).toBe(false);
  expect(looksAnswered(sleep("min"), [1080])).toBe(true);
  expect(looksAnswered(sleep("min"), [1081])).toBe(false);
  expect(looksAnswered(sleep("h"), [18, 19])).toBe(true);
  expect(looksAnswered(sleep(null), [" 7:30 "])).toBe(true);
  expect(looksAnswered(sleep(null), ["12h30"])).toBe(true);
  for (const none of ["x7:30", "7:300", "7:3", "112:30"])
    expect([none, looksAnswered(sleep(null), [none])]).toEqual([none, false]);
});

test.each([
  ["the coach's word", [["Name: Ilka Brandmoor"]], "Kofi Anstruther", { athlete: "Zed" }, "Zed"],
  ["a label", [["Name: Ilka"], ["Date"]], "Spring", {}, "Ilka"],
  ["a label with spaces around it", [[" Name: Ilka "], ["Date"]], "Spring", {}, "Ilka"],
  ["a label and the cell beside it", [["Athlete", " Ilka "], ["Date"]], "Spring", {}, "Ilka"],
  ["a label with more in its row", [["Athlete", "Ilka", "x"], ["Date"]], "Spring", {}, null],
  ["a full name alone", [["", "Ilka Brandmoor"], ["Date"]], "Spring", {}, "Ilka Brandmoor"],
  ["a full name with words beside it", [["Ilka Brandmoor", "x"], ["Date"]], "Spring", {}, null],
  ["a single word alone", [["Ilka"], ["Date"]], "Spring", {}, null],
  ["the tab's own name", [["Date"]], "Kofi Anstruther", {}, "Kofi Anstruther"],
  ["a tab's name that is none", [["Date"]], "Spring Running", {}, null],
  ["a row of numbers", [[5], ["Date"]], "", {}, null],
])("a tab's athlete by %s", (_, cells, title, answers, athlete) => {
  expect(athleteOfTab(tab(cells, title, { tab: answers }), cells.length - 1)).toBe(athlete);
});

test("a title is offered as an athlete only when it may be a name", () => {
  expect(["Ilka", "Kofi Anstruther", "2026", "", "Block 3"].map(likelyAthlete)).toEqual([
    "Ilka",
    "Kofi Anstruther",
    null,
    null,
    null,
  ]);
});

test("a unit is written beside plain numbers only", () => {
  const kg = unitOf("kg");
  expect([85, " 82,5 ", "85 lb", "", true].map((cell) => withUnit(cell, kg))).toEqual([
    "85 kg",
    "82,5 kg",
    "85 lb",
    "",
    true,
  ]);
  expect(withUnit(85, null)).toBe(85);
});

const issue = (code: string, found = "", facts = {}) =>
  ({ table: "Sets", code, row: 1, column: 1, cell: "A1", found, facts, dropsRow: false }) as const;

test("what is asked of a whole tab: each matter once, with three samples, or with its rows where its cell is blank", () => {
  const issues = [
    issue("scheme-order-unsettled", "85x3x5"),
    issue("scheme-order-unsettled", "85x3x5"),
    issue("scheme-order-unsettled", "90x3x5"),
    issue("scheme-order-unsettled", "95x3x5"),
    issue("scheme-order-unsettled", "99x3x5"),
    issue("bar-unsettled", " old bar ", { said: 15 }),
    issue("bar-unsettled", "their bar"),
    issue("column-missing", "x", { field: "exercise" }),
    issue("column-missing", "x", { field: "day" }),
    issue("athlete-missing", "x"),
    issue("not-a-day", "x", { field: "athlete" }),
  ];
  const asked = tabQuestions(issues, [{ about: "speeds", sample: ".6 .5" }], ["05-12 · squat"]);
  expect(asked.map(({ about, said, guess, samples }) => [about, said, guess, samples])).toEqual([
    ["speeds", "", null, [".6 .5"]],
    ["scheme order", "", null, ["85x3x5", "90x3x5", "95x3x5"]],
    ["bar", "old bar", "15 kg", [" old bar "]],
    ["bar", "their bar", null, ["their bar"]],
    ["exercise", "", null, ["05-12 · squat"]],
    ["athlete", "", null, ["05-12 · squat"]],
  ]);
  expect(asked[2]!.choices).toEqual(["15 kg"]);
  expect(asked[1]!.choices).toEqual(["sets × repetitions", "repetitions × sets"]);
  expect(tabQuestions([issue("athlete-missing")], [], [])).toEqual([]);
});

test("three rows stand for a tab, each by its first four cells, lone words left out", () => {
  const cells = [["title"], ["a", "", 1, 2, 3, 4], ["b", 1], ["c", 1], ["d", 1]];
  expect(rowSamples(cells, 0, 5)).toEqual(["a · 1 · 2 · 3", "b · 1", "c · 1"]);
  expect(rowSamples(cells, 1, 2)).toEqual(["a · 1 · 2 · 3"]);
});
