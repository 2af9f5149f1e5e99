import type { RowCheckView, SetUpView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { memoryWorkbook } from "./memory-workbook";

const today = "2026-06-28";
type Book = ReturnType<typeof memoryWorkbook>;
const ask = <Answer>(book: Book, name: string, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const view = (book: Book) => ask<SetUpView>(book, "setUpView");
const jump = (day: string, height: number) => [day, "Ilka Brandmoor", "box jump", height];

/** Dates that could be either way round, and heights whose heading says nothing. */
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

test("a column's answer outlives inserting and moving columns and the tab's new name, and can be changed", () => {
  const one = book();
  const { id } = one.tabNamed("Spring");
  expect(rowsOf(one, "Spring")).toBe(0);
  const [question] = view(one).questions;
  expect(question).toMatchObject({ tabId: id, heading: "Date", about: "date order" });
  expect(question!.samples).toHaveLength(3);
  const said = { tabId: id, heading: question!.heading, column: question!.column };
  ask(one, "answerColumn", { ...said, dateOrder: "day first" });
  expect(view(one).questions).toEqual([]);
  expect(rowsOf(one, "Spring")).toBe(3);
  one.insertColumn("Spring", 1);
  one.type("Spring", 1, 1, "Venue");
  expect(rowsOf(one, "Spring")).toBe(3);
  one.rename("Spring", "Frühling");
  expect(rowsOf(one, "Frühling")).toBe(3);
  const far = () =>
    ask<RowCheckView>(one, "rowCheck").problems.filter(({ kind }) => kind.includes("first"));
  expect(far()).toEqual([]);
  ask(one, "answerColumn", { ...said, dateOrder: "month first" });
  expect(view(one).answered).toEqual([
    { tabId: id, tab: "Frühling", heading: "Date", column: 2, said: "month first" },
  ]);
});

test("a forgotten answer is asked again", () => {
  const one = book();
  const { id } = one.tabNamed("Spring");
  ask(one, "answerColumn", { tabId: id, heading: "Date", column: 1, dateOrder: "day first" });
  const [answered] = view(one).answered;
  const { questions, answered: left } = ask<SetUpView>(one, "forgetColumn", {
    tabId: answered!.tabId,
    heading: answered!.heading,
    column: answered!.column,
  });
  expect(left).toEqual([]);
  expect(questions).toHaveLength(1);
});
