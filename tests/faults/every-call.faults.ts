import type { RequestName } from "../../src/actions/requests";
import { requests, serveRequest } from "../../src/actions/requests";
import { type MemoryWorkbook, memoryWorkbook } from "../actions/memory-workbook";
import { applies, type FaultAt, faults, faultyWorkbook } from "./faulty-workbook";
import { heldInMemory } from "./held-in-memory";
import { rememberedIn } from "./remembered";
import { smallClub } from "./small-club";
import { type Cells, standsWhole } from "./whole-cells";
import { looking, type Message, type Scenario, scenarios } from "./writing-actions";

const tried: string[] = [];
afterAll(() => process.stdout.write(`Fault points tried, in memory: ${tried.join(", ")}.\n`));

test("every request either only looks or is run with faults here", () => {
  const listed = new Set([...looking, ...scenarios.map(({ request }) => request)]);
  expect([...listed].sort()).toEqual(Object.keys(requests).sort());
});

function start({ prepare, message }: Scenario): { book: MemoryWorkbook; message: Message } {
  const book = memoryWorkbook(smallClub());
  prepare?.(heldInMemory(book));
  return { book, message: message(heldInMemory(book)) };
}
const cells = (book: MemoryWorkbook): Cells =>
  Object.fromEntries(
    book.tabs().map(({ id, name }) => {
      const formulas = book.formulas(id);
      const line = (row: readonly unknown[], i: number) =>
        row.map((value, j) => formulas[i]?.[j] || String(value ?? ""));
      return [name, book.values(id).map(line)];
    }),
  );
/** All that can be seen or is remembered afterwards. */
function end(book: MemoryWorkbook): unknown {
  const { tabs, ...looks } = book.all() as { tabs: unknown } & Record<string, unknown[]>;
  const remembered = rememberedIn(book.recallAll());
  const given = Object.entries(looks).map(([name, list]) => [
    name,
    (list as unknown[]).map((one) => JSON.stringify(one)).sort(),
  ]);
  return { tabs, remembered, given };
}

/** Runs a request with one fault: nothing is asked of the workbook once a call has thrown. */
function run(book: MemoryWorkbook, name: RequestName, message: Message, at: FaultAt): void {
  const watched = faultyWorkbook(book, at);
  try {
    serveRequest(watched.book, name, message);
  } catch (error) {
    // A sentence or the service's own words, never a slip of ours.
    expect(error).not.toBeInstanceOf(TypeError);
    const isLock = watched.made[at.call - 1] === "alone";
    if (!isLock) expect(watched.made).toHaveLength(at.call);
  }
}

describe.each(scenarios.map((one) => [`${one.request}: ${one.name}`, one] as const))(
  "%s",
  (_, scenario) => {
    const { request } = scenario;
    let before: Cells = {};
    let after: Cells = {};
    let ended: unknown;
    let made: readonly string[] = [];
    beforeAll(() => {
      const { book, message } = start(scenario);
      before = cells(book);
      const counted = faultyWorkbook(book, null);
      serveRequest(counted.book, request, message);
      [after, ended, made] = [cells(book), end(book), counted.made];
    });

    test.each(faults)(
      "one call %s: no coach's cell differs, asking again completes it",
      (fault) => {
        let points = 0;
        made.forEach((call, at) => {
          if (!applies(fault, call)) return;
          const { book, message } = start(scenario);
          run(book, request, message, { call: at + 1, fault });
          points++;
          const place = `${call}, call ${at + 1}`;
          expect([place, standsWhole(cells(book), before, after)]).toEqual([place, []]);
          serveRequest(book, request, message);
          expect([place, end(book)]).toEqual([place, ended]);
        });
        expect(points).toBeGreaterThan(0);
        tried.push(`${request} ${points} (${fault})`);
      },
    );

    test("while another coach holds the lock nothing is written, and asking again completes it", () => {
      const { book, message } = start(scenario);
      const busy = {
        ...book,
        alone: () => {
          throw new Error("Another coach is writing just now.");
        },
      };
      expect(() => serveRequest(busy, request, message)).toThrow("Another coach");
      expect(cells(book)).toEqual(before);
      serveRequest(book, request, message);
      expect(end(book)).toEqual(ended);
    });
  },
);
