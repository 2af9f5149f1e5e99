import type { RequestName } from "../../src/actions/requests";
import { serveRequest } from "../../src/actions/requests";
import type { Workbook } from "../../src/actions/workbook";
import { rememberedIn } from "../faults/remembered";
import { monday, priya, smallClub, today, tomas } from "../faults/small-club";
import { watchedWorkbook } from "../faults/watched-workbook";
import { type MemoryWorkbook, memoryWorkbook } from "./memory-workbook";

jest.setTimeout(240_000);

/**
 * Two coaches at once. An action holds the lock from before it reads what it writes about until all is
 * written, so another's can only come before it, between two of its calls outside the lock, or after it.
 * Every place is tried: at each call of one action the other's is run whole, and asked again when it
 * was refused. What is left must be what one of the two orders leaves.
 */
type Action = readonly [string, RequestName, Readonly<Record<string, unknown>>];
const week = { today, monday, changes: [], athletes: null };
const actions: readonly Action[] = [
  ["writes the week", "writeWeek", week],
  [
    "writes it with a change",
    "writeWeek",
    { ...week, changes: [{ athlete: tomas, loadKg: 62.5 }] },
  ],
  ["takes the week back", "takeBackWeek", { today, monday }],
  ["writes the season", "writeSeason", { today }],
  ["makes clean tabs", "makeCleanTabs", { today }],
  [
    "answers a spelling",
    "answerName",
    { today, written: "Priya Telander", athlete: priya, same: true },
  ],
  ["takes a spelling back", "forgetName", { today, written: "P. T." }],
  ["answers about a tab", "answerTable", { today, tabId: 105, table: "Races" }],
];

function start(): MemoryWorkbook {
  const book = memoryWorkbook(smallClub());
  serveRequest(book, "answerName", { today, written: "P. T.", athlete: priya, same: true });
  serveRequest(book, "writeWeek", week);
  book.type("Next week", 5, 3, "0.79 0.78");
  book.type("Next week", 6, 17, "straps");
  return book;
}

/** What stands in the cells and is remembered, tabs in whatever order. */
function stands(book: MemoryWorkbook): string {
  const cells = book.tabs().map(({ id, name }) => [name, book.values(id), book.formulas(id)]);
  return JSON.stringify([cells.sort(), rememberedIn(book.recallAll())]);
}

const run = (book: Workbook, [, request, message]: Action) => {
  serveRequest(book, request, message);
};
function inOrder(...order: readonly Action[]): string {
  const book = start();
  for (const one of order) run(book, one);
  return stands(book);
}

/** The workbook as one coach's action sees it, the other's coming in before the call of that number. */
const interrupted = (book: MemoryWorkbook, at: number, other: () => void) =>
  watchedWorkbook(book, (call, make) => {
    if (call === at) other();
    return make();
  });

let schedules = 0;
afterAll(() => process.stdout.write(`Schedules of two coaches tried: ${schedules}.\n`));

describe.each(actions.map((one) => [one[0], one] as const))("one coach %s", (_, first) => {
  test.each(actions.map((one) => [one[0], one] as const))("while another %s", (__, second) => {
    const orders = [inOrder(first, second), inOrder(second, first)];
    const { book: counted, made } = interrupted(start(), 0, () => {});
    run(counted, first);
    expect(made.length).toBeGreaterThan(2);
    for (let at = 1; at <= made.length; at++) {
      const book = start();
      let refused = false;
      const other = () => {
        try {
          run(book, second);
        } catch (error) {
          // The lock is held: nothing was done, and the coach asks again.
          expect((error as Error).message).toBe("Locked");
          refused = true;
        }
      };
      run(interrupted(book, at, other).book, first);
      if (refused) run(book, second);
      expect([at, orders.includes(stands(book))]).toEqual([at, true]);
      const typed = book.values(book.tabNamed("Next week").id);
      expect(JSON.stringify(typed)).toContain("straps");
      expect(JSON.stringify(typed)).toContain("0.79 0.78");
      schedules++;
    }
  });
});
