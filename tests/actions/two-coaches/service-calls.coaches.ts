import { openServices } from "../../faults/held-by-services";
import { explorer, pairsOf } from "./explore";
import { stands, started, together, weekFound } from "./schedules";
import { type Action, answers, looks, weekActions } from "./short-actions";

// What the tests of every run leave out: an answer is followed by a look at the rows without the lock,
// so that another's run comes through at each of its calls; every place to wait at is run to its end in
// a workbook of its own; and coaches who only look do so at every call of one who writes.
jest.setTimeout(7_200_000);

let found: Awaited<ReturnType<typeof weekFound>>;
let both: ReturnType<typeof explorer>;
beforeAll(async () => {
  found = await weekFound();
  both = explorer(found);
});
/** Said as each pair ends: whoever breaks off a run knows what it has shown. */
const say = (schedules: string) =>
  process.stdout.write(`Schedules of two coaches at the services' calls: ${schedules}.\n`);

const named = (pairs: readonly (readonly [Action, Action])[]) =>
  pairs.map((pair) => ({ first: pair[0].name, second: pair[1].name, pair }));
const withAnswers = named([
  ...pairsOf(answers, [...answers, ...weekActions]),
  ...pairsOf(weekActions, answers),
]);

test.each(withAnswers)(
  "one coach $first while another $second: what is left is as one after the other leaves it",
  async ({ first, second, pair }) => {
    const { heldUp, toTheEnd, inPart } = await both.tried(pair);
    say(`${first}, ${second} ${heldUp} held up and ${toTheEnd} to the end, ${inPart} asked again`);
  },
);

test.each(named(pairsOf([...weekActions, ...answers], looks)))(
  "one coach $first while another $second at each call: a view or a sentence, and nothing is changed",
  async ({ first, second, pair }) => {
    const end = await both.left(pair);
    const host = await openServices(found);
    let [changes, sentences] = [0, 0];
    host.onChange(() => changes++);
    const one = started(host, pair[0]);
    const look = (at: number) => {
      const before = changes;
      const ended = started(host, pair[1]).go();
      expect([at, ended.is, changes]).toEqual([at, expect.stringMatching(/done|refused/), before]);
      if (ended.is === "refused") sentences++;
    };
    expect(one.go({ before: look })).toEqual({ is: "done" });
    expect(stands(host)).toBe(end);
    say(`${first}, ${second} ${one.made.length}, ${sentences} with a sentence`);
    host.dispose();
  },
);

test.each(named(pairsOf(looks, weekActions)))(
  "one coach $first while another $second at any of its calls: a view or a sentence, and the week is whole",
  async ({ first, second, pair }) => {
    const end = await both.left(pair);
    const host = await openServices(found);
    const calls = started(host, pair[0]);
    expect(calls.go()).toEqual({ is: "done" });
    host.dispose();
    let inPart = 0;
    for (const at of calls.made.keys()) {
      const left = await together(found, pair, { at });
      expect([at, left.end]).toEqual([at, end]);
      if (left.askedAgain) inPart++;
    }
    say(`${first}, ${second} ${calls.made.length}, ${inPart} asked again`);
  },
);

test.each(named(pairsOf(weekActions, weekActions)))(
  "one coach $first and another, who $second, waits from each call on in a workbook of its own",
  async ({ first, second, pair }) => {
    const { toTheEnd } = await both.tried(pair, true);
    say(`${first}, ${second} ${toTheEnd} to the end`);
  },
);
