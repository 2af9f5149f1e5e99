import type { WorkbookData } from "../../../src/local-host/workbook-data";
import { inOrder, type Pair, places, together, weekFound } from "./schedules";
import { typed, weekActions } from "./short-actions";

jest.setTimeout(600_000);

/**
 * Two coaches at one week, at every single call to the platform's services. An action that writes a
 * week holds the lock from before it reads until all is written. So another's run can come through only
 * at the few calls before it, all of which are tried, each in a workbook of its own. At all others it
 * is held up: there it is refused, stopped after each of its own calls, and waits, and goes on when the
 * first has ended. Either may be first. These are all interleavings there are with the other's calls in
 * two parts; those in more parts differ only in where calls fall that see and change nothing, which is
 * asserted too.
 */
let found: WorkbookData;
beforeAll(async () => {
  found = await weekFound();
});
const schedules = { tried: 0, toTheEnd: 0 };
afterAll(() => {
  const { tried, toTheEnd } = schedules;
  const said = `${tried} held up, ${toTheEnd} run to an end of their own`;
  process.stdout.write(`Schedules of two coaches at the services' calls: ${said}.\n`);
});

const ofBoth = new Map<string, Promise<string>>();
function left([first, second]: Pair): Promise<string> {
  const key = `${first.name}, ${second.name}`;
  const known = ofBoth.get(key) ?? inOrder(found, first, second);
  ofBoth.set(key, known);
  return known;
}

const pairs = weekActions.flatMap((first) => weekActions.map((second): Pair => [first, second]));

test.each(pairs.map((pair) => [pair[0].name, pair[1].name, pair] as const))(
  "one coach %s while another %s: the week is as one after the other leaves it, whole",
  async (_, __, pair) => {
    const orders = [await left(pair), await left([pair[1], pair[0]])];
    const { open, shut, stops, tried, askedAgain } = await places(found, pair);
    expect(shut.length).toBeGreaterThan(20 * open.length);
    expect(askedAgain).toBe(orders[0]);
    // What is seen before the lock is had is the same wherever it is seen.
    expect(new Set(stops.map(({ calls }) => calls)).size).toBe(stops.length);
    for (const schedule of [...open.map((at) => ({ at })), ...stops]) {
      const end = await together(found, pair, schedule);
      expect([schedule, orders.includes(end)]).toEqual([schedule, true]);
      schedules.toTheEnd++;
    }
    schedules.tried += tried;
  },
);

test.each(pairs.map((pair) => [pair[0].name, pair[1].name, pair] as const))(
  "when one coach %s and then another %s, what they typed stands and no line stands twice",
  async (_, __, pair) => {
    const end = await left(pair);
    for (const one of typed) expect(end.split(JSON.stringify(one))).toHaveLength(2);
    const { cells } = JSON.parse(end) as { cells: Record<string, string[][]> };
    const lines = cells["Next week"]!.map((row) => row.join("|").match(/\d{4}-\d\d-\d\d \D+ \d/));
    const names = lines.flatMap((found) => found ?? []);
    expect(names.length).toBeGreaterThan(0);
    expect(new Set(names).size).toBe(names.length);
  },
);

test("without the lock some schedules would leave what neither order does", async () => {
  const [, changed, takenBack] = weekActions as [unknown, ...typeof weekActions];
  const pair: Pair = [changed!, takenBack!];
  const orders = [await left(pair), await left([pair[1], pair[0]])];
  const { made } = await places(found, pair);
  let wrong = 0;
  for (const [at, call] of made.entries()) {
    if (!/\.set/.test(call)) continue;
    const end = await together(found, pair, { at }, "given to all").catch((error: Error) => error);
    if (typeof end !== "string" || !orders.includes(end)) wrong++;
  }
  expect(wrong).toBeGreaterThan(0);
});
