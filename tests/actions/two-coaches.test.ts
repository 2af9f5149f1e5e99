import { serveRequest } from "../../src/actions/requests";
import type { Workbook } from "../../src/actions/workbook";
import { heldInMemory } from "../faults/held-in-memory";
import { rememberedIn } from "../faults/remembered";
import { smallClub } from "../faults/small-club";
import { watchedWorkbook } from "../faults/watched-workbook";
import { type MemoryWorkbook, memoryWorkbook } from "./memory-workbook";
import {
  type Action,
  answers,
  longActions,
  prepareWeek,
  typed,
  weekActions,
} from "./two-coaches/short-actions";

/**
 * Two coaches at once. An action holds the lock from before it reads what it writes about until all is
 * written, so another's can only come before it, between two of its calls outside the lock, or after it.
 * Every place is tried: at each call of one action the other's is run whole, and asked again when it
 * was refused. What is left must be what one of the two orders leaves.
 */
const actions = [...weekActions, ...longActions, ...answers];

function start(): MemoryWorkbook {
  const book = memoryWorkbook(smallClub());
  prepareWeek(heldInMemory(book));
  return book;
}

/** What stands in the cells and is remembered, tabs in whatever order. */
function stands(book: MemoryWorkbook): string {
  const cells = book.tabs().map(({ id, name }) => [name, book.values(id), book.formulas(id)]);
  return JSON.stringify([cells.sort(), rememberedIn(book.recallAll())]);
}

const run = (book: MemoryWorkbook, { request, message }: Action, seen: Workbook = book) => {
  serveRequest(seen, request, message(heldInMemory(book)));
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
afterAll(() => process.stdout.write(`Schedules of two coaches tried, in memory: ${schedules}.\n`));

describe.each(actions.map((one) => [one.name, one] as const))("one coach %s", (_, first) => {
  test.each(actions.map((one) => [one.name, one] as const))("while another %s", (__, second) => {
    const orders = [inOrder(first, second), inOrder(second, first)];
    const whole = start();
    const { book: counted, made } = interrupted(whole, 0, () => {});
    run(whole, first, counted);
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
      run(book, first, interrupted(book, at, other).book);
      if (refused) run(book, second);
      expect([at, orders.includes(stands(book))]).toEqual([at, true]);
      const standing = JSON.stringify(book.values(book.tabNamed("Next week").id));
      for (const one of typed) expect(standing).toContain(one);
      schedules++;
    }
  });
});
