import { requests, serveRequest } from "../../src/actions/requests";
import { type Ask, type State, startState } from "../../src/sidebar/state";
import { update } from "../../src/sidebar/update";
import { memoryWorkbook } from "../actions/memory-workbook";
import { sampleCells, sampleClub } from "../actions/sample-club";
import { withSlip } from "../actions/with-slip";

const today = "2026-06-28";
/** The sidebar over a workbook: every ask is served at once, as the bridge would a moment later. */
function sidebarOver(book: ReturnType<typeof memoryWorkbook>) {
  let state: State = { ...startState(today), view: "setUp" };
  const dispatch = (event: Parameters<typeof update>[1]) => {
    const step = update(state, event);
    state = step.state;
    for (const ask of step.asks) {
      dispatch({ type: "answered", ask, answer: serveRequest(book, ask.name, ask.message) });
    }
  };
  dispatch({ type: "started" });
  return {
    dispatch,
    state: () => state,
    ask: (name: string, message: Ask["message"]) =>
      dispatch({ type: "asked", ask: { name, message: { today, ...message } }, busy: "Working" }),
  };
}

const rows = [
  ["date", "athlete", "exercise", "set", "reps", "load", "v"],
  ["2026-05-12", "Tomas Reyersen", "back squat", 1, 5, 85, 0.54],
  ["2026-05-19", "Tomas Reyersen", "back squat", 1, 5, 85, 0.55],
];
const book = () =>
  memoryWorkbook({ Log: rows, Athletes: [["athlete"], ["Tomas Reyerson"], ["Wren Castellow"]] });
/** All that Set up shows of what was said. */
const said = ({ setUp }: State) => ({
  tables: setUp!.tabs.filter(({ found }) => found === "said").map(({ tab, table }) => [tab, table]),
  columns: setUp!.answered.map(({ about, said: words }) => [about, words]),
  names: setUp!.names,
});
const nothing = { tables: [], columns: [], names: [] };

const asks: readonly [string, string, Ask["message"]][] = [
  ["a table", "answerTable", { table: "Jumps" }],
  ["a tab that is none of ours", "answerTable", { table: null }],
  ["a column", "answerColumn", { heading: "v", column: 7, field: "speed" }],
  ["a column left alone", "answerColumn", { heading: "v", column: 7, field: null }],
  ["a unit", "answerColumn", { heading: "load", column: 6, unit: "lb" }],
  ["the order of dates", "answerColumn", { heading: "date", column: 1, dateOrder: "month first" }],
  ["a whole tab", "answerTab", { about: "set speed", written: "", answer: "fastest repetition" }],
];

test.each(asks)(
  "an answer about %s is said to be remembered, and one button takes it back",
  (_, name, message) => {
    const sidebar = sidebarOver(book());
    const tabId = sidebar.state().setUp!.tabs.find(({ tab }) => tab === "Log")!.tabId;
    expect(said(sidebar.state())).toEqual(nothing);
    sidebar.ask(name, { tabId, ...message });
    expect(said(sidebar.state())).not.toEqual(nothing);
    expect([sidebar.state().said, sidebar.state().takeBack?.said]).toEqual([
      "Remembered.",
      "Remembered.",
    ]);
    sidebar.dispatch({ type: "took answer back" });
    expect(said(sidebar.state())).toEqual(nothing);
    expect([sidebar.state().said, sidebar.state().takeBack]).toEqual(["Taken back.", null]);
  },
);

test.each(asks)(
  "an answer about %s put in place of another gives way to that other again",
  (_, name, message) => {
    const sidebar = sidebarOver(book());
    const tabId = sidebar.state().setUp!.tabs.find(({ tab }) => tab === "Log")!.tabId;
    const other = {
      table: "Sets",
      field: "note",
      unit: "kg",
      dateOrder: "day first",
      answer: "mean of the repetitions",
    } as Record<string, string>;
    const first = Object.fromEntries(
      Object.entries(message).map(([key, value]) => [key, other[key] ?? value]),
    );
    sidebar.ask(name, { tabId, ...first });
    const earlier = said(sidebar.state());
    sidebar.ask(name, { tabId, ...message });
    expect(said(sidebar.state())).not.toEqual(earlier);
    sidebar.dispatch({ type: "took answer back" });
    expect(said(sidebar.state())).toEqual(earlier);
  },
);

test.each([true, false])(
  "a name answered with %s is taken back where it was answered, and asked again",
  (same) => {
    const sidebar = sidebarOver(book());
    sidebar.dispatch({ type: "chose view", view: "rows" });
    const [asked] = sidebar.state().rows!.names;
    expect(asked!.near).toContain("Tomas Reyerson");
    sidebar.ask("answerName", { written: asked!.name, athlete: "Tomas Reyerson", same });
    expect(sidebar.state().rows!.names[0]?.near ?? []).not.toContain("Tomas Reyerson");
    sidebar.dispatch({ type: "took answer back" });
    expect(sidebar.state().view).toBe("rows");
    expect(sidebar.state().rows!.names).toEqual([asked]);
    expect(sidebar.state().said).toBe("Taken back.");
  },
);

test("a name said to be somebody else stands under what you said, and what is forgotten there comes back too", () => {
  const sidebar = sidebarOver(book());
  sidebar.ask("answerName", { written: "Tomas Reyersen", athlete: "Tomas Reyerson", same: false });
  const answer = { spelling: "Tomas Reyersen", athlete: "Tomas Reyerson", same: false };
  expect(sidebar.state().setUp!.names).toEqual([answer]);
  sidebar.ask("forgetName", { written: "Tomas Reyersen", athlete: "Tomas Reyerson" });
  expect([sidebar.state().setUp!.names, sidebar.state().said]).toEqual([[], "Forgotten."]);
  sidebar.dispatch({ type: "took answer back" });
  expect(sidebar.state().setUp!.names).toEqual([answer]);
});

test("a set said to be right is asked about again once that is taken back", () => {
  const sets = withSlip(sampleCells("Sets"));
  const sidebar = sidebarOver(sampleClub({ Sets: sets }));
  sidebar.dispatch({ type: "chose view", view: "rows" });
  const asked = () =>
    sidebar.state().rows!.problems.filter(({ right }) => right?.includes("Tomas Reyerson"));
  const [one] = asked();
  expect(one).toMatchObject({ tab: "Sets", cell: "H11", kind: "set-far-off" });
  sidebar.ask("answerSet", { set: one!.right });
  expect([asked(), sidebar.state().said]).toEqual([[], "Remembered."]);
  sidebar.dispatch({ type: "took answer back" });
  expect([asked(), sidebar.state().said]).toEqual([[one], "Taken back."]);
  sidebar.ask("answerSet", { set: one!.right });
  sidebar.dispatch({ type: "chose view", view: "setUp" });
  expect(sidebar.state().setUp!.rightSets).toEqual([one!.right]);
  sidebar.ask("forgetSet", { set: one!.right });
  expect([sidebar.state().setUp!.rightSets, sidebar.state().said]).toEqual([[], "Forgotten."]);
});

test("whatever remembers an answer is tried here", () => {
  const remembers = Object.keys(requests).filter((name) => /^answer/.test(name));
  expect(remembers.sort()).toEqual([
    "answerColumn",
    "answerName",
    "answerSet",
    "answerTab",
    "answerTable",
  ]);
});

test("the offer goes with its sentence: another view does not carry it", () => {
  const sidebar = sidebarOver(book());
  const tabId = sidebar.state().setUp!.tabs[0]!.tabId;
  sidebar.ask("answerTable", { tabId, table: null });
  sidebar.dispatch({ type: "chose view", view: "squad" });
  expect(sidebar.state().said).toBeNull();
});
