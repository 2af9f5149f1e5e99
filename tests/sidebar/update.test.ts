import type { Event } from "../../src/sidebar/event";
import { type State, startState } from "../../src/sidebar/state";
import { update } from "../../src/sidebar/update";
import { rows, squad, week } from "./views";

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

test("a view chosen again is read again, since cells may have changed; what was read stays until then", () => {
  const first = update(start, { type: "chose view", view: "squad" });
  expect(first.asks).toEqual([squadAsk]);
  const shown = after(first.state, { type: "answered", ask: squadAsk, answer: squad });
  expect(shown.busy).toBeNull();
  const back = update(after(shown, { type: "chose view", view: "rows" }), {
    type: "chose view",
    view: "squad",
  });
  expect(back.asks).toEqual([squadAsk]);
  expect(back.state.squad).toBe(squad);
  const again = update(shown, { type: "chose view", view: "squad" });
  expect([again.asks, again.state.squad]).toEqual([[squadAsk], squad]);
});

test("the number to check is that of the view read last, from next week on", () => {
  const first = after(
    start,
    { type: "started" },
    { type: "answered", ask: weekAsk, answer: { ...week, monday: null } },
  );
  expect(first.toCheck).toBe(week.toCheck);
  const read = after(first, { type: "answered", ask: squadAsk, answer: squad });
  expect(read.toCheck).toBe(squad.toCheck);
  const rowsAsk = { name: "rowCheck", message: { today: "2026-06-28" } };
  const checked = after(read, { type: "answered", ask: rowsAsk, answer: rows });
  expect(checked.toCheck).toBe(rows.problems.length + rows.names.length);
  const again = after(checked, { type: "answered", ask: squadAsk, answer: squad });
  expect(again.toCheck).toBe(squad.toCheck);
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

test("once Undo has changed the workbook, what was said before it is not true any more, and says so", () => {
  const written = { ...start, week, said: "15 rows new.", busy: null };
  const { state, asks } = update(written, { type: "undone" });
  expect([state.said, state.week, asks]).toEqual([
    "Undo or Redo has changed the workbook: what is shown here is from before.",
    week,
    [],
  ]);
  expect(update(state, { type: "asked again" }).asks.map(({ name }) => name)).toEqual(["weekView"]);
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

test("rows deleted in the tab are written again only where that is asked", () => {
  const asked = (event: object) =>
    update({ ...start, week }, { type: "wrote", athletes: null, ...event }).asks[0]!.message;
  expect(asked({})).not.toHaveProperty("again");
  expect(asked({ again: true })).toMatchObject({ again: true, athletes: null });
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

test("changes stay with the week they were made to, while another is looked at and after it", () => {
  const changes = [{ athlete: "Tomas Reyerson", leaveOut: true }];
  const first = { ...start, week, monday: week.monday, changes };
  const { state, asks } = update(first, { type: "chose week", monday: "2026-07-06" });
  expect(asks[0]!.message).toEqual({ today: "2026-06-28", monday: "2026-07-06", changes: [] });
  const other = { ...week, monday: "2026-07-06" };
  const there = after(state, { type: "answered", ask: asks[0]!, answer: other });
  const back = update(there, { type: "chose week", monday: week.monday });
  expect(back.asks[0]!.message).toEqual({ today: "2026-06-28", monday: week.monday, changes });
});

test("after a mend the week that was chosen is read again with its own changes, not the next week with them", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const july = { ...week, monday: "2026-07-13" };
  const mended = after(
    { ...start, view: "rows", week: july, monday: july.monday, changes },
    { type: "answered", ask: { name: "mendCell", message: {} }, answer: { said: "Mended." } },
  );
  expect(mended.week).toBeNull();
  const { asks } = update(mended, { type: "chose view", view: "week" });
  expect(asks[0]!.message).toEqual({ today: "2026-06-28", monday: "2026-07-13", changes });
});

test("an answer about a week that is older than the last change is not shown", () => {
  const shown = { ...start, week, monday: week.monday };
  const tomas = { athlete: "Tomas Reyerson", loadKg: 82.5 };
  const first = update(shown, { type: "changed", change: tomas });
  const second = update(first.state, { type: "changed", change: { ...tomas, sets: 3 } });
  const newest = { ...week, rowsToWrite: 2 };
  const late = after(
    second.state,
    { type: "answered", ask: second.asks[0]!, answer: newest },
    { type: "answered", ask: first.asks[0]!, answer: { ...week, rowsToWrite: 1 } },
  );
  expect([late.week, late.shown]).toEqual([newest, [{ ...tomas, sets: 3 }]]);
});

test("an answer about a week since left is not shown, though nothing was changed in either", () => {
  const shown = { ...start, week, monday: week.monday };
  const july = update(shown, { type: "chose week", monday: "2026-07-06" });
  const back = update(july.state, { type: "chose week", monday: week.monday });
  const answer = { ...week, monday: "2026-07-06" };
  const late = after(back.state, { type: "answered", ask: july.asks[0]!, answer });
  expect([late.week, late.monday]).toEqual([week, week.monday]);
});

test("a week that cannot be read leaves the one on screen, and that one is written", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const chosen = update(
    { ...start, week, monday: week.monday, changes },
    { type: "chose week", monday: "2026-07-06" },
  );
  const written = (state: State) =>
    update(state, { type: "wrote", athletes: null }).asks[0]!.message;
  const message = { today: "2026-06-28", monday: week.monday, changes, athletes: null };
  expect(written(chosen.state)).toEqual(message);
  const failed = after(chosen.state, { type: "failed", ask: chosen.asks[0]!, message: "No." });
  expect([failed.monday, failed.changes, failed.error]).toEqual([week.monday, changes, "No."]);
  expect(written(failed)).toEqual(message);
});

test("pages made before a change are not offered to be printed again", () => {
  const pages = { kind: "cards", said: "2 pages ready to print", cards: [] } as const;
  const printed = { ...start, week, monday: week.monday, pages };
  const change = { athlete: "Tomas Reyerson", loadKg: 82.5 };
  expect(update(printed, { type: "changed", change }).state.pages).toBeNull();
  expect(update(printed, { type: "chose week", monday: "2026-07-06" }).state.pages).toBeNull();
});

test("a button pressed twice writes once, and again once that is done; reading is asked for each time", () => {
  const shown = { ...start, week, monday: week.monday };
  const once = update(shown, { type: "took back" });
  expect(once.asks.map(({ name }) => name)).toEqual(["takeBackWeek"]);
  expect(update(once.state, { type: "took back" })).toEqual({ state: once.state, asks: [] });
  const done = after(once.state, {
    type: "answered",
    ask: once.asks[0]!,
    answer: { said: "Taken back: 14 rows." },
  });
  expect(update(done, { type: "took back" }).asks).toHaveLength(1);
  const failed = after(once.state, { type: "failed", ask: once.asks[0]!, message: "No." });
  expect(update(failed, { type: "took back" }).asks).toHaveLength(1);
  const read = update(shown, { type: "asked again" });
  expect(update(read.state, { type: "asked again" }).asks).toEqual(read.asks);
});

test("a new day under an open sidebar reads what is on screen again, and next week is the new one", () => {
  const came = { type: "day came", today: "2026-06-29" } as const;
  const open = { ...start, week, monday: week.monday, squad };
  const { state, asks } = update(open, came);
  expect(asks).toEqual([
    { name: "weekView", message: { today: "2026-06-29", monday: null, changes: [] } },
  ]);
  expect([state.today, state.week, state.squad]).toEqual(["2026-06-29", week, null]);
  // A week that was changed stays the week looked at.
  const changes = [{ athlete: "Tomas Reyerson", sets: 3 }];
  expect(update({ ...open, changes }, came).asks[0]!.message.monday).toBe(week.monday);
  const athlete = "Tomas Reyerson";
  const opened = update({ ...open, view: "squad", athlete }, came);
  expect(opened.asks.map(({ name }) => name)).toEqual(["squadView", "athleteView"]);
});

test("the list stays on screen while it is read again after a mend, whichever view that is", () => {
  const ask = { name: "mendCell", message: {} };
  const mended = { type: "answered", ask, answer: { said: "Mended." } } as const;
  const rowsShown = update({ ...start, view: "rows", rows, squad }, mended);
  expect([rowsShown.state.rows, rowsShown.state.squad]).toEqual([rows, null]);
  // The coach has gone on to the squad meanwhile: that is read again, and the rows when looked at.
  const gone = update({ ...start, view: "squad", rows, squad }, mended);
  expect([gone.state.squad, gone.state.rows, gone.asks]).toEqual([squad, null, [squadAsk]]);
});

test("trying again with an athlete of the week opened reads the athlete too", () => {
  const opened = { ...start, week, monday: week.monday, athlete: "Tomas Reyerson", error: "No." };
  const { asks } = update(opened, { type: "asked again" });
  expect(asks.map(({ name }) => name)).toEqual(["weekView", "athleteView"]);
});

test("reading again says that it was done, and of the rows what was found; a failed reading says neither", () => {
  const again = (view: "rows" | "setUp") =>
    update({ ...start, view, said: "Remembered." }, { type: "asked again" });
  const checked = again("rows");
  const summary = "3 of 4 rows read";
  const found = { ...rows, summary };
  const told = { type: "answered", ask: checked.asks[0]!, answer: found } as const;
  expect(after(checked.state, told).said).toBe(`${summary}.`);
  // A check after something else was done leaves that sentence.
  const mended = { ...checked.state, said: "75 is now 7.5." };
  expect(after(mended, told).said).toBe("75 is now 7.5.");
  const setUp = again("setUp");
  const read = { type: "answered", ask: setUp.asks[0]!, answer: {} } as const;
  expect(after(setUp.state, read).said).toBe("Read again.");
  const failed = { type: "failed", ask: setUp.asks[0]!, message: "No." } as const;
  expect([after(setUp.state, failed).said, after(setUp.state, failed).error]).toEqual([
    null,
    "No.",
  ]);
});

test("writing sends the changes; after it what was done is said and the week read again", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const { asks, state } = update({ ...start, week, changes }, { type: "wrote", athletes: null });
  expect(asks[0]).toEqual({
    name: "writeWeek",
    message: { today: "2026-06-28", monday: "2026-06-29", changes, athletes: null },
  });
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "3 rows new." } });
  expect([done.state.said, done.asks.map(({ name }) => name)]).toEqual([
    "3 rows new.",
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
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "1 row new." } });
  expect(done.state.changes).toEqual(changes);
  expect(done.asks[0]!.message.changes).toEqual(done.state.changes);
});

test("a week taken back is proposed afresh: its changes were kept until then, another week's stay", () => {
  const changes = [{ athlete: "Tomas Reyerson", loadKg: 82.5 }];
  const otherWeeks = { "2026-07-06": [{ athlete: "Priya Tellander", sets: 2 }] };
  const shown = { ...start, week, monday: week.monday, changes, otherWeeks };
  const { asks, state } = update(shown, { type: "took back" });
  expect(asks[0]!.message).toEqual({ today: "2026-06-28", monday: "2026-06-29" });
  const done = update(state, { type: "answered", ask: asks[0]!, answer: { said: "Taken back." } });
  expect([done.state.changes, done.state.otherWeeks]).toEqual([[], otherWeeks]);
  expect(done.asks[0]!.message.changes).toEqual([]);
  // Answered late, after another week was chosen: the week taken back is the one meant.
  const gone = after(state, { type: "chose week", monday: "2026-07-06" });
  const late = after(gone, { type: "answered", ask: asks[0]!, answer: { said: "Taken back." } });
  expect([late.changes, late.otherWeeks]).toEqual([
    otherWeeks["2026-07-06"],
    { "2026-07-06": otherWeeks["2026-07-06"] },
  ]);
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
