import type { WeekView } from "../../src/actions/messages";
import { monday, priya, today, tomas } from "../faults/small-club";
import type { Held, Scenario } from "../faults/writing-actions";
import { holdsOnBothHosts } from "./both-hosts-contract";

// What else a week can be written with, held to the contract of every request that writes.
const week = { today, monday, changes: [], athletes: null };
const viewed = (held: Held) =>
  (held.ask("weekView", { today, monday, changes: [] }) as WeekView).lines.find(
    ({ athlete }) => athlete === tomas,
  )!;
const changed = (change: (held: Held) => object) => (held: Held) => ({
  ...week,
  changes: [{ athlete: tomas, ...change(held) }],
});

const weeks: readonly Scenario[] = [
  {
    name: "one athlete's alone",
    request: "writeWeek",
    message: () => ({ ...week, athletes: [priya] }),
  },
  {
    name: "a second week under the first",
    request: "writeWeek",
    prepare: (held) => held.ask("writeWeek", week),
    message: () => ({ ...week, monday: "2026-06-29" }),
  },
  {
    name: "an athlete left out who stood in it",
    request: "writeWeek",
    prepare: (held) => held.ask("writeWeek", week),
    message: changed(() => ({ leaveOut: true })),
  },
  {
    name: "another block, day, stack, jumps and no rack",
    request: "writeWeek",
    message: changed((held) => ({
      block: viewed(held).blocks[1]!,
      day: viewed(held).days[1]!.day,
      stack: "5x15+5",
      contacts: 18,
      noRack: true,
    })),
  },
  {
    name: "a week with changes that nobody touched",
    request: "takeBackWeek",
    prepare: (held) => held.ask("writeWeek", changed(() => ({ sets: 3 }))(held)),
    message: () => ({ today, monday }),
  },
];

for (const scenario of weeks) holdsOnBothHosts(scenario);
