import { requests, serveRequest } from "../../src/actions/requests";
import { memoryWorkbook } from "../actions/memory-workbook";

const today = "2026-06-28";
const week = { today, monday: null, changes: [] };
/** A message of the right shape for every request. */
const right: Readonly<Record<keyof typeof requests, Readonly<Record<string, unknown>>>> = {
  squadView: { today },
  athleteView: { today, athlete: "x" },
  diaryView: { today, athlete: "x" },
  writeDiaryAnswer: { today, athlete: "x", day: today, answer: "x" },
  rowCheck: { today },
  goToCell: { tabId: 100, cell: "A1" },
  mendCell: { today, tabId: 100, cell: "A1", found: "x", mend: "x" },
  highlightSquad: {},
  setUpView: { today },
  makeCleanTabs: { today },
  answerTable: { today, tabId: 100, table: "Sets" },
  forgetTable: { today, tabId: 100 },
  answerTab: { today, tabId: 100, about: "athlete", written: "x", answer: "x" },
  forgetTab: { today, tabId: 100, about: "athlete", written: "x" },
  answerColumn: { today, tabId: 100, heading: "x", column: 1 },
  forgetColumn: { today, tabId: 100, column: 1, tag: null, about: "meaning" },
  answerName: { today, written: "x", athlete: "x", same: true },
  forgetName: { today, written: "x" },
  answerSet: { today, set: "x" },
  forgetSet: { today, set: "x" },
  forgetDamaged: { what: "answers" },
  weekView: week,
  writeWeek: { ...week, monday: today, athletes: null },
  writeSeason: { today },
  printPages: { ...week, kind: "cards" },
  takeBackWeek: { today, monday: today },
};
const names = Object.keys(requests) as (keyof typeof requests)[];
/** None of these is right for any field; a text is, for some, and is tried at those that take none. */
const wrong = [undefined, [], {}, Number.NaN, -1, 1.5, "x".repeat(501), () => {}, new Date(0)];
const refused = /^The sidebar sent .+ that cannot be right\. Close and open it again\.$/;
const sent = (
  name: string,
  message: unknown,
): { readonly said: string; readonly calls: number } => {
  const book = memoryWorkbook({ Sets: [["Athlete"]] });
  try {
    serveRequest(book, name, message);
    return { said: "served", calls: book.calls.length };
  } catch (error) {
    return { said: (error as Error).message, calls: book.calls.length };
  }
};

test.each(names)(
  "%s is refused with one field too many, missing or of a wrong kind, before anything is read",
  (name) => {
    const message = right[name];
    expect(sent(name, message).said).not.toMatch(refused);
    const bad: unknown[] = [
      { ...message, more: 1 },
      JSON.parse(`{"__proto__":{"today":1},"more":1}`),
      null,
      undefined,
      "x",
      7,
      [message],
      ...Object.keys(message).flatMap((field) =>
        wrong.map((value) => ({ ...message, [field]: value })),
      ),
    ].filter((one) => !isOptionalLeftOut(one, message));
    let tried = 0;
    for (const one of bad) {
      const { said, calls } = sent(name, one);
      expect([one, said]).toEqual([one, expect.stringMatching(refused)]);
      expect(calls).toBe(0);
      tried++;
    }
    expect(tried).toBeGreaterThan(5);
  },
);

/** An empty list of changes is right. */
function isOptionalLeftOut(one: unknown, message: Readonly<Record<string, unknown>>): boolean {
  const changes = (one as { changes?: unknown } | null | undefined)?.changes;
  const athletes = (one as { athletes?: unknown } | null | undefined)?.athletes;
  const only = one !== null && typeof one === "object" && !("more" in one) && !Array.isArray(one);
  if (!only) return false;
  const differs = Object.keys(message).filter(
    (field) => (one as Record<string, unknown>)[field] !== message[field],
  );
  if (differs.length === 1 && differs[0] === "changes") return Array.isArray(changes);
  return differs.length === 1 && differs[0] === "athletes" && Array.isArray(athletes);
}

test.each([
  "",
  "serve",
  "compute",
  "eval",
  "Function",
  "onOpen",
  "highlightNow",
  "openSidebar",
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
  "squadview",
  "squadView ",
  "squadView_",
  "requests",
  "SpreadsheetApp",
  "WRITE",
])("“%s” is served by nothing", (name) => {
  expect(sent(name, {})).toEqual({ said: `The sidebar may not ask for ${name}.`, calls: 0 });
});
