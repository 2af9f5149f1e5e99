import type { RequestName } from "../../../src/actions/requests";
import { monday, priya, today, tomas } from "../../faults/small-club";
import type { Held, Message } from "../../faults/writing-actions";

/** What one coach does while another does something: how it is called, what is asked. */
export type Action = {
  readonly name: string;
  readonly request: RequestName;
  readonly message: (held: Held) => Message;
};

const week = { today, monday, changes: [], athletes: null };
const action = (name: string, request: RequestName, message: Message): Action => ({
  name,
  request,
  message: () => message,
});

/** What two coaches may do to one week at once. */
export const weekActions: readonly Action[] = [
  action("writes the week", "writeWeek", week),
  action("writes it with a change", "writeWeek", {
    ...week,
    changes: [
      { athlete: tomas, loadKg: 62.5 },
      { athlete: priya, sets: 2 },
    ],
  }),
  action("takes the week back", "takeBackWeek", { today, monday }),
];

/** Answers that are remembered. */
export const answers: readonly Action[] = [
  action("answers a spelling", "answerName", {
    today,
    written: "Priya Telander",
    athlete: priya,
    same: true,
  }),
  action("takes a spelling back", "forgetName", { today, written: "P. T." }),
  {
    name: "answers about a tab",
    request: "answerTable",
    message: (held) => ({ today, tabId: held.tabId("Camp"), table: "Races" }),
  },
];

/** What only looks, and so does not wait for the lock. */
export const looks: readonly Action[] = [
  action("looks at the week", "weekView", { today, monday, changes: [] }),
  action("looks at the squad", "squadView", { today }),
];

/** What takes the longest: whole tabs are written. */
export const longActions: readonly Action[] = [
  action("writes the season", "writeSeason", { today }),
  action("makes clean tabs", "makeCleanTabs", { today }),
];

/** What the coach typed into a line of the week, and beside it. */
export const typed = ["0.79 0.78", "straps"] as const;

/** A written week with a line that the coach has typed in and one that she has not, and a spelling answered. */
export function prepareWeek(held: Held): void {
  held.ask("answerName", { today, written: "P. T.", athlete: priya, same: true });
  held.ask("writeWeek", week);
  held.type("Next week", 5, 3, typed[0]);
  held.type("Next week", 5, 17, typed[1]);
}
