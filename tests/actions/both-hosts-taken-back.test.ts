import type { SetUpView } from "../../src/actions/messages";
import type { RequestName } from "../../src/actions/requests";
import { monday, priya, today, tomas } from "../faults/small-club";
import type { Message } from "../faults/writing-actions";
import { bothHosts } from "./both-hosts";
import { club } from "./both-hosts-contract";
import type { HeldWorkbook } from "./held-workbook";
import { withNames } from "./what-stands";

// What was said or written and is taken back leaves every view as though it had never been.
type Step = readonly [RequestName, (book: HeldWorkbook) => Message];
const on =
  (tab: string, more: object = {}) =>
  (book: HeldWorkbook) => ({ today, tabId: book.tabId(tab), ...more });
const load = { heading: "Load (kg)", column: 6 };
/** The answer about the load's column that is shown under a matter. */
const ofColumn = (about: string) => (book: HeldWorkbook) => {
  const { answered } = book.ask("setUpView", { today }) as unknown as SetUpView;
  const shown = answered.find((one) => one.about === about && "column" in one);
  if (!shown || !("column" in shown)) throw new Error(`No ${about} is shown as answered.`);
  return { today, tabId: shown.tabId, column: shown.column, tag: shown.tag, about };
};
const bar = { about: "bar", written: "short bar" };
const spelling = { today, written: "Priya Telander" };
const changes = [{ athlete: tomas, sets: 3 }];

/** What stands beforehand, what is said, what takes it back. */
const pairs: Readonly<Record<string, readonly [before: readonly Step[], say: Step, back: Step]>> = {
  "which table a tab is": [
    [],
    ["answerTable", on("Camp", { table: "Races" })],
    ["forgetTable", on("Camp")],
  ],
  "what a column means": [
    [],
    ["answerColumn", on("Sets", { ...load, field: null })],
    ["forgetColumn", ofColumn("meaning")],
  ],
  "a unit beside a meaning": [
    [["answerColumn", on("Sets", { ...load, field: "load" })]],
    ["answerColumn", on("Sets", { ...load, unit: "lb" })],
    ["forgetColumn", ofColumn("unit")],
  ],
  "a meaning beside a unit": [
    [["answerColumn", on("Sets", { ...load, unit: "lb" })]],
    ["answerColumn", on("Sets", { ...load, field: null })],
    ["forgetColumn", ofColumn("meaning")],
  ],
  "a bar's mass beside another's": [
    [["answerTab", on("Sets", { ...bar, written: "long bar", answer: "20" })]],
    ["answerTab", on("Sets", { ...bar, answer: "15" })],
    ["forgetTab", on("Sets", bar)],
  ],
  "whose spelling it is": [
    [],
    ["answerName", () => ({ ...spelling, athlete: priya, same: true })],
    ["forgetName", () => spelling],
  ],
  "whose spelling it is not": [
    [],
    ["answerName", () => ({ ...spelling, athlete: priya, same: false })],
    ["forgetName", () => ({ ...spelling, athlete: priya })],
  ],
  "a week with a change": [
    [
      ["writeWeek", () => ({ today, monday, changes: [], athletes: null })],
      ["takeBackWeek", () => ({ today, monday })],
    ],
    ["writeWeek", () => ({ today, monday, changes, athletes: null })],
    ["takeBackWeek", () => ({ today, monday })],
  ],
};

describe.each(Object.keys(pairs))("%s", (name) => {
  const [before, say, back] = pairs[name]!;
  const seen: unknown[] = [];

  test.each(bothHosts)("on %s shows until it is taken back", async (_, open) => {
    const book = await open(club);
    const ask = ([request, message]: Step) => book.ask(request, message(book));
    const week = { today, monday, changes: [] };
    const views = () =>
      [
        book.ask("setUpView", { today }),
        book.ask("rowCheck", { today }),
        book.ask("weekView", week),
      ].map((view) => withNames(view, book.tabs()));
    before.forEach(ask);
    const first = views();
    ask(say);
    const said = views();
    expect(said).not.toEqual(first);
    ask(back);
    expect(views()).toEqual(first);
    seen.push([first, said]);
    book.close();
  });

  test("both hosts show the same", () => {
    expect(seen).toHaveLength(2);
    expect(seen[1]).toEqual(seen[0]);
  });
});
