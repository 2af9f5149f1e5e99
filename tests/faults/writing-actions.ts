import type { RowCheckView, SetUpView } from "../../src/actions/messages";
import type { RequestName } from "../../src/actions/requests";
import { monday, priya, today, tomas } from "./small-club";

/** What a scenario needs of a workbook, whichever host holds it. */
export type Held = {
  readonly ask: (name: RequestName, message: Message) => unknown;
  readonly type: (tab: string, row: number, column: number, value: string | number) => void;
  readonly tabId: (name: string) => number;
  /** Spoils what is kept under a key. */
  readonly damage: (key: string) => void;
};
export type Message = Readonly<Record<string, unknown>>;

/** One writing request from a state in which it has something to do. */
export type Scenario = {
  readonly name: string;
  readonly request: RequestName;
  readonly prepare?: (held: Held) => void;
  readonly message: (held: Held) => Message;
};

const [typed, load, beside, loadHeld] = [3, 7, 17, 60];
const week = { today, monday, changes: [], athletes: null };
/** A written week in which the coach has typed a speed, a load of her own and a note beside it. */
const weekStands = (held: Held) => {
  held.ask("writeWeek", week);
  held.type("Next week", 5, typed, "0.79 0.78");
  held.type("Next week", 6, load, loadHeld);
  held.type("Next week", 7, beside, "straps");
};
/** As many lines, of which the coach has touched one. */
const weekHalfTouched = (held: Held) => {
  held.ask("writeWeek", week);
  held.type("Next week", 5, typed, "0.79 0.78");
  held.type("Next week", 7, beside, "straps");
};
const camp = (held: Held) => ({ today, tabId: held.tabId("Camp") });
const column = { heading: "Where", column: 2 };
/** Enough answers that they are remembered in several parts. */
const manyAnswers = (held: Held) => {
  for (let turn = 1; turn <= 3; turn++) {
    const written = `Spelling ${turn} ${"e".repeat(480)}`;
    held.ask("answerName", { today, written, athlete: written, same: true });
  }
};
const spelling = { today, written: "Priya Telander", athlete: priya };

const rightSet = { today, set: `2026-06-02 ${tomas}, back squat, 107 kg at 0.62 m/s` };

export const scenarios: readonly Scenario[] = [
  { name: "a first week", request: "writeWeek", message: () => week },
  {
    name: "a changed week beside a coach's cells",
    request: "writeWeek",
    prepare: weekStands,
    message: () => ({ ...week, changes: [{ athlete: tomas, loadKg: 62.5 }] }),
  },
  {
    name: "a week with something of the coach's in it",
    request: "takeBackWeek",
    prepare: weekHalfTouched,
    message: () => ({ today, monday }),
  },
  { name: "a first season", request: "writeSeason", message: () => ({ today }) },
  {
    name: "a longer season beside a coach's cell",
    request: "writeSeason",
    prepare: (held) => {
      held.ask("writeSeason", { today });
      held.type("Season", 4, 3, "camp");
      held.type("Races", 3, 1, "2026-07-11");
    },
    message: () => ({ today }),
  },
  { name: "missing tables", request: "makeCleanTabs", message: () => ({ today }) },
  {
    name: "one proposed value",
    request: "mendCell",
    message: (held) => {
      const { problems } = held.ask("rowCheck", { today }) as RowCheckView;
      const { tabId, cell, found, mend } = problems.find((one) => one.mend !== null)!;
      return { today, tabId, cell, found, mend };
    },
  },
  {
    name: "an answer about a day",
    request: "writeDiaryAnswer",
    message: () => ({ today, athlete: tomas, day: "2026-06-17", answer: "=new shoes" }),
  },
  { name: "the Squad tab", request: "highlightSquad", message: () => ({}) },
  {
    name: "which table a tab is",
    request: "answerTable",
    prepare: manyAnswers,
    message: (held) => ({ ...camp(held), table: "Races" }),
  },
  {
    name: "which table a tab was",
    request: "forgetTable",
    prepare: (held) => held.ask("answerTable", { ...camp(held), table: "Races" }),
    message: camp,
  },
  {
    name: "what a column means",
    request: "answerColumn",
    prepare: (held) => held.ask("answerTable", { ...camp(held), table: "Races" }),
    message: (held) => ({ ...camp(held), ...column, field: "name" }),
  },
  {
    name: "what a column was",
    request: "forgetColumn",
    prepare: (held) => {
      held.ask("answerTable", { ...camp(held), table: "Races" });
      held.ask("answerColumn", { ...camp(held), ...column, field: "name" });
    },
    message: (held) => {
      const { answered } = held.ask("setUpView", { today }) as SetUpView;
      const one = answered.find((answer) => "column" in answer)!;
      if (!("column" in one)) throw new Error("No column is answered.");
      return { ...camp(held), column: one.column, tag: one.tag, about: "meaning" };
    },
  },
  {
    name: "what holds for a whole tab",
    request: "answerTab",
    message: (held) => ({ ...camp(held), about: "athlete", written: "", answer: tomas }),
  },
  {
    name: "what held for a whole tab",
    request: "forgetTab",
    prepare: (held) =>
      held.ask("answerTab", { ...camp(held), about: "athlete", written: "", answer: tomas }),
    message: (held) => ({ ...camp(held), about: "athlete", written: "" }),
  },
  {
    name: "whose spelling it is",
    request: "answerName",
    prepare: manyAnswers,
    message: () => ({ ...spelling, same: true }),
  },
  {
    name: "whose spelling it was",
    request: "forgetName",
    prepare: (held) => held.ask("answerName", { ...spelling, same: true }),
    message: () => ({ today, written: spelling.written }),
  },
  {
    name: "that a set is right as it stands",
    request: "answerSet",
    message: () => rightSet,
  },
  {
    name: "that a set was right as it stood",
    request: "forgetSet",
    prepare: (held) => held.ask("answerSet", rightSet),
    message: () => rightSet,
  },
  {
    name: "answers that can no longer be read",
    request: "forgetDamaged",
    prepare: (held) => {
      manyAnswers(held);
      held.damage("answers");
    },
    message: () => ({ what: "answers" }),
  },
];

/** Requests that only look; with the scenarios' they are all there are. */
export const looking: readonly RequestName[] = [
  "squadView",
  "athleteView",
  "diaryView",
  "rowCheck",
  "goToCell",
  "setUpView",
  "weekView",
  "printPages",
];
