import { tabPlans } from "../../../src/actions/clean-tabs/tab-plans";
import type { SetUpView } from "../../../src/actions/messages";
import { serveRequest } from "../../../src/actions/requests";
import { tableNames } from "../../../src/rows/table-name";
import { memoryWorkbook } from "../memory-workbook";

const today = "2026-06-28";
type Book = ReturnType<typeof memoryWorkbook>;
const make = (book: Book) => serveRequest(book, "makeCleanTabs", { today }) as { said: string };
const setUp = (book: Book) => serveRequest(book, "setUpView", { today }) as SetUpView;
const athletes = [
  ["Athlete", "Group"],
  ["Ilka Brandmoor", "track"],
  ["Tomas Reyerson", "road"],
];
const kit = [["bands", 4]];
/** A coach's tab of plates under another header, and a tab that has a table's name but is none. */
const mine = () => memoryWorkbook({ Läufer: athletes, Runs: kit });
type Seen = { tabs: { name: string; cells: unknown }[]; offers: [string, string[]][] };
const seen = (book: Book) => book.all() as Seen;
/** The same whatever order the tabs were dressed in. */
const sorted = (book: Book) =>
  Object.fromEntries(
    Object.entries(book.all() as Record<string, unknown[]>).map(([part, all]) => [
      part,
      all.map((one) => JSON.stringify(one)).sort(),
    ]),
  );

test("every table that is missing gets a tab with its headings, and each is found again by them", () => {
  const book = memoryWorkbook({});
  expect(make(book).said).toBe(`Made: ${tableNames.join(", ")}. Your own tabs are as they were.`);
  for (const table of tableNames) {
    const [headings] = book.values(book.tabNamed(table).id);
    expect(headings).toEqual(tabPlans[table].map(({ heading }) => heading));
  }
  const { missing, questions, tabs } = setUp(book);
  expect(missing).toEqual([]);
  expect(questions).toEqual([]);
  expect(tabs.map(({ tab, table }) => [tab, table])).toEqual(
    tableNames.map((name) => [name, name]),
  );
});

test("the coach's tabs stay cell by cell, the table they hold is not made again, a name taken is not taken", () => {
  const book = mine();
  const before = seen(book).tabs;
  make(book);
  expect(seen(book).tabs.slice(0, 2)).toEqual(before);
  const names = seen(book).tabs.map(({ name }) => name);
  expect(names).not.toContain("Athletes");
  expect(names).toContain("Runs 2");
});

test("athletes and lifts are offered, and brought up to date when asked again; nothing else changes", () => {
  const book = mine();
  make(book);
  const { id } = book.tabNamed("Sets");
  const offers = () => new Map(seen(book).offers);
  expect(offers().get(`${id}!C2:C`)).toEqual(["Ilka Brandmoor", "Tomas Reyerson"]);
  expect(offers().get(`${id}!D2:D`)).toContain("back squat");
  book.type("Läufer", 4, 1, "Priya Tellander");
  book.type("Sets", 2, 3, "Ilka Brandmoor");
  const { tabs } = seen(book);
  expect(make(book).said).toMatch(/^No table is missing/);
  expect(seen(book).tabs).toEqual(tabs);
  expect(offers().get(`${id}!C2:C`)).toContain("Priya Tellander");
});

test("whichever call of the platform fails, making them again ends as though none had", () => {
  const whole = mine();
  make(whole);
  const calls = whole.calls.length;
  const wanted = sorted(whole);
  expect(calls).toBeGreaterThan(100);
  for (let at = 1; at <= calls; at++) {
    const book = mine();
    book.failAt = at;
    expect(() => make(book)).toThrow("The platform failed");
    book.failAt = Number.POSITIVE_INFINITY;
    make(book);
    expect([at, sorted(book)]).toEqual([at, wanted]);
  }
});

test("rows typed between a failure and the next try stay", () => {
  const book = memoryWorkbook({});
  book.failAt = 40;
  expect(() => make(book)).toThrow("The platform failed");
  book.failAt = Number.POSITIVE_INFINITY;
  const [first] = book.tabs();
  book.type(first!.name, 2, 1, "Ilka Brandmoor");
  make(book);
  expect(book.values(first!.id)[1]![0]).toBe("Ilka Brandmoor");
});
