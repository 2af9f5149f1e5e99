import { type State, startState } from "../../src/sidebar/state";
import { type Event, update, withChange } from "../../src/sidebar/update";
import { squad, week } from "./views";

const start = startState("2026-06-28");
const after = (state: State, ...events: readonly Event[]) =>
  events.reduce((now, event) => update(now, event).state, state);
const squadAsk = { name: "squadView", message: { today: "2026-06-28" } };
const weekAsk = {
  name: "weekView",
  message: { today: "2026-06-28", monday: null, changes: [] },
};

test("on opening, next week is asked for and the waiting is said", () => {
  const { state, asks } = update(start, { type: "started" });
  expect(asks).toEqual([weekAsk]);
  expect(state.busy).toBe("Reading the rows");
});

test("a view not yet read is asked for once, and shown from memory after that", () => {
  const first = update(start, { type: "chose view", view: "squad" });
  expect(first.asks).toEqual([squadAsk]);
  const shown = after(first.state, { type: "answered", ask: squadAsk, answer: squad });
  expect(shown.busy).toBeNull();
  const back = update(after(shown, { type: "chose view", view: "rows" }), {
    type: "chose view",
    view: "squad",
  });
  expect(back.asks).toEqual([]);
  expect(back.state.squad).toBe(squad);
});

test("a failure ends the waiting with its sentence, and what was read stays", () => {
  const state = after(
    { ...start, view: "squad", squad },
    { type: "asked again" },
    { type: "failed", ask: squadAsk, message: "That tab is no longer there. Check again." },
  );
  expect([state.busy, state.error, state.squad]).toEqual([
    null,
    "That tab is no longer there. Check again.",
    squad,
  ]);
});

test("trying again after a failure asks for the view that is open", () => {
  const { state, asks } = update(
    { ...start, view: "squad", error: "Sorry" },
    { type: "asked again" },
  );
  expect([state.error, asks]).toEqual([null, [squadAsk]]);
});

test("an answer about an athlete since left is not shown", () => {
  const ask = { name: "athleteView", message: { today: "2026-06-28", athlete: "Tomas Reyerson" } };
  const state = after(
    { ...start, view: "squad", squad },
    { type: "opened athlete", athlete: "Tomas Reyerson" },
    { type: "opened athlete", athlete: "Priya Tellander" },
    { type: "answered", ask, answer: { line: squad.lines[0], season: null } },
  );
  expect([state.athlete, state.athleteView]).toEqual(["Priya Tellander", null]);
});

test("changes to one athlete add up, the later of a field counting", () => {
  const changes = withChange(
    withChange([{ athlete: "Priya Tellander", sets: 2 }], {
      athlete: "Tomas Reyerson",
      loadKg: 82.5,
    }),
    { athlete: "Priya Tellander", sets: 3, block: "5×3" },
  );
  expect(changes).toEqual([
    { athlete: "Tomas Reyerson", loadKg: 82.5 },
    { athlete: "Priya Tellander", sets: 3, block: "5×3" },
  ]);
});

test("a change asks for its consequences with all changes so far", () => {
  const { asks, state } = update(
    { ...start, week, changes: [{ athlete: "Priya Tellander", sets: 2 }] },
    { type: "changed", change: { athlete: "Tomas Reyerson", loadKg: 82.5 } },
  );
  expect(asks).toEqual([
    {
      name: "weekView",
      message: { today: "2026-06-28", monday: "2026-06-29", changes: state.changes },
    },
  ]);
  expect(state.changes).toHaveLength(2);
});

test("choosing another week drops the changes made to the first", () => {
  const { state, asks } = update(
    { ...start, week, changes: [{ athlete: "Tomas Reyerson", leaveOut: true }] },
    { type: "chose week", monday: "2026-07-06" },
  );
  expect(state.changes).toEqual([]);
  expect(asks[0]!.message).toEqual({ today: "2026-06-28", monday: "2026-07-06", changes: [] });
});

test("writing sends the changes; after it what was done is said and the week read again", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const { asks, state } = update({ ...start, week, changes }, { type: "wrote", athletes: null });
  expect(asks[0]).toEqual({
    name: "writeWeek",
    message: { today: "2026-06-28", monday: "2026-06-29", changes, athletes: null },
  });
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "3 lines new." } });
  expect([done.state.said, done.asks.map(({ name }) => name)]).toEqual([
    "3 lines new.",
    ["weekView"],
  ]);
});

test("after writing, the changes stay, so that writing again does not undo them", () => {
  const changes = [
    { athlete: "Tomas Reyerson", loadKg: 82.5 },
    { athlete: "Priya Tellander", sets: 2 },
  ];
  const { asks, state } = update(
    { ...start, week, changes },
    { type: "wrote", athletes: ["Tomas Reyerson"] },
  );
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "1 line new." } });
  expect(done.state.changes).toEqual(changes);
  expect(done.asks[0]!.message.changes).toEqual(done.state.changes);
});

test("taking back names the week and leaves changes alone", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const { asks, state } = update({ ...start, week, changes }, { type: "took back" });
  expect(asks[0]!.message).toEqual({ today: "2026-06-28", monday: "2026-06-29" });
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "Taken back." } });
  expect(done.state.changes).toEqual(changes);
});

test("after a mend everything read before it is read again when next looked at", () => {
  const ask = { name: "mendCell", message: {} };
  const { state, asks } = update(
    { ...start, view: "rows", squad, week },
    { type: "answered", ask, answer: { said: "Sets C9: 62 is now 0.62." } },
  );
  expect([state.squad, state.week, asks.map(({ name }) => name)]).toEqual([
    null,
    null,
    ["rowCheck"],
  ]);
});

test("pages are asked for with the week and the changes as shown, and come ready to print, again and again", () => {
  const change = { athlete: "Kofi Anstruther", leaveOut: true };
  const before = { ...startState("2026-06-28"), changes: [change] };
  const { asks, state } = update(before, { type: "printed", kind: "cards" });
  expect(asks).toEqual([
    {
      name: "printPages",
      message: { today: "2026-06-28", kind: "cards", monday: null, changes: [change] },
    },
  ]);
  const pages = { kind: "cards", said: "0 pages ready to print", cards: [] };
  const ready = update(state, { type: "answered", ask: asks[0]!, answer: pages }).state;
  expect([ready.pages, ready.busy, ready.said]).toEqual([pages, null, pages.said]);
  const again = update(ready, { type: "printed again" }).state;
  expect(again.pages).toEqual(pages);
  expect(again.pages).not.toBe(ready.pages);
});

test("where the host opens no print window, that is said and a window of their own is offered", () => {
  const pages = { kind: "cards", said: "2 pages ready to print", cards: [] } as const;
  const kept = after({ ...start, pages }, { type: "kept from printing" });
  expect(kept.printKept).toBe(true);
  expect(kept.said).toMatch(/Open the pages in a window of their own\.$/);
  expect(update(kept, { type: "asked for window" })).toEqual({ state: kept, asks: [] });
  expect(after(kept, { type: "opened window", given: true }).said).toBe("2 pages ready to print");
  expect(after(kept, { type: "opened window", given: false }).said).toMatch(/allow pop-ups/);
});

test("what can no longer be read is forgotten on a click, and the view shown is read again", () => {
  const forget = { type: "forgot damaged", what: "week changes" } as const;
  const { state, asks } = update({ ...start, view: "squad", squad, week, error: "x" }, forget);
  expect(asks).toEqual([{ name: "forgetDamaged", message: { what: "week changes" } }]);
  expect([state.busy, state.error]).toEqual(["Working", null]);
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "Forgotten." } });
  expect(done.asks).toEqual([squadAsk]);
  expect([done.state.said, done.state.squad, done.state.week]).toEqual(["Forgotten.", null, null]);
});
