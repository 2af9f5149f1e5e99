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
 * was refused. What is left must be what one of the two orders leaves. Where the other comes through,
 * it does so in a workbook of its own; those that are refused change nothing, which is asserted, so
 * that the first goes on as it would have, and all of them are tried in one.
 */
const actions = [...weekActions, ...longActions, ...answers];

/** The week as both find it; each schedule has a copy of it. */
const found = memoryWorkbook(smallClub());
prepareWeek(heldInMemory(found));

/** What stands in the cells and is remembered, tabs in whatever order. */
function stands(book: MemoryWorkbook): string {
  const cells = book.tabs().map(({ id, name }) => [name, book.values(id), book.formulas(id)]);
  return JSON.stringify([cells.sort(), rememberedIn(book.recallAll())]);
}

const run = (book: MemoryWorkbook, { request, message }: Action, seen: Workbook = book) => {
  serveRequest(seen, request, message(heldInMemory(book)));
};
/** Calls that change nothing; the lock's own is refused. */
const looking = new Set(
  "tabs values formulas decimalMark isPlain highlights taggedColumns recall recallAll alone".split(
    " ",
  ),
);

const left = new Map<string, string>();
/** What two actions leave, one after the other. */
function inOrder(...order: readonly [Action, Action]): string {
  const key = order.map(({ name }) => name).join(", ");
  const known = left.get(key);
  if (known !== undefined) return known;
  const book = found.copy();
  for (const one of order) run(book, one);
  const end = stands(book);
  left.set(key, end);
  return end;
}

/** Runs an action; before each of its calls another's may come in, told whether the lock is held. */
function interrupted(
  book: MemoryWorkbook,
  action: Action,
  comeIn: (call: number, locked: boolean) => void = () => {},
): number {
  let locked = false;
  const { book: seen, made } = watchedWorkbook(book, (call, make, name) => {
    comeIn(call, locked);
    if (name !== "alone") return make();
    locked = true;
    const answer = make();
    locked = false;
    return answer;
  });
  run(book, action, seen);
  return made.length;
}

let schedules = 0;
afterAll(() => process.stdout.write(`Schedules of two coaches tried, in memory: ${schedules}.\n`));

describe.each(actions.map((one) => [one.name, one] as const))("one coach %s", (_, first) => {
  test.each(actions.map((one) => [one.name, one] as const))("while another %s", (__, second) => {
    const orders = [inOrder(first, second), inOrder(second, first)];
    const ended = (book: MemoryWorkbook, places: readonly number[]) => {
      expect([places, orders.includes(stands(book))]).toEqual([places, true]);
      const standing = JSON.stringify(book.values(book.tabNamed("Next week").id));
      for (const one of typed) expect(standing).toContain(one);
      schedules += places.length;
    };
    const [open, shut]: [number[], number[]] = [[], []];
    const book = found.copy();
    const made = interrupted(book, first, (call, locked) => {
      if (!locked) {
        open.push(call);
        return;
      }
      shut.push(call);
      const { length } = book.calls;
      // Nothing is done, and the coach asks again.
      expect(() => run(book, second)).toThrow("Locked");
      expect(book.calls.slice(length).filter((call) => !looking.has(call))).toEqual([]);
    });
    expect(made).toBe(open.length + shut.length);
    expect(shut.length).toBeGreaterThan(0);
    run(book, second);
    ended(book, shut);
    for (const at of open) {
      const own = found.copy();
      interrupted(own, first, (call) => {
        if (call === at) run(own, second);
      });
      ended(own, [at]);
    }
  });
});
