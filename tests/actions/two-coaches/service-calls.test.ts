import { explorer, pairsOf } from "./explore";
import { type Pair, places, together, weekFound } from "./schedules";
import { typed, weekActions } from "./short-actions";

/**
 * Two coaches at one week, at every single call to the platform's services. An action that writes a
 * week holds the lock from before it reads until all is written. So another's run can come through only
 * at the few calls before it, all of which are tried, each in a workbook of its own. At all others it
 * is held up: there it is refused, stopped after each of its own calls, and waits, and goes on when the
 * first has ended. Either may be first. These are all interleavings there are with the other's calls in
 * two parts; those in more parts differ only in where calls fall that see and change nothing, which is
 * asserted too. `npm run test:coaches` does more.
 */
let found: Awaited<ReturnType<typeof weekFound>>;
let both: ReturnType<typeof explorer>;
beforeAll(async () => {
  found = await weekFound();
  both = explorer(found);
});
const schedules = { heldUp: 0, toTheEnd: 0 };
afterAll(() => {
  const said = `${schedules.heldUp} held up, ${schedules.toTheEnd} run to an end of their own`;
  process.stdout.write(`Schedules of two coaches at the services' calls: ${said}.\n`);
});

const pairs = pairsOf(weekActions, weekActions).map((pair) => ({
  first: pair[0].name,
  second: pair[1].name,
  pair,
}));

test.each(pairs)(
  "one coach $first while another $second: the week is as one after the other leaves it",
  async ({ pair }) => {
    const { heldUp, toTheEnd, inPart } = await both.tried(pair);
    // Who writes a week reads under the lock only.
    expect(inPart).toBe(0);
    schedules.heldUp += heldUp;
    schedules.toTheEnd += toTheEnd;
  },
);

test.each(pairs)(
  "when one coach $first and then another $second, what was typed stands and no line stands twice",
  async ({ pair }) => {
    const end = await both.left(pair);
    for (const one of typed) expect(end.split(JSON.stringify(one))).toHaveLength(2);
    const { cells } = JSON.parse(end) as { cells: Record<string, string[][]> };
    const named = (cell: string) => /^\d{4}-\d\d-\d\d \D+ \d$/.test(cell);
    const names = cells["Next week"]!.flatMap((row) => row.filter(named));
    expect(names.length).toBeGreaterThan(0);
    expect(new Set(names).size).toBe(names.length);
  },
);

test("a week taken back while a change of it is written would be in pieces without the lock", async () => {
  const [, changed, takenBack] = weekActions;
  const pair: Pair = [changed!, takenBack!];
  const orders = await both.orders(pair);
  const { made } = await places(found, pair);
  let wrong = 0;
  for (const [at, call] of made.entries()) {
    if (!/\.set/.test(call)) continue;
    const left = await together(found, pair, { at }, "given to all").catch(() => null);
    if (left === null || !orders.includes(left.end)) wrong++;
  }
  expect(wrong).toBeGreaterThan(3);
});
