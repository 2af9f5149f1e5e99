import { keptMatters, type SetUpView, type WholeTabMatter } from "../../src/actions/messages";
import { monday, priya, today, tomas } from "../faults/small-club";
import type { Held, Message, Scenario } from "../faults/writing-actions";
import { holdsOnBothHosts } from "./both-hosts-contract";

// The other things that can be answered and forgotten, held to the contract of every request that writes.
const on = (tab: string) => (held: Held) => ({ today, tabId: held.tabId(tab) });
const sets = on("Sets");
const load = { heading: "Load (kg)", column: 6 };

/** One answer for each matter of a whole tab; the other scenarios have the athlete's. */
const said: Readonly<Record<Exclude<WholeTabMatter, "athlete">, Message>> = {
  "scheme order": { written: "", answer: "repetitions × sets" },
  exercise: { written: "", answer: "front squat" },
  bar: { written: "short bar", answer: "15" },
  "set speed": { written: "", answer: "fastest repetition" },
  speeds: { written: "", answer: "one for each set" },
  runs: { written: "", answer: "kilometres" },
};

const answers: readonly Scenario[] = [
  {
    name: "that a tab is none of ours",
    request: "answerTable",
    message: (held) => ({ ...on("Diary")(held), table: null }),
  },
  {
    name: "a column's unit",
    request: "answerColumn",
    message: (held) => ({ ...sets(held), ...load, unit: "lb" }),
  },
  {
    name: "how its dates go",
    request: "answerColumn",
    message: (held) => ({ ...sets(held), heading: "Date", column: 1, dateOrder: "month first" }),
  },
  {
    name: "a column without a heading left alone",
    request: "answerColumn",
    message: (held) => ({ ...sets(held), heading: "", column: 8, field: null }),
  },
  {
    name: "the unit alone of a column with a meaning",
    request: "forgetColumn",
    prepare: (held) =>
      held.ask("answerColumn", { ...sets(held), ...load, field: "load", unit: "lb" }),
    message: (held) => {
      const { answered } = held.ask("setUpView", { today }) as SetUpView;
      const unit = answered.find(({ about }) => about === "unit") as { tag?: string } | undefined;
      return { ...sets(held), column: load.column, tag: unit!.tag, about: "unit" };
    },
  },
  ...Object.entries(said).map(([about, answer]) => ({
    name: `a tab's ${about}`,
    request: "answerTab" as const,
    message: (held: Held) => ({ ...sets(held), about, ...answer }),
  })),
  {
    name: "that a spelling is somebody else",
    request: "answerName",
    message: () => ({ today, written: "Priya Telander", athlete: priya, same: false }),
  },
  {
    name: "that a spelling was somebody else",
    request: "forgetName",
    prepare: (held) =>
      held.ask("answerName", { today, written: "Priya Telander", athlete: priya, same: false }),
    message: () => ({ today, written: "Priya Telander", athlete: priya }),
  },
  ...keptMatters
    .filter((one) => one !== "answers")
    .map((what) => ({
      name: `what was kept of ${what}`,
      request: "forgetDamaged" as const,
      prepare: (held: Held) => {
        const changes = [{ athlete: tomas, sets: 3 }];
        if (what === "season") held.ask("writeSeason", { today });
        else held.ask("writeWeek", { today, monday, changes, athletes: null });
        held.damage(what);
      },
      message: () => ({ what }),
    })),
];

for (const scenario of answers) holdsOnBothHosts(scenario);
