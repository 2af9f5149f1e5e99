import type { WeekChange, WeekSession } from "../../../src/actions/messages";
import { weekView } from "../../../src/actions/week/week-view";
import { writeProposedWeek } from "../../../src/actions/week/write-proposed-week";
import { takeBackWeek } from "../../../src/actions/week/write-week";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { nextWeekHeadings } from "../../../src/words/next-week-tab";
import { sampleClub } from "../sample-club";

const today = dayFromIso("2026-06-28")!;
const monday = dayFromIso("2026-06-29")!;
const tomas = "Tomas Reyerson";
const headings = Object.keys(nextWeekHeadings);

type Club = ReturnType<typeof sampleClub>;
const cell = (book: Club, heading: keyof typeof nextWeekHeadings) =>
  book
    .values(book.tabNamed("Next week").id)
    .slice(4)
    .filter((row) => row[0] === tomas)
    .map((row) => row[headings.indexOf(heading)]);
const lineOf = (book: Club) =>
  weekView(book, today, monday, []).lines.find(({ athlete }) => athlete === tomas)!;

test("a load changed and written is what a sidebar opened again proposes and writes", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  writeProposedWeek(book, today, monday, [{ athlete: tomas, loadKg: proposed - 5 }], null);
  expect(new Set(cell(book, "load"))).toEqual(new Set([proposed - 5]));
  // Opened again: no changes come from the sidebar.
  const again = weekView(book, today, monday, []);
  expect(again.already).toMatch(/^Written: \d+ rows stand in Next week\.$/);
  expect(again.isWritten).toBe(true);
  expect(lineOf(book).sessions[0]!.loadKg).toBe(proposed - 5);
  expect(lineOf(book).why.join(" ")).toContain(
    `Set by you; ${proposed} kg was proposed. Its reason:`,
  );
  const before = book.all();
  expect(writeProposedWeek(book, today, monday, [], null).said).toMatch(/^\d+ rows the same\.$/);
  expect(book.all()).toEqual(before);
});

test("a later change of another field is put on top, and the week's difference names who changes", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  writeProposedWeek(book, today, monday, [{ athlete: tomas, loadKg: proposed - 5 }], null);
  const sets = [{ athlete: tomas, sets: 1 }];
  expect(weekView(book, today, monday, sets).already).toContain(`Changed: ${tomas}.`);
  writeProposedWeek(book, today, monday, sets, [tomas]);
  expect(new Set(cell(book, "load"))).toEqual(new Set([proposed - 5]));
  expect(String(cell(book, "sets")[0])).toMatch(/^1×/);
});

test("one session instead of two takes the second out of the tab, and stays so until taken back", () => {
  const book = sampleClub();
  const theirs = () =>
    weekView(book, today, monday, []).lines.find(({ athlete }) => athlete === who)!;
  const rowsOf = () =>
    book.values(book.tabNamed("Next week").id).filter(([athlete]) => athlete === who);
  const { athlete: who } = weekView(book, today, monday, []).lines.find(
    ({ sessions }) => sessions.length === 2,
  )!;
  writeProposedWeek(book, today, monday, [], null);
  expect(rowsOf()).toHaveLength(2);
  const one = [{ athlete: who, sessions: 1 }];
  expect(weekView(book, today, monday, one).already).toContain(`Taken out: ${who}.`);
  writeProposedWeek(book, today, monday, one, [who]);
  expect(rowsOf()).toHaveLength(1);
  expect(theirs().sessions).toHaveLength(1);
  expect(theirs().why[0]).toBe("Changed by you, kept until taken back: sessions.");
  takeBackWeek(book, "2026-06-29");
  expect(theirs().sessions).toHaveLength(2);
});

test("a change that names the first turn by its empty name is one of the week's own", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  writeProposedWeek(book, today, monday, [{ athlete: tomas, sets: 1 }], null);
  writeProposedWeek(
    book,
    today,
    monday,
    [{ athlete: tomas, turn: "", loadKg: proposed - 5 }],
    null,
  );
  expect(new Set(cell(book, "load"))).toEqual(new Set([proposed - 5]));
  expect(String(cell(book, "sets")[0])).toMatch(/^1×/);
});

test("a change of one athlete is not remembered when another alone was written", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  const change = { athlete: tomas, loadKg: proposed - 5 };
  writeProposedWeek(book, today, monday, [change], ["Priya Tellander"]);
  expect(lineOf(book).sessions[0]!.loadKg).toBe(proposed);
});

test("a week taken back is proposed afresh", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  writeProposedWeek(book, today, monday, [{ athlete: tomas, loadKg: proposed - 5 }], null);
  takeBackWeek(book, "2026-06-29");
  expect(lineOf(book).sessions[0]!.loadKg).toBe(proposed);
});

test("what is kept until taken back can be taken back, written or not, with the tab or without", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  const change = { athlete: tomas, loadKg: proposed - 5 };
  expect(weekView(book, today, monday, []).canTakeBack).toBe(false);
  expect(weekView(book, today, monday, [change]).canTakeBack).toBe(true);
  writeProposedWeek(book, today, monday, [change], null);
  // The coach puts the tab aside to begin again.
  book.rename("Next week", "Old plan");
  expect(weekView(book, today, monday, [])).toMatchObject({ already: "", canTakeBack: true });
  expect(lineOf(book).sessions[0]!.loadKg).toBe(proposed - 5);
  expect(takeBackWeek(book, "2026-06-29").said).toBe(
    "No row was taken back; the week is proposed afresh.",
  );
  expect(lineOf(book).sessions[0]!.loadKg).toBe(proposed);
  expect(weekView(book, today, monday, []).canTakeBack).toBe(false);
});

test("changes outlive a writing that fails at its first cell", () => {
  const book = sampleClub();
  const proposed = lineOf(book).sessions[0]!.loadKg;
  writeProposedWeek(book, today, monday, [], null);
  book.calls.length = 0;
  const change = { athlete: tomas, loadKg: proposed - 5 };
  const write = () => writeProposedWeek(book, today, monday, [change], null);
  const dry = sampleClub();
  writeProposedWeek(dry, today, monday, [], null);
  dry.calls.length = 0;
  writeProposedWeek(dry, today, monday, [change], null);
  book.failAt = dry.calls.indexOf("write") + 1;
  expect(write).toThrow("failed in write");
  book.failAt = Number.POSITIVE_INFINITY;
  writeProposedWeek(book, today, monday, [], null);
  expect(new Set(cell(book, "load"))).toEqual(new Set([proposed - 5]));
});

test("the title names the weeks that stand in the tab, unless the coach wrote another", () => {
  const book = sampleClub();
  const title = () => book.values(book.tabNamed("Next week").id)[0]![0];
  writeProposedWeek(book, today, monday, [], null);
  expect(title()).toBe("Next week: 29 Jun to 5 Jul");
  writeProposedWeek(book, today, monday + 7, [], null);
  expect(title()).toBe("Weeks of 29 Jun and 6 Jul");
  takeBackWeek(book, "2026-06-29");
  expect(title()).toBe("Next week: 6 Jul to 12 Jul");
  book.type("Next week", 1, 1, "Easy weeks");
  writeProposedWeek(book, today, monday, [], null);
  expect(title()).toBe("Easy weeks");
});

test("the tab says why in one short sentence, and plates under their own heading", () => {
  const book = sampleClub();
  writeProposedWeek(book, today, monday, [], null);
  const rows = book.values(book.tabNamed("Next week").id).slice(4);
  for (const row of rows) {
    expect(String(row[headings.indexOf("why")])).toMatch(/^[A-Z0-9].{3,85}\.$/);
    expect(String(row[headings.indexOf("plates")])).not.toContain("side");
  }
});

const kofi = "Kofi Anstruther";
const lineWith = (book: Club, ...changes: WeekChange[]) =>
  weekView(book, today, monday, changes).lines.find(({ athlete }) => athlete === kofi)!;

test("a load set by hand is told as that, with what was proposed, in the list, under Why and in the tab", () => {
  const book = sampleClub();
  const { loadKg } = lineWith(book).sessions[0]!;
  const set = { athlete: kofi, loadKg: loadKg + 2.5 };
  const said = `Set by you; ${loadKg} kg was proposed`;
  const line = lineWith(book, set);
  expect(line.brief).toBe(said);
  expect(line.why[0]).toMatch(new RegExp(`^${said}\\. Its reason: Hold: week 2 of 3\\.$`));
  expect(line.why.slice(1).join(" ")).not.toMatch(/Hold: week|load kept|Changed by you/);
  expect(line.byHand).toBe(true);
  writeProposedWeek(book, today, monday, [set], null);
  const rows = book.values(book.tabNamed("Next week").id).filter(([athlete]) => athlete === kofi);
  expect(rows.map((row) => row[headings.indexOf("why")])).toContain(`${said}.`);
});

test("sets or a block set by hand are told with the ones proposed", () => {
  const book = sampleClub();
  const { sets, reps } = lineWith(book).sessions[0]!;
  const more = lineWith(book, { athlete: kofi, sets: sets + 1 });
  expect(more.brief).toBe(`Set by you; ${sets}×${reps} was proposed`);
  // What is set by hand is not what a race week has left.
  expect(more.why.join(" ")).not.toContain("Race week: sets");
  const both = lineWith(book, { athlete: kofi, block: "3×3", loadKg: 100 });
  expect(both.brief).toMatch(/^Set by you; \d×\d at 107\.5 kg was proposed$/);
});

test("set back to what is proposed nothing is changed", () => {
  const book = sampleClub();
  const before = lineWith(book);
  const [{ loadKg, sets, block, day, contacts, stack }] = before.sessions as [WeekSession];
  const same = { loadKg, sets, block, day, contacts, stack, leaveOut: false, noRack: false };
  const line = lineWith(book, { athlete: kofi, ...same, sessions: before.sessions.length });
  expect(line.byHand).toBe(false);
  expect(line.why.join(" ")).not.toMatch(/by you/);
  expect(line.brief).toBe(before.brief);
});

test("other things set by hand are told by their names", () => {
  const book = sampleClub();
  const { contacts, days, why } = lineWith(book).sessions.map((session) => ({
    ...lineWith(book),
    ...session,
  }))[0]!;
  const day = days.find(({ why: refused }) => refused === "")!.day;
  const line = lineWith(book, { athlete: kofi, contacts: contacts + 2, stack: "20", day });
  expect(line.why[0]).toMatch(/^Changed by you, kept until taken back: contacts, stack/);
  expect(line.why).toEqual(expect.arrayContaining([why[0]]));
});

test("an athlete left out is told as left out, not by the reasons of what was proposed", () => {
  const line = lineWith(sampleClub(), { athlete: kofi, leaveOut: true });
  expect(line).toMatchObject({ brief: "Left out by you", byHand: true });
  expect(line.why[0]).toBe("Left out by you.");
  expect(line.why.join(" ")).not.toContain("Hold");
});

test("one athlete's changes are taken back alone, those written before, too; the others' stay", () => {
  const book = sampleClub();
  const proposed = lineWith(book);
  const tomasKg = lineOf(book).sessions[0]!.loadKg;
  const set = [
    { athlete: kofi, loadKg: 100, leaveOut: true },
    { athlete: tomas, loadKg: tomasKg - 5 },
  ];
  writeProposedWeek(book, today, monday, set, null);
  const back = { athlete: kofi, asProposed: true } as const;
  expect(lineWith(book, back)).toEqual(proposed);
  writeProposedWeek(book, today, monday, [back], null);
  expect(lineWith(book)).toEqual(proposed);
  expect(lineOf(book).sessions[0]!.loadKg).toBe(tomasKg - 5);
  // What is set after that holds.
  expect(lineWith(book, { ...back, loadKg: 100 }).sessions[0]!.loadKg).toBe(100);
});
