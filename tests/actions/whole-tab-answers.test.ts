import type { RowCheckView, SetUpView } from "../../src/actions/messages";
import { readWorkbook } from "../../src/actions/read-workbook";
import { serveRequest } from "../../src/actions/requests";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { csvCells } from "../rows/layouts/csv-cells";
import { memoryWorkbook } from "./memory-workbook";

// What no cell of a tab says is asked once of the whole tab; squads and figures are invented.
const today = "2026-06-28";
type Book = ReturnType<typeof memoryWorkbook>;
const ask = <Answer>(book: Book, name: string, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const view = (book: Book) => ask<SetUpView>(book, "setUpView");
const rows = (book: Book) => readWorkbook(book, dayFromIso(today)!).rows;
const sets = (book: Book) =>
  rows(book).sets.map(
    ({ athlete, exercise, set, reps, loadKg }) =>
      `${athlete}: ${exercise} ${set} ${loadKg}x${reps}`,
  );
const day = (date: number) => new Date(2026, 4, date);
const athletes = [["Athlete"], ["Ilka Brandmoor"], ["Kofi Anstruther"]];
const grid = (title: string, ...cells: readonly unknown[][]) => [
  [title, "", "", ""],
  ["Athlete", day(5), day(12), day(19)],
  ["Ilka Brandmoor", ...cells[0]!],
  ["Kofi Anstruther", ...cells[1]!],
];
const log = (head: readonly string[], ...lines: readonly unknown[][]) => [head, ...lines];

type Case = {
  readonly tab: readonly (readonly unknown[])[];
  readonly question: object;
  readonly answer: string;
  /** The first set read after the answer. */
  readonly first: string;
  readonly rows: number;
};

const cases: Readonly<Record<string, Case>> = {
  "the order of sets and repetitions": {
    tab: grid("Back squat", ["60x5x3", "62.5x5x3", "65x5x3"], ["90x5x3", "92.5x5x3", "95x5x3"]),
    question: {
      about: "scheme order",
      samples: ["60x5x3", "62.5x5x3", "65x5x3"],
      choices: [{ answer: "sets × repetitions" }, { answer: "repetitions × sets" }],
    },
    answer: "repetitions × sets",
    first: "Ilka Brandmoor: squat 1 60x5".replace("squat", "back squat"),
    rows: 2,
  },
  "the lift of a grid": {
    tab: grid("Winter", ["60x5x5", "62.5x5x5", "65x5x5"], ["90x5x5", "92.5x5x5", "95x5x5"]),
    question: { about: "exercise", samples: ["60x5x5", "62.5x5x5", "65x5x5"] },
    answer: "back squat",
    first: "Ilka Brandmoor: back squat 1 60x5",
    rows: 2,
  },
  "the lift of plain rows": {
    tab: log(
      ["Date", "Athlete", "Set", "Load (kg)", "Reps", "Speed (m/s)"],
      ...[5, 12, 19].map((date) => [day(date), "Kofi Anstruther", 1, 90, 5, 0.6]),
    ),
    question: {
      about: "exercise",
      samples: [5, 12, 19].map(
        (date) => `2026-05-${String(date).padStart(2, "0")} · Kofi Anstruther · 1 · 90`,
      ),
    },
    answer: "trap bar deadlift",
    first: "Kofi Anstruther: trap bar deadlift 1 90x5",
    rows: 3,
  },
  "the athlete of plain rows": {
    tab: log(
      ["Date", "Exercise", "Set", "Load (kg)", "Reps", "Speed (m/s)"],
      ...[5, 12, 19].map((date) => [day(date), "back squat", 1, 90, 5, 0.6]),
    ),
    question: {
      about: "athlete",
      choices: [{ answer: "Ilka Brandmoor" }, { answer: "Kofi Anstruther" }],
    },
    answer: "Kofi Anstruther",
    first: "Kofi Anstruther: back squat 1 90x5",
    rows: 3,
  },
};

test.each(Object.keys(cases))("%s is asked, answered once, changed and forgotten", (name) => {
  const { tab, question, answer, first, rows: read } = cases[name]!;
  const book = memoryWorkbook({ Athletes: athletes, "Gym 2026": tab });
  const { id } = book.tabNamed("Gym 2026");
  expect(sets(book)).toEqual([]);
  const [asked, ...more] = view(book).questions;
  expect(asked).toMatchObject({ tabId: id, tab: "Gym 2026", written: "", ...question });
  expect([more, asked!.samples.length]).toEqual([[], 3]);
  const matter = { tabId: id, about: asked!.about, written: "" };
  const { questions, answered } = ask<SetUpView>(book, "answerTab", { ...matter, answer });
  expect(questions).toEqual([]);
  expect(answered).toMatchObject([{ tab: "Gym 2026", about: asked!.about, said: answer }]);
  expect(sets(book)[0]).toBe(first);
  expect(ask<RowCheckView>(book, "rowCheck")).toMatchObject({
    problems: [],
    summary: `${read + 2} of ${read + 2} rows read`,
  });
  book.rename("Gym 2026", "Old log");
  book.moveTab("Old log", 0);
  book.insertColumn("Old log", 1);
  expect([view(book).questions, sets(book)[0]]).toEqual([[], first]);
  const other = asked!.choices.find((one) => one.answer !== answer)?.answer ?? "front squat";
  ask(book, "answerTab", { ...matter, answer: other });
  expect(sets(book)[0]).not.toBe(first);
  expect(view(book).answered).toMatchObject([{ said: other }]);
  ask(book, "forgetTab", matter);
  expect(view(book).answered).toEqual([]);
  expect(view(book).questions).toMatchObject([{ about: asked!.about }]);
});

test("the lifts of other tabs are offered where one has to be named", () => {
  const book = memoryWorkbook({
    Athletes: athletes,
    Winter: cases["the lift of a grid"]!.tab,
    Sets: [
      ["Date", "Athlete", "Exercise", "Set", "Load (kg)"],
      [day(5), "Kofi Anstruther", "back squat", 1, 90],
      [day(5), "Kofi Anstruther", "hip thrust", 1, 100],
    ],
  });
  const [asked] = view(book).questions;
  expect(asked!.choices.map(({ answer }) => answer)).toEqual(["back squat", "hip thrust"]);
});

test("a doubtful bar is asked by its own words; the answer settles that session's loads alone", () => {
  const cells = csvCells("02-one-tab-per-athlete.csv", "numbers");
  const book = memoryWorkbook({ Gym: cells });
  const loads = () =>
    rows(book).sets.map(({ loadKg, barKg }) => [loadKg === null ? "?" : "kg", barKg].join(" "));
  const before = loads();
  expect(new Set(before)).toEqual(new Set(["kg 20", "kg ", "? "]));
  const [asked] = view(book).questions;
  expect(asked).toMatchObject({ about: "bar", guess: "15 kg", choices: [{ answer: "15 kg" }] });
  const written = (asked as { written: string }).written;
  expect(written).toContain("15?");
  const matter = { tabId: asked!.tabId, about: "bar", written };
  for (const answer of ["heavy", "150", ""])
    expect(() => ask(book, "answerTab", { ...matter, answer })).toThrow(
      `“${answer}” is no mass of a bar: give it in kg, such as 15.`,
    );
  ask(book, "answerTab", { ...matter, answer: "15" });
  const after = loads();
  expect(after.map((one, at) => one === before[at] || before[at] === "? ")).not.toContain(false);
  expect(new Set(after)).toContain("kg 15");
  expect(view(book).questions).toEqual([]);
  ask(book, "forgetTab", matter);
  expect(loads()).toEqual(before);
});

const speeds = (title: string) =>
  grid(title, ["60x5x5 .66", "62.5x5x5 .64", ""], ["90x5x5 .60", "", "95x5x5 .58"]);
const figures = (book: Book) =>
  new Set(
    rows(book).sets.flatMap(({ setSpeed, setSpeedIs }) => (setSpeed === null ? [] : [setSpeedIs])),
  );

test("one speed beside a load is neither mean nor fastest until the coach says which", () => {
  const book = memoryWorkbook({ Athletes: athletes, Gym: speeds("Back squat") });
  expect(figures(book)).toEqual(new Set([null]));
  const [asked] = view(book).questions;
  expect(asked).toMatchObject({
    about: "set speed",
    samples: ["60x5x5 .66", "62.5x5x5 .64", "90x5x5 .60"],
  });
  const matter = { tabId: asked!.tabId, about: "set speed", written: "" };
  ask(book, "answerTab", { ...matter, answer: "fastest repetition" });
  expect(figures(book)).toEqual(new Set(["best rep"]));
  ask(book, "answerTab", { ...matter, answer: "mean of the repetitions" });
  expect(figures(book)).toEqual(new Set(["mean of reps"]));
  const titled = memoryWorkbook({
    Athletes: athletes,
    Gym: speeds("Back squat, best rep of set 1"),
  });
  expect([view(titled).questions, figures(titled)]).toEqual([[], new Set(["best rep"])]);
});

test("five speeds beside five fives are spread as the coach says", () => {
  const five = ".66 .65 .64 .64 .62";
  const book = memoryWorkbook({
    Athletes: athletes,
    Gym: grid("Back squat, mean speed", [`60x5x5 ${five}`, "", ""], ["", `90x5x5 ${five}`, ""]),
  });
  const [asked] = view(book).questions;
  expect(asked).toMatchObject({ about: "speeds", samples: [`60x5x5 ${five}`, `90x5x5 ${five}`] });
  const matter = { tabId: asked!.tabId, about: "speeds", written: "" };
  const first = () => {
    const [set] = rows(book).sets;
    return [set!.setSpeed, set!.repSpeeds];
  };
  expect(first()).toEqual([null, []]);
  ask(book, "answerTab", { ...matter, answer: "one for each set" });
  expect(first()).toEqual([0.66, []]);
  ask(book, "answerTab", { ...matter, answer: "one for each repetition" });
  expect(first()).toEqual([null, [0.66, 0.65, 0.64, 0.64, 0.62]]);
  expect(() => ask(book, "answerTab", { ...matter, answer: "either" })).toThrow(
    "no answer to that",
  );
});
