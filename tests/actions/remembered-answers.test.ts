import type { RowCheckView, SetUpAnswer, SetUpView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { memoryWorkbook } from "./memory-workbook";

const today = "2026-06-28";
type Book = ReturnType<typeof memoryWorkbook>;
const ask = <Answer>(book: Book, name: string, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const view = (book: Book) => ask<SetUpView>(book, "setUpView");
const jump = (day: string, height: number) => [day, "Ilka Brandmoor", "box jump", height];

/** Dates that could be either way round. */
const book = () =>
  memoryWorkbook({
    Athletes: [["Athlete"], ["Ilka Brandmoor"]],
    Spring: [
      ["Date", "Athlete", "Test", "Height (cm)"],
      jump("5/3/2026", 41),
      jump("3/4/2026", 42),
      jump("7/5/2026", 43),
    ],
  });
const rowsOf = (one: Book, tab: string) =>
  view(one).tabs.find(({ tab: name }) => name === tab)?.rows;
const columnAsked = (one: Book) => {
  const [question] = view(one).questions;
  if (!question || !("column" in question)) throw new Error("no column is asked about");
  return question;
};
const columnAnswers = (one: Book) =>
  view(one).answered.flatMap((answer) =>
    "column" in answer ? [[answer.tab, answer.heading, answer.column, answer.said]] : [],
  );
/** The workbook with the one question about the dates answered. */
const answered = () => {
  const one = book();
  const { tabId, heading, column } = columnAsked(one);
  ask(one, "answerColumn", { tabId, heading, column, dateOrder: "day first" });
  return { one, tabId };
};

test("a column's answer ends the question, and can be changed", () => {
  const one = book();
  const { id } = one.tabNamed("Spring");
  expect(rowsOf(one, "Spring")).toBe(0);
  const question = columnAsked(one);
  expect(question).toMatchObject({ tabId: id, heading: "Date", about: "date order" });
  expect(question.samples).toHaveLength(3);
  const said = { tabId: id, heading: question.heading, column: question.column };
  ask(one, "answerColumn", { ...said, dateOrder: "day first" });
  expect([view(one).questions, rowsOf(one, "Spring")]).toEqual([[], 3]);
  const far = () =>
    ask<RowCheckView>(one, "rowCheck").problems.filter(({ kind }) => kind.startsWith("date-order"));
  expect(far()).toEqual([]);
  ask(one, "answerColumn", { ...said, dateOrder: "month first" });
  expect(columnAnswers(one)).toEqual([["Spring", "Date", 1, "month first"]]);
  expect(view(one).answered[0]!.choices.map(({ answer }) => answer)).toEqual([
    "day first",
    "month first",
  ]);
});

test("what a column was said to be stands in a heading's words, whatever table its tab is said to be since", () => {
  const one = memoryWorkbook({
    Athletes: [["Athlete"], ["Ilka Brandmoor"]],
    Nights: [
      ["Date", "Athlete", "Sleep quality", "Hrs"],
      ["2026-05-12", "Ilka Brandmoor", 4, 7],
    ],
  });
  const { id: tabId } = one.tabNamed("Nights");
  ask(one, "answerColumn", { tabId, heading: "Hrs", column: 4, field: "sleepH" });
  const said = [["Nights", "Hrs", 4, "sleep"]];
  expect(columnAnswers(one)).toEqual(said);
  for (const table of [null, "Sets"]) {
    ask(one, "answerTable", { tabId, table });
    expect(columnAnswers(one)).toEqual(said);
  }
});

const changes: Readonly<Record<string, [(one: Book) => void, string, string, number]>> = {
  "the tab renamed": [(one) => one.rename("Spring", "Frühling"), "Frühling", "Date", 1],
  "the tab moved": [(one) => one.moveTab("Spring", 0), "Spring", "Date", 1],
  "a tab put in before it": [(one) => one.insertTab("Kit", 0), "Spring", "Date", 1],
  "a column put in before it": [(one) => one.insertColumn("Spring", 1), "Spring", "Date", 2],
  "the column moved to the end": [(one) => one.moveColumn("Spring", 1, 5), "Spring", "Date", 4],
  "the other columns moved": [(one) => one.moveColumn("Spring", 3, 1), "Spring", "Date", 2],
  "its heading renamed": [(one) => one.type("Spring", 1, 1, "Tag"), "Spring", "Tag", 1],
};

test.each(Object.keys(changes))("a column's answer outlives %s", (name) => {
  const [change, tab, heading, column] = changes[name]!;
  const { one } = answered();
  change(one);
  expect(view(one).questions).toEqual([]);
  expect(rowsOf(one, tab)).toBe(3);
  expect(columnAnswers(one)).toEqual([[tab, heading, column, "day first"]]);
});

test("all of these at once", () => {
  const { one } = answered();
  one.type("Spring", 1, 1, "Tag");
  one.insertColumn("Spring", 1);
  one.moveColumn("Spring", 2, 6);
  one.insertTab("Kit", 0);
  one.moveTab("Spring", 0);
  one.rename("Spring", "Frühling");
  expect(view(one).questions).toEqual([]);
  expect(columnAnswers(one)).toEqual([["Frühling", "Tag", 5, "day first"]]);
});

test("a column that lost its tag with its cells cut and pasted elsewhere is known by its heading", () => {
  const { one } = answered();
  const cells = one.values(one.tabNamed("Spring").id).map((row) => [...row]);
  cells.forEach((row, at) => {
    one.type("Spring", at + 1, 6, row[0]);
    one.type("Spring", at + 1, 1, "");
  });
  expect(rowsOf(one, "Spring")).toBe(3);
  expect(columnAnswers(one)).toEqual([["Spring", "Date", 6, "day first"]]);
});

test("an answer is no other column's: taken out with its column, it is shown so and can be forgotten", () => {
  const { one, tabId } = answered();
  one.deleteColumn("Spring", 1);
  one.insertColumn("Spring", 1);
  one.type("Spring", 1, 1, "Tag");
  ["5/3/2026", "3/4/2026", "7/5/2026"].forEach((day, at) => {
    one.type("Spring", at + 2, 1, day);
  });
  expect(view(one).questions).toMatchObject([{ about: "date order", heading: "Tag" }]);
  const [gone] = view(one).answered;
  expect(gone).toMatchObject({ heading: "Date", column: 0, said: "day first" });
  ask(one, "forgetColumn", {
    tabId,
    column: 0,
    tag: (gone as { tag: string }).tag,
    about: "date order",
  });
  expect(view(one).answered).toEqual([]);
});

test("a heading shown before the coach renamed it is refused, and nothing is remembered", () => {
  const one = book();
  const { tabId, heading, column } = columnAsked(one);
  one.type("Spring", 1, 1, "Tag");
  expect(() =>
    ask(one, "answerColumn", { tabId, heading, column, dateOrder: "day first" }),
  ).toThrow("“Date” is no longer a heading of that tab. Find tables again.");
  expect(view(one).answered).toEqual([]);
});

test("a column without a heading keeps its answer wherever it goes, and loses it with the column", () => {
  const one = memoryWorkbook({
    Sets: [
      ["Date", "Athlete", "Exercise", "Set", "Load (kg)", ""],
      ...[0.62, 0.6, 0.57, 0.61].map((speed, at) => [
        new Date(2026, 4, 5 + 7 * at),
        "Ilka Brandmoor",
        "back squat",
        1,
        60,
        speed,
      ]),
    ],
  });
  const question = columnAsked(one);
  expect(question).toMatchObject({ heading: "", column: 6, about: "meaning", guess: "speed" });
  const { tabId } = question;
  ask(one, "answerColumn", { tabId, heading: "", column: 6, field: "speed" });
  expect(columnAnswers(one)).toEqual([["Sets", "", 6, "rep speeds"]]);
  one.insertColumn("Sets", 3);
  one.moveColumn("Sets", 7, 1);
  expect(view(one).questions).toEqual([]);
  expect(columnAnswers(one)).toEqual([["Sets", "", 1, "rep speeds"]]);
  one.deleteColumn("Sets", 1);
  expect(columnAnswers(one)).toEqual([["Sets", "", 0, "rep speeds"]]);
});

test("meaning and unit of one column are forgotten one by one", () => {
  const one = book();
  const { tabId } = columnAsked(one);
  ask(one, "answerColumn", { tabId, heading: "Height (cm)", column: 4, field: "drop" });
  ask(one, "answerColumn", { tabId, heading: "Height (cm)", column: 4, unit: "mm" });
  const lines = (answers: readonly SetUpAnswer[]) =>
    answers.map(({ about, said }) => [about, said]);
  const before = view(one).answered;
  expect(lines(before)).toEqual([
    ["meaning", "drop height"],
    ["unit", "mm"],
  ]);
  const { column, tag } = before[0] as { column: number; tag: string };
  const { answered: left } = ask<SetUpView>(one, "forgetColumn", {
    tabId,
    column,
    tag,
    about: "meaning",
  });
  expect(lines(left)).toEqual([["unit", "mm"]]);
});

test("a forgotten answer is asked again", () => {
  const { one, tabId } = answered();
  const [said] = view(one).answered as [SetUpAnswer & { column: number; tag: string }];
  const { questions, answered: left } = ask<SetUpView>(one, "forgetColumn", {
    tabId,
    column: said.column,
    tag: said.tag,
    about: said.about,
  });
  expect(left).toEqual([]);
  expect(questions).toHaveLength(1);
});

test("which table a tab is can be said, changed and forgotten", () => {
  const { one, tabId } = answered();
  const table = () => view(one).tabs.find((tab) => tab.tabId === tabId);
  expect(table()).toMatchObject({ table: "Jumps", found: "sure" });
  ask(one, "answerTable", { tabId, table: null });
  expect(table()).toMatchObject({ table: null, found: "said" });
  ask(one, "answerTable", { tabId, table: "Diary" });
  expect(table()).toMatchObject({ table: "Diary", found: "said" });
  ask(one, "forgetTable", { tabId });
  expect(table()).toMatchObject({ table: "Jumps", found: "sure", rows: 3 });
});

test("a heading under dates that nobody knows is a problem until the coach leaves it alone", () => {
  const one = memoryWorkbook({
    Athletes: [["Athlete"], ["Ilka Brandmoor"]],
    Spring: [
      ["Squat, kg x sets x reps"],
      ["", "5/5/2026", "", "19/5/2026", ""],
      ["Athlete", "kg", "Feel", "kg", "Feel"],
      ["Ilka Brandmoor", "60x3x5", "fine", "62.5x3x5", "flat"],
    ],
  });
  const problems = () =>
    ask<RowCheckView>(one, "rowCheck").problems.map(({ cell, kind }) => `${cell} ${kind}`);
  expect([problems(), rowsOf(one, "Spring")]).toEqual([["C3 heading-unknown"], 1]);
  const { tabId, heading, column, choices } = columnAsked(one);
  expect([heading, column, choices]).toEqual(["Feel", 3, []]);
  ask(one, "answerColumn", { tabId, heading, column, field: null });
  expect([view(one).questions, problems(), rowsOf(one, "Spring")]).toEqual([[], [], 1]);
});
