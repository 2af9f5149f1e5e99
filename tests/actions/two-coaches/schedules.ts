import type { WorkbookData } from "../../../src/local-host/workbook-data";
import { spreadsheetWords } from "../../../src/words/spreadsheet";
import { endOf, heldBy, openServices, type ServicesHost } from "../../faults/held-by-services";
import { type Ended, type Lock, ScriptRun } from "./script-run";
import { type Action, prepareWeek } from "./short-actions";

/** Where the other's run comes in, how many calls it makes then, and what it does about a held lock. */
export type Schedule = {
  /** Before the call of that number of the first's, from 0. */
  readonly at: number;
  /** All there are, up to a lock that it waits for, unless so many. */
  readonly calls?: number;
};
export type Pair = readonly [first: Action, second: Action];

/** The week as both find it. */
export async function weekFound(): Promise<WorkbookData> {
  const host = await openServices();
  prepareWeek(heldBy(host, []));
  const left = host.workbook();
  host.dispose();
  return left;
}

/** An action's run; what its message needs of the workbook is looked up apart from the calls of any run. */
export function started(host: ServicesHost, { request, message }: Action, lock?: Lock): ScriptRun {
  const { watch } = host.calls;
  host.calls.watch = {};
  const asked = message(heldBy(host, []));
  host.calls.watch = watch;
  return new ScriptRun(host, request, asked, lock);
}
/** All that stands and is remembered. */
export const stands = (host: ServicesHost): string => JSON.stringify(endOf(host));

/** What actions leave, one after another. */
export async function inOrder(found: WorkbookData, ...actions: readonly Action[]): Promise<string> {
  const host = await openServices(found);
  for (const one of actions) expect(started(host, one).go()).toEqual({ is: "done" });
  const left = stands(host);
  host.dispose();
  return left;
}

/**
 * Runs two actions in a workbook of their own. The second comes in once while the first runs, and goes
 * on when the first has ended. Who reads without the lock while another writes may be told that the
 * answer came in part, and asks again.
 *
 * @returns what is left, and whether the first had to ask again
 */
export async function together(
  found: WorkbookData,
  [first, second]: Pair,
  { at, calls }: Schedule,
  lock?: Lock,
): Promise<{ readonly end: string; readonly askedAgain: boolean }> {
  const host = await openServices(found);
  const other = started(host, second, lock);
  let came = { is: "stopped" } as Ended;
  const come = (call: number) => {
    if (call === at) came = other.go(calls === undefined ? {} : { calls });
  };
  const went = started(host, first, lock).go({ before: come });
  if (came.is !== "done") came = other.go();
  expect(came).toEqual({ is: "done" });
  const askedAgain = went.is === "refused";
  if (askedAgain) {
    expect(went.said).toBe(spreadsheetWords.answeredInPart);
    expect(started(host, first, lock).go()).toEqual({ is: "done" });
  } else expect(went).toEqual({ is: "done" });
  const end = stands(host);
  host.dispose();
  return { end, askedAgain };
}

/** The second is stopped after each of its first calls, fewer of which come before the lock; then it waits. */
const firstCalls = [1, 2, 3, 4, Number.POSITIVE_INFINITY];

/** What one coach's run lets another's do at each of its calls. */
export type Places = {
  /** The first's calls. */
  readonly made: readonly string[];
  /** Calls before which the lock is free, so that the other's run comes through. */
  readonly open: readonly number[];
  /** Calls before which the other is held up. */
  readonly shut: readonly number[];
  /** Schedules that stop the other before it has the lock; one for all in which it has seen the same. */
  readonly stops: readonly Schedule[];
  /** Schedules tried here, in none of which the other changed anything. */
  readonly tried: number;
  /** What is left once those who were refused have asked again. */
  readonly refusedEnd: string;
};

/**
 * Tries the second's run at every call of the first's, in one workbook: while the first has the lock,
 * the second is refused, is stopped after each of its calls in turn, and waits, each at every call. As
 * it changes nothing, and the first goes on with the same workbook, all that come in with the same
 * seen end in the same way: one of each is left to be run to its end.
 */
export async function places(found: WorkbookData, [first, second]: Pair): Promise<Places> {
  const host = await openServices(found);
  let changes = 0;
  host.onChange(() => changes++);
  const [open, shut]: [number[], number[]] = [[], []];
  const stops = new Map<string, Schedule>();
  let tried = 0;
  const one = started(host, first);
  const unchanged = (at: number, stretch: Parameters<ScriptRun["go"]>[0]) => {
    const before = changes;
    const other = started(host, second);
    const ended = other.go(stretch);
    expect([at, changes - before]).toEqual([at, 0]);
    tried++;
    return { ended, seen: `${ended.is} ${other.seen}` };
  };
  const come = (at: number) => {
    if (!one.holdsLock) {
      open.push(at);
      return;
    }
    shut.push(at);
    const { ended } = unchanged(at, { patient: false });
    expect(ended).toEqual({ is: "refused", said: spreadsheetWords.otherCoachWrites });
    for (const calls of firstCalls) {
      const { ended: stopped, seen } = unchanged(at, { calls });
      expect(["stopped", "waits"]).toContain(stopped.is);
      if (!stops.has(seen)) stops.set(seen, { at, calls });
      if (stopped.is === "waits") break;
    }
  };
  expect(one.go({ before: come })).toEqual({ is: "done" });
  expect(started(host, second).go()).toEqual({ is: "done" });
  const refusedEnd = stands(host);
  host.dispose();
  const made = one.made.map(({ call }) => call);
  return { made, open, shut, stops: [...stops.values()], tried, refusedEnd };
}
