import type { Finding } from "../../src/coaching/diary/finding";
import type { UnusualDay } from "../../src/coaching/diary/unusual-day";
import type { HoldMeasure, SeasonHold } from "../../src/coaching/hold/season-hold";
import type { RowIssue } from "../../src/rows/reading";
import { findingWords, symptomWordsOf, unusualDayWords } from "../../src/words/diary";
import { holdReason, movedWords, sinceWords } from "../../src/words/reasons-hold";
import { sayRowIssue } from "../../src/words/row-issues";
import { issue } from "./invented-issue";

test("a column that is missing is named as its heading would be", () => {
  const spells = (code: string, facts: RowIssue["facts"]) =>
    issue(code, facts, { table: "Availability" });
  expect(sayRowIssue(spells("column-missing", { field: "mayDo" })).found).toBe(
    "no column for “may do”",
  );
  expect(sayRowIssue(spells("column-missing", { field: "mayDo" })).whatToDo).toContain(
    "Add a column for “may do”",
  );
  const needed = { needed: "athlete, from, mayDo" };
  expect(sayRowIssue(spells("no-header", needed)).whatToDo).toContain("athlete, from, may do.");
});

test("a column without a heading is this column, one with it is named", () => {
  expect(sayRowIssue(issue("needed-blank", {})).whatToDo).toBe(
    "Fill in this column, or clear the whole row.",
  );
  expect(sayRowIssue(issue("needed-blank", { heading: "Load" })).whatToDo).toBe(
    "Fill in “Load”, or clear the whole row.",
  );
});

test("what is left out is the cell, or the whole row where the row cannot stand without it", () => {
  const cost = (dropsRow: boolean) =>
    sayRowIssue(issue("not-a-day", {}, { dropsRow })).whyItMatters;
  expect(cost(false)).toBe("This cell is left out of the figures; the rest of its row counts.");
  expect(cost(true)).toBe("The whole row is left out of the figures.");
});

test("bounds are named with their unit where there is one", () => {
  const bounds = (unit?: string) =>
    sayRowIssue(issue("implausible", { low: 1, high: 30, ...(unit && { unit }) })).whyItMatters;
  expect(bounds("kg")).toMatch(/Plausible here: 1–30 kg\.$/);
  expect(bounds()).toMatch(/Plausible here: 1–30\.$/);
});

test("of several figures in a cell the doubtful one is named with its mend", () => {
  const facts = { low: 0.08, high: 3.5, piece: "62", mendPiece: "0.62" };
  expect(sayRowIssue(issue("implausible", facts)).whatToDo).toBe(
    "Type 0.62 for 62, if that is what was meant.",
  );
});

test("a missing lift costs the table, or what stands under one heading", () => {
  expect(sayRowIssue(issue("exercise-missing", {}, { found: "" })).whyItMatters).toBe(
    "None of its rows can be used.",
  );
  expect(sayRowIssue(issue("exercise-missing", {})).whyItMatters).toBe(
    "Nothing under this heading can be used.",
  );
});

test("a doubtful bar is asked for with what was written of it, where something was", () => {
  expect(sayRowIssue(issue("bar-unsettled", { said: "15" })).whatToDo).toMatch(
    /without a question mark, for example “bar 15”\.$/,
  );
  expect(sayRowIssue(issue("bar-unsettled", {})).whatToDo).toMatch(/without a question mark\.$/);
});

test("speeds too many or unsettled say of how many sets, and what was said of them", () => {
  const said = (facts: RowIssue["facts"]) =>
    ["speeds-too-many", "speeds-unsettled"]
      .map((code) => sayRowIssue(issue(code, { speeds: 5, ...facts })))
      .map((one) => Object.values(one).join(" "))
      .join(" ");
  expect(said({ sets: 1, reps: 1, said: "each rep" })).toMatch(
    /said to be one for each repetition,/,
  );
  expect(said({ sets: 3, reps: 5, said: "each set" })).toMatch(/said to be one for each set,/);
  expect(said({ sets: 3, reps: 5 })).toMatch(/3 sets of 5 repetitions/);
  expect(said({ sets: 1, reps: 1 })).toMatch(/1 set of 1 repetition\b/);
  expect(said({ sets: 2 })).toMatch(/2 sets\b(?! of)/);
});

const finding = {
  athlete: "Priya Tellander",
  athletes: 1,
  item: "carbs in session",
  kind: "yes or no",
  unit: "yes",
  days: 20,
  daysWith: 0,
  writtenAfter: 0,
} as Finding;

test("what was never there is said otherwise than what was the same every day", () => {
  const same = (over: Partial<Finding>) =>
    findingWords({ ...finding, word: "always the same", ...over });
  expect(same({})).toBe("Carbs in session on none of 20 days: nothing to compare.");
  expect(same({ daysWith: 20 })).toBe(
    "The same on all 20 days: carbs in session cannot tell them apart.",
  );
  expect(same({ kind: "amount", item: "sleep", writtenAfter: 1 })).toBe(
    "The same on all 20 days: sleep cannot tell them apart. 1 day written after the session left out.",
  );
});

test("a chance under one in a thousand is not told to the last figure", () => {
  const link = (adjustedP: number) =>
    findingWords({
      ...finding,
      word: "goes together",
      daysWith: 8,
      value: null,
      side: null,
      border: null,
      difference: 4,
      low: 2,
      high: 6,
      step: 1,
      p: adjustedP,
      adjustedP,
      itemsLookedAt: 1,
      oddIs: "good",
      oddDays: 3,
      oddDaysWith: 3,
      otherDays: 17,
      otherDaysWith: 5,
    });
  expect(link(0.0004)).toContain("without a link under 0.1 % (");
  expect(link(0.004)).toContain("without a link 0.4 % (");
});

test("three days of pain are named, more are counted", () => {
  const days = [20_590, 20_588, 20_586, 20_580].map((day) => ({
    day,
    symptoms: ["sore"],
    private: false,
  }));
  expect(symptomWordsOf(days.slice(0, 3))).toMatch(/^3 days .*: [^.]* \(sore\)\. /);
  expect(symptomWordsOf(days)).toMatch(/^4 days .* and earlier\. /);
});

test("an unusual day without anything written is one to ask about; food is named as food", () => {
  const day: UnusualDay = {
    day: 20_600,
    value: { kind: "bar speed", of: "back squat" },
    valuePercent: -8,
    size: -2,
    stoodOut: [],
    written: [],
    privateRows: 0,
    race: null,
  };
  expect(unusualDayWords(day)).toBe("nothing recorded that stood out: ask");
  const food = { day: 20_600, kind: "food", text: "no breakfast", symptoms: [] } as const;
  expect(unusualDayWords({ ...day, written: [food] })).toBe("food: “no breakfast”");
});

const measure: HoldMeasure = {
  kind: "contact time",
  of: "drop jump",
  baselineRows: 6,
  rowsAfter: 8,
  rowsSince: 4,
  change: -8,
  changeError: 2,
  wobble: 4,
  baselineValue: 0.2,
  nowValue: 0.184,
};

test("a contact that fell is shorter, and a value without a session since is said to have none", () => {
  // 184 ms against 200 is 8 % less.
  expect(movedWords(measure)).toBe("contact time 8 % shorter (184 ms)");
  expect(movedWords({ ...measure, nowValue: 0.216 })).toBe("contact time 8 % longer (216 ms)");
  expect(movedWords({ ...measure, kind: "bar speed", of: "Back squat", change: null })).toBe(
    "back squat speed: no session since the baseline",
  );
});

const hold = {
  word: "holding",
  sinceDay: null,
  sinceFrom: null,
  sinceTo: null,
  value: { ...measure, change: null, nowValue: null, rowsSince: 0 },
  measures: [],
  sessions: [],
  visibleFall: null,
  needed: [],
  notes: [],
} as unknown as SeasonHold;

test("holding without a session since, and without a loss that would show, says no more than it knows", () => {
  expect(holdReason(hold)).toBe("contact time: no session since the baseline");
});

test("a holding athlete who stands lower by more than would show is said to be so, not to have no loss", () => {
  const value = { ...measure, kind: "bar speed", of: "Back squat", nowValue: 0.6 } as HoldMeasure;
  const said = (change: number) =>
    holdReason({ ...hold, visibleFall: 4, value: { ...value, change } });
  expect(said(-9)).toBe(
    "back squat speed −9 % from baseline, wobble 4 %, last 4 sessions against 6; if that lasts, it would usually show within six more sessions",
  );
  for (const change of [-3, 0, 9]) {
    expect(said(change)).toMatch(/; a loss of 4 % would usually show within six more sessions$/);
  }
});

test("a loss in one value alone is not promised to show soon, beside another half as far down it is", () => {
  const jump = { ...measure, kind: "jump height", of: "box jump", change: -9 } as HoldMeasure;
  const said = (change: number | null) => {
    const speed = { ...measure, kind: "bar speed", of: "Back squat", change } as HoldMeasure;
    return holdReason({ ...hold, value: jump, measures: [speed, { ...jump }], visibleFall: 4 });
  };
  expect(said(0)).toBe(
    "box jump −9 % from baseline, wobble 4 %, last 4 sessions against 6; a loss in one value alone takes longer to be called",
  );
  const alone = (change: number | null) => said(change).endsWith("takes longer to be called");
  expect([null, 3, -1.9, -2, -6].map(alone)).toEqual([true, true, true, false, false]);
  const only = holdReason({ ...hold, value: jump, measures: [jump], visibleFall: 4 });
  expect(only).toMatch(/would usually show within six more sessions$/);
});

test("of a speed not compared since its tool changed no loss is said to show, but when it was last compared", () => {
  const speed = { ...measure, kind: "bar speed", of: "Back squat", change: 5 } as HoldMeasure;
  const day = (day: number, speedSeen: boolean) => ({ day, percents: [speedSeen ? 1 : null, 2] });
  const said = (sinceDay: number, code = "setting-changed", value = speed) =>
    holdReason({
      ...hold,
      value,
      measures: [speed, { ...measure, kind: "jump height", of: "box jump" }],
      visibleFall: 5,
      // 20,588 is 15 May 2026.
      sessions: [day(20_585, true), day(20_588, true), day(20_592, false)],
      notes: [{ code, facts: { sinceDay } }],
    } as unknown as SeasonHold);
  expect(said(20_592)).toBe(
    "back squat speed +5 % from baseline, wobble 4 %, last 4 sessions against 6; last compared on 15 May",
  );
  const shows = /; a loss of 5 % would usually show within six more sessions$/;
  // Sessions away with another tool, and back since.
  expect(said(20_587)).toMatch(shows);
  expect(said(20_588)).toMatch(shows);
  expect(said(20_592, "far-off-sets")).toMatch(shows);
  // Another value shows a loss, the speed beside it does not.
  const jump = { ...measure, kind: "jump height", of: "box jump", change: 5 } as HoldMeasure;
  expect(said(20_592, "setting-changed", jump)).toMatch(
    /; a loss of 5 % would usually show within six more sessions; back squat speed last compared on 15 May$/,
  );
});

test("an onset is told with the days it may lie either side, or alone", () => {
  const since = (sinceFrom: number | null, sinceTo: number | null) =>
    sinceWords({ ...hold, sinceDay: 20_585, sinceFrom, sinceTo });
  // 20,585 is 12 May 2026.
  expect(since(20_580, 20_587)).toBe("12 May (± 5 days)");
  expect(since(20_584, 20_586)).toBe("12 May (± 1 day)");
  expect([since(20_585, 20_585), since(null, null)]).toEqual(["12 May", "12 May"]);
});
