import type { RequestName } from "../../src/actions/requests";
import { serveRequest } from "../../src/actions/requests";
import type { Workbook } from "../../src/actions/workbook";
import { monday, priya, smallClub, today, tomas } from "../faults/small-club";
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

/** What stands in the cells and is remembered, whatever the order of either. */
function stands(book: MemoryWorkbook): string {
  const cells = book.tabs().map(({ id, name }) => [name, book.values(id), book.formulas(id)]);
  const texts = new Map<string, string>();
  for (const [key, text] of Object.entries(book.recallAll())) {
    const head = /^([12]) (\d+) \d+$/.exec(text);
    if (!head) continue;
    const parts = Array.from({ length: Number(head[2]) }, (_, part) =>
      book.recall(`${key}.${head[1]}.${part}`),
    );
    texts.set(key, JSON.stringify(sorted(JSON.parse(parts.join("")))));
  }
  return JSON.stringify([cells.sort(), [...texts].sort()]);
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((one) => JSON.stringify(sorted(one))).sort();
  if (value === null || typeof value !== "object") return value;
  return Object.entries(value)
    .map(([key, one]) => [key, sorted(one)] as const)
    .sort(([a], [b]) => (a < b ? -1 : 1));
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
function interrupted(
  book: MemoryWorkbook,
  at: number,
  other: () => void,
): Workbook & { made: number } {
  const seen = { made: 0 };
  const watched = Object.fromEntries(
    Object.entries(book).map(([name, member]) => [
      name,
      typeof member !== "function"
        ? member
        : (...args: unknown[]) => {
            if (++seen.made === at) other();
            return (member as (...given: unknown[]) => unknown)(...args);
          },
    ]),
  );
  return Object.defineProperty(watched, "made", { get: () => seen.made }) as never;
}

let schedules = 0;
afterAll(() => process.stdout.write(`Schedules of two coaches tried: ${schedules}.\n`));

describe.each(actions.map((one) => [one[0], one] as const))("one coach %s", (_, first) => {
  test.each(actions.map((one) => [one[0], one] as const))("while another %s", (__, second) => {
    const orders = [inOrder(first, second), inOrder(second, first)];
    const counted = interrupted(start(), 0, () => {});
    run(counted, first);
    expect(counted.made).toBeGreaterThan(2);
    for (let at = 1; at <= counted.made; at++) {
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
      run(interrupted(book, at, other), first);
      if (refused) run(book, second);
      expect([at, orders.includes(stands(book))]).toEqual([at, true]);
      const typed = book.values(book.tabNamed("Next week").id);
      expect(JSON.stringify(typed)).toContain("straps");
      expect(JSON.stringify(typed)).toContain("0.79 0.78");
      schedules++;
    }
  });
});
