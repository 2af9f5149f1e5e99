import type { WorkbookData } from "../../../src/local-host/workbook-data";
import { inOrder, type Pair, places, type Schedule, together } from "./schedules";

/** What was tried. */
export type Tried = {
  /** Schedules in which the other was held up, and changed nothing. */
  readonly heldUp: number;
  /** Schedules run to an end of their own. */
  readonly toTheEnd: number;
  /** Of these, those whose first was answered in part and asked again. */
  readonly inPart: number;
};

/** Tries pairs of actions in one workbook as both find it. */
export function explorer(found: WorkbookData) {
  const known = new Map<string, Promise<string>>();
  /** What two actions leave, one after the other. */
  const left = ([first, second]: Pair): Promise<string> => {
    const key = `${first.name}, ${second.name}`;
    const end = known.get(key) ?? inOrder(found, first, second);
    known.set(key, end);
    return end;
  };
  const orders = async (pair: Pair) => [await left(pair), await left([pair[1], pair[0]])];

  /**
   * Tries the second at every call of the first, and asserts that what is left is always what one of
   * the two orders leaves.
   *
   * @param inEach also lets the second wait at every call it can wait at in a workbook of its own,
   * though it has seen the same at each
   */
  async function tried(pair: Pair, inEach = false): Promise<Tried> {
    const ends = await orders(pair);
    const { made, open, shut, stops, tried: heldUp, refusedEnd } = await places(found, pair);
    expect(open.length + shut.length).toBe(made.length);
    expect(refusedEnd).toBe(ends[0]);
    // What is seen before the lock is had is the same wherever it is seen, and is three calls.
    expect(stops.map(({ calls }) => calls)).toEqual([1, 2, 3]);
    const through: Schedule[] = open.map((at) => ({ at }));
    const waiting: Schedule[] = inEach ? shut.map((at) => ({ at })) : [];
    let inPart = 0;
    for (const schedule of [...through, ...stops, ...waiting]) {
      const { end, askedAgain } = await together(found, pair, schedule);
      if (askedAgain) inPart++;
      expect([schedule, ends.includes(end)]).toEqual([schedule, true]);
    }
    return { heldUp, toTheEnd: through.length + stops.length + waiting.length, inPart };
  }
  return { left, orders, tried };
}

/** Every action first and second. */
export const pairsOf = <One>(firsts: readonly One[], seconds: readonly One[]) =>
  firsts.flatMap((first) => seconds.map((second) => [first, second] as const));
