import { kgFromPounds } from "../../src/coaching/units/mass";
import { chartWords } from "../../src/words/charts";
import { localPage } from "../../src/words/local-page";
import {
  deletedDaysWords,
  ifWrittenWords,
  takenBackWords,
  weekDifferenceWords,
} from "../../src/words/next-week-tab";
import { pageLabels } from "../../src/words/page-labels";
import { changeWords, listWords, pageWords } from "../../src/words/pages";
import { paperSentences } from "../../src/words/paper-sentences";
import { printedNumbers } from "../../src/words/printed-numbers";
import { answerLabel } from "../../src/words/questions";
import { sentenceWords, withinSentence } from "../../src/words/reasons-figures";
import { kindCounts } from "../../src/words/row-kinds";
import { listedRules, ruleWords } from "../../src/words/rule-list";
import { seasonWrittenWords, weekCellWords } from "../../src/words/season-tab";
import { answerWords, cleanTabWords } from "../../src/words/set-up";
import { insteadCellWords } from "../../src/words/week";
import { weekViewWords } from "../../src/words/week-view";

test("one is said as one, and every other number as several", () => {
  const both = (say: (count: number) => string) => [say(1), say(3)];
  expect(both((n) => chartWords.days("pain or illness", n))).toEqual([
    "pain or illness: 1 day",
    "pain or illness: 3 days",
  ]);
  expect(both((n) => pageLabels.setsOf(n, 5))).toEqual(["1 set of 5", "3 sets of 5"]);
  expect(both(pageWords.ready.cards)).toEqual(["1 card ready to print", "3 cards ready to print"]);
  expect(both(pageWords.ready["rack plan"])[1]).toBe("3 rack plans ready to print");
  expect(both(pageWords.ready.pictures)[0]).toBe("Charts of 1 athlete ready to print");
  expect(both(weekViewWords.write)).toEqual(["Write 1 row", "Write 3 rows"]);
  expect(both((n) => seasonWrittenWords(12, n, []))).toEqual([
    "Season: 12 weeks, 1 cell written.",
    "Season: 12 weeks, 3 cells written.",
  ]);
  expect(paperSentences.rackLead(1, 2, 40)).toMatch(/^One lifts at two racks, /);
  expect(paperSentences.rackLead(6, 1, 40)).toMatch(/^Six lift at one rack, /);
});

test("a list is read out with its last member after an and", () => {
  expect([[], ["A"], ["A", "B"], ["A", "B", "C"]].map(listWords)).toEqual([
    "",
    "A",
    "A and B",
    "A, B and C",
  ]);
});

test("plates that move between two lifters are named each way, or nothing moves", () => {
  const numbers = printedNumbers({ unit: "kg", mark: "." });
  const moved = (takeOff: readonly number[], putOn: readonly number[]) =>
    changeWords({ takeOff, putOn }, numbers);
  expect(moved([5], [10, 2.5])).toBe("off 5, on 10 + 2.5");
  expect([moved([5], []), moved([], [1.25]), moved([], [])]).toEqual([
    "off 5",
    "on 1.25",
    "same bar",
  ]);
});

test("paper has the coach's own unit and decimal mark", () => {
  const comma = printedNumbers({ unit: "kg", mark: "," });
  expect([comma.mass(67.5), comma.speed(0.7), comma.cm(40.25)]).toEqual(["67,5", "0,70", "40,3"]);
  // A mark inside a sentence changes only between digits.
  expect(comma.marked("67.5 kg. Then 0.62 m/s.")).toBe("67,5 kg. Then 0,62 m/s.");
  const pounds = printedNumbers({ unit: "lb", mark: "." });
  expect([pounds.mass(kgFromPounds(147.5)), pounds.mass(67.5)]).toEqual(["147.5", "148.8"]);
  expect(printedNumbers({ unit: "kg", mark: "." }).mass(61.25)).toBe("61.25");
});

test("a planned load on paper names its plates where there are any", () => {
  expect(pageLabels.planned("85 kg", "25, 5, 2.5")).toBe("planned 85 kg (25, 5, 2.5)");
  expect(pageLabels.planned("20 kg", "")).toBe("planned 20 kg");
});

test("a cell of ours that was changed says why, or else whose it is", () => {
  expect(localPage.protectedCell("B2", "the week is written here")).toBe(
    "B2: the week is written here. Undo takes your change back.",
  );
  expect(localPage.protectedCell("B2", "")).toBe(
    "B2: this cell is filled by Holdline. Undo takes your change back.",
  );
});

test("tabs that were made are named, and an answer that cannot be one says what is", () => {
  expect(cleanTabWords.made([])).toMatch(/^No table is missing/);
  expect(cleanTabWords.made(["Sets", "Plates"])).toBe(
    "Made: Sets, Plates. Your own tabs are as they were.",
  );
  expect(answerWords.notAnAnswer("bar", "heavy")).toMatch(/“heavy” is no mass of a bar: .*15/);
  expect(answerWords.notAnAnswer("unit", "stone")).toMatch(/“stone” is no answer/);
});

test("an answer that gives a column no meaning is listed as left alone", () => {
  expect(answerLabel({ tab: "Log", about: "meaning", heading: "Mood", column: 4, said: "" })).toBe(
    "Log, “Mood”: left alone",
  );
});

test("rules are listed with the value in force, and the usual one where the squad set its own", () => {
  const definition = { label: "Load off", unit: "fraction", usual: 0.1, least: 0, most: 0.3 };
  expect(ruleWords(definition, 0.1)).toBe("10 %; allowed 0–30 %");
  expect(ruleWords(definition, 0.08)).toBe("8 %, set by you; usual 10, allowed 0–30 %");
  const weeks = { ...definition, unit: "weeks", usual: 3, least: 1, most: 8 };
  expect(ruleWords(weeks, 3)).toBe("3 weeks; allowed 1–8 weeks");
  expect(ruleWords(weeks, 2)).toBe("2 weeks, set by you; usual 3, allowed 1–8 weeks");
  const yes = { ...definition, unit: "1 for yes", usual: 0, least: 0, most: 1 };
  expect([ruleWords(yes, 0), ruleWords(yes, 1)]).toEqual([
    "0 (1 for yes)",
    "1 (1 for yes), set by you",
  ]);
  const rules = listedRules({ holdWeeks: 2 });
  const of = (label: string) => rules.find(({ rule }) => rule === label)?.value;
  expect(of("Weeks at a step before the next")).toMatch(/^2 weeks, set by you/);
  // A rule nobody named has its usual value.
  expect(of("Weeks at the first 5×5")).toBe("3 weeks; allowed 1–12 weeks");
  for (const { source } of rules) expect(source).not.toBe("");
});

test("problems are counted by kind, the most common first and equals by name", () => {
  const problems = [
    "needed-blank",
    "not-a-day",
    "not-a-day",
    "day-questioned",
    "weekday-questioned",
  ];
  expect(
    kindCounts({ problems: problems.map((kind) => ({ kind })), names: ["a", "b", "c"] }),
  ).toEqual([
    { kind: "name not among the athletes", count: 3 },
    { kind: "date unreadable", count: 2 },
    { kind: "odd day", count: 2 },
    { kind: "blank where needed", count: 1 },
  ]);
});

test("what is written or kept in a tab is counted, a long list cut short", () => {
  const cells = Array.from({ length: 14 }, (_, at) => `G${at + 2}`);
  const first = cells.slice(0, 12).join(", ");
  expect(takenBackWords(0, [])).toBe("No row was taken back; the week is proposed afresh.");
  expect(takenBackWords(14, ["C9"])).toBe("Taken back: 14 rows. Yours, kept: C9.");
  const counts = { added: 0, changed: 1, removed: 0, same: 0, deleted: [] };
  expect(weekDifferenceWords({ ...counts, kept: cells })).toBe(
    `1 row changed. Yours, kept: ${first} and 2 more.`,
  );
  expect(seasonWrittenWords(12, 0, cells)).toBe(
    `Season: 12 weeks, nothing to change. Yours, kept: ${first} and 2 more.`,
  );
  expect(seasonWrittenWords(40, 2, [], true)).toMatch(/written\. Most are 16 to 20 weeks: /);
});

test("who changes and who is taken out is named, each once and four at most", () => {
  const names = ["a b", "a b", "c d", "e f", "g h", "i j"];
  const lines = names.map((name, at) => `2026-05-11 ${name} ${at + 1}`);
  const merge = { added: [], same: [], kept: [], deleted: [], changed: lines, removed: [] };
  expect(ifWrittenWords(merge)).toBe(
    "If written: 6 rows changed. Changed: a b, c d, e f, g h and 1 more.",
  );
  expect(ifWrittenWords({ ...merge, changed: [], removed: [lines[2]!] })).toBe(
    "If written: 1 row taken out. Taken out: c d.",
  );
  expect(ifWrittenWords({ ...merge, changed: [], added: lines.slice(2) })).toBe(
    "If written: 4 rows new. New: c d, e f, g h, i j.",
  );
});

test("rows deleted in the tab are named with their days, four at most", () => {
  const counts = { added: 0, changed: 0, removed: 0, same: 3, kept: ["G5"] };
  const names = ["a b", "c d", "e f", "g h", "i j"];
  const deleted = names.map((athlete) => ({ athlete, day: "2026-05-12" }));
  expect(weekDifferenceWords({ ...counts, deleted: deleted.slice(0, 1) })).toBe(
    "3 rows the same. Yours, kept: G5. Deleted in the tab, not written again: a b, Tue 12 May.",
  );
  expect(weekDifferenceWords({ ...counts, kept: [], deleted })).toBe(
    "3 rows the same. Deleted in the tab, not written again: a b, Tue 12 May; c d, Tue 12 May; e f, Tue 12 May; g h, Tue 12 May and 1 more.",
  );
  expect(deletedDaysWords(["2026-05-12", "2026-05-14"])).toBe(
    "Deleted in the tab, not written again: Tue 12 May, Thu 14 May.",
  );
});

test("a week of the season tab names its races, and a race nobody marked as the least", () => {
  const race = { race: "R3, hill race", matters: null, day: 20_587 };
  const week = { monday: 20_584, kind: "ordinary", races: [race] } as unknown as Parameters<
    typeof weekCellWords
  >[0];
  expect(weekCellWords(week)).toBe("R3 (C) 14 May");
  expect(weekCellWords({ ...week, races: [] })).toBe("·");
});

test("names keep their capitals where they are letters of their own, and sentences end once", () => {
  expect(
    ["Back squat", "Back Squat", "CMJ", "CMJ mat", "CMJ Mat", "T-bar row", "Übungskniebeuge"].map(
      withinSentence,
    ),
  ).toEqual([
    "back squat",
    "back squat",
    "CMJ",
    "CMJ mat",
    "CMJ mat",
    "T-bar row",
    "übungskniebeuge",
  ]);
  expect([sentenceWords("two misses"), sentenceWords("Why?")]).toEqual(["Two misses.", "Why?"]);
});

test("another exercise in the main lift's place has its last load, or goes by feel", () => {
  const item = { exercise: "leg press", loadKg: 90 } as Parameters<typeof insteadCellWords>[0];
  expect(insteadCellWords(item)).toBe("leg press, last 90 kg");
  expect(insteadCellWords({ ...item, loadKg: null })).toBe("leg press, by feel, 2–3 in reserve");
});

test("masses told in pounds are turned, what the coach typed is quoted as it stands", () => {
  const { told } = printedNumbers({ unit: "lb", mark: "," });
  // A pound is 0.45359237 kg (international yard and pound agreement 1959).
  expect(told("“107.5 kg” reads 107.5 kg; 2 to 2.5 kg more.")).toBe(
    "“107.5 kg” reads 237 lb; 4,4 to 5,5 lb more.",
  );
});
