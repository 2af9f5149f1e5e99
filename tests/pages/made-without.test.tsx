import render from "preact-render-to-string";
import { rememberLong } from "../../src/actions/answers/remember-long";
import type { AthleteView, WeekView } from "../../src/actions/messages";
import type { PageKind, PrintedPages } from "../../src/actions/page-messages";
import { type RequestName, serveRequest } from "../../src/actions/requests";
import { Pages } from "../../src/pages/pages";
import { Without } from "../../src/pages/without";
import { columnName } from "../../src/rows/value/cell-address";
import { type MemoryWorkbook, memoryWorkbook } from "../actions/memory-workbook";
import { sampleClub } from "./sample-club";

const today = "2026-06-28";
const week = { monday: "2026-06-29", changes: [] };
const kinds: readonly PageKind[] = ["cards", "rack plan", "week page", "pictures"];
const ask = <Answer,>(book: MemoryWorkbook, name: RequestName, more: object) =>
  serveRequest(book, name, { today, ...more }) as Answer;
/** Every page of a kind, as its text. */
const paper = (book: MemoryWorkbook, kind: PageKind): string[] => {
  const pages = ask<PrintedPages>(book, "printPages", { ...week, kind });
  return render(<Pages pages={pages} />)
    .split("<article")
    .slice(1)
    .map((html) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " "));
};
const damaged = (key: string) => {
  const book = sampleClub();
  book.alone(() => rememberLong(book, key, "not a list"));
  return book;
};
const tomas = "Tomas Reyerson";
/** Two late rows of Tomas with a load nobody lifts. */
const heavy = (rows: unknown[][]) => {
  const [head = [], ...rest] = rows;
  const own = rest.filter((row) => row.includes(tomas)).slice(-2);
  const load = head.findIndex((one) => /load/i.test(String(one)));
  const spoilt = (row: unknown[]) => row.map((cell, at) => (at === load ? 8200 : cell));
  return [head, ...rest.map((row) => (own.includes(row) ? spoilt(row) : row))];
};

test.each(kinds)("on the %s it stands that what was said of tabs and names is damaged", (kind) => {
  const pages = paper(damaged("answers"), kind);
  expect(pages.length).toBeGreaterThan(0);
  for (const text of pages) {
    expect(text).toContain(
      "What was said of tabs, columns and names can no longer be read: made without it. Open Set up.",
    );
  }
});

test("a page says first which cells to ask about before anything is lifted", () => {
  const without = { damaged: [], rows: [{ athlete: tomas, rows: 2 }], cells: [], deleted: [] };
  expect(render(<Without without={{ ...without, ask: ["Gym E2", "Sets F3"] }} />)).toContain(
    ">To ask about before anything is lifted: Gym E2, Sets F3. Not used in full: 2 rows of",
  );
  expect(render(<Without without={{ ...without, ask: [] }} />)).not.toContain("To ask about");
});

test.each(kinds)("on the %s it stands that earlier changes to the week are damaged", (kind) => {
  const book = damaged("week changes");
  expect(ask<WeekView>(book, "weekView", week).damaged).toHaveLength(1);
  for (const text of paper(book, kind)) {
    expect(text).toContain("Earlier changes to this week can no longer be read");
  }
});

test("a card says how many of that athlete's rows were not used in full, as the sidebar does", () => {
  const before = ask<AthleteView>(sampleClub(), "athleteView", { athlete: tomas }).line.rowsNotUsed;
  const book = sampleClub({ Sets: heavy });
  const { rowsNotUsed } = ask<AthleteView>(book, "athleteView", { athlete: tomas }).line;
  expect(rowsNotUsed).toBe(before + 2);
  const line = `Not used in full: ${rowsNotUsed} rows of ${tomas}.`;
  for (const card of paper(book, "cards")) expect(card.includes(line)).toBe(card.includes(tomas));
  const listed = new RegExp(`Not used in full: .*${rowsNotUsed} (rows )?of ${tomas}`);
  expect(paper(book, "rack plan")[0]).toMatch(listed);
  expect(paper(book, "pictures")[0]).toMatch(listed);
  expect(paper(book, "week page")[0]).toContain(`${tomas} ${rowsNotUsed}`);
});

test("nothing is said where every row was used and all that is kept can be read", () => {
  for (const card of paper(sampleClub(), "cards")) {
    if (card.includes("Wren Castellow")) {
      expect(card).not.toMatch(/Not used in full|can no longer be read/);
    }
  }
  expect(paper(sampleClub(), "cards").some((one) => one.includes("Wren Castellow"))).toBe(true);
});

test("the head coach's page names the tabs whose rows wait for an answer", () => {
  const unknownDays = ([head = [], ...rest]: unknown[][]) => [
    ["Measured", ...head.slice(1)],
    ...rest,
  ];
  const [page] = paper(sampleClub({ Jumps: unknownDays }), "week page");
  expect(page).toContain("Not in use until confirmed: Jumps.");
  expect(paper(sampleClub(), "week page")[0]).not.toContain("until confirmed");
});

test("every row is said to be read only where no tab waits for an answer", () => {
  const club = (heading: string) =>
    memoryWorkbook({
      Athletes: [["Athlete"], [tomas]],
      Sets: [
        ["Date", "Athlete", "Exercise", "Load (kg)", "Reps"],
        ["2026-06-23", tomas, "back squat", 80, 5],
      ],
      Jumps: [
        [heading, "Athlete", "Test", "Height (cm)"],
        ["2026-06-23", tomas, "CMJ", 41],
      ],
    });
  const said = (heading: string) => paper(club(heading), "week page")[0];
  expect(said("Date")).toContain("Every row was read.");
  expect(said("Measured")).toContain("Every row of the tables in use was read.");
  expect(said("Measured")).not.toContain("Every row was read.");
});

test("a page says which cells of the Next week tab it does not follow; a note of the coach's is none", () => {
  const book = sampleClub();
  const said = "Changed in the Next week tab and not on paper:";
  ask(book, "writeWeek", { ...week, athletes: null });
  for (const kind of kinds) {
    for (const text of paper(book, kind)) expect(text).not.toContain(said);
  }
  const { id } = book.tabNamed("Next week");
  const cells = book.values(id);
  const head = cells.findIndex((row) => row.includes("Load kg"));
  const at = cells.findIndex((row) => row[0] === tomas) + 1;
  const column = (heading: string) => cells[head]!.indexOf(heading) + 1;
  book.type("Next week", at, column("Load kg"), 60);
  book.type("Next week", at, column("Why"), "as agreed");
  const line = `${said} ${columnName(column("Load kg"))}${at}. Change it in the sidebar and print again.`;
  for (const card of paper(book, "cards")) expect(card.includes(line)).toBe(card.includes(tomas));
  expect(paper(book, "rack plan")[0]).toContain(line);
  expect(paper(book, "week page")[0]).toContain(line);
  expect(paper(book, "pictures").join()).not.toContain(said);
  book.type("Next week", at, column("Contacts"), 5);
  expect(paper(book, "week page")[0]).toMatch(/G\d+, K\d+\. Change them in the sidebar/);
  // A tab without its headings is told of under Next week; paper is made all the same.
  book.type("Next week", head + 1, column("Load kg"), "");
  for (const kind of kinds) expect(paper(book, kind).join()).not.toContain(said);
});

test("a page says whose row was deleted in the Next week tab, as its session is printed all the same", () => {
  const book = sampleClub();
  ask(book, "writeWeek", { ...week, athletes: null });
  const { id } = book.tabNamed("Next week");
  const cells = book.values(id);
  const at = cells.findIndex((row) => row[0] === tomas) + 1;
  for (let column = 1; column <= cells[at - 1]!.length; column++)
    book.type("Next week", at, column, "");
  const line = `Deleted in the Next week tab and still on paper: ${tomas}, Tue 30 Jun.`;
  for (const card of paper(book, "cards")) expect(card.includes(line)).toBe(card.includes(tomas));
  expect(paper(book, "rack plan")[0]).toContain(line);
  expect(paper(book, "week page")[0]).toContain(line);
  const view = ask<WeekView>(book, "weekView", week);
  const own = view.lines.find(({ athlete }) => athlete === tomas)!;
  expect([view.deleted, own.deleted]).toEqual([1, 1]);
  expect(own.why).toContain("Deleted in the tab, not written again: Tue 30 Jun.");
  expect(view.already).toMatch(
    / Deleted in the tab, not written again: Tomas Reyerson, Tue 30 Jun\./,
  );
  const { said } = ask<{ said: string }>(book, "writeWeek", { ...week, athletes: null });
  expect(said).toBe(
    `${view.rowsToWrite} rows the same. Deleted in the tab, not written again: ${tomas}, Tue 30 Jun.`,
  );
  expect(
    ask<{ said: string }>(book, "writeWeek", { ...week, athletes: [tomas], again: true }).said,
  ).toBe("1 row new.");
  for (const kind of kinds) expect(paper(book, kind).join()).not.toContain("Deleted in");
});
