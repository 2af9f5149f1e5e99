import type { PageKind } from "../../src/actions/page-messages";
import type { RequestName } from "../../src/actions/requests";
import { monday, today, tomas } from "../faults/small-club";
import { looking, type Message } from "../faults/writing-actions";
import { bothHosts } from "./both-hosts";
import { club } from "./both-hosts-contract";
import type { HeldWorkbook } from "./held-workbook";
import { whatStands, withNames } from "./what-stands";

// What only looks says the same on both hosts, of the coach's rows and of what was written, and leaves all as it is.
const weeks = { today, monday, changes: [] };
const kinds: readonly PageKind[] = ["cards", "rack plan", "week page", "pictures"];
const asked: readonly (readonly [RequestName, Message])[] = [
  ["squadView", { today }],
  ["athleteView", { today, athlete: tomas }],
  ["diaryView", { today, athlete: tomas }],
  ["rowCheck", { today }],
  ["goToCell", { cell: "B2" }],
  ["setUpView", { today }],
  ["weekView", weeks],
  ...kinds.map((kind) => ["printPages", { ...weeks, kind }] as const),
];

test("every request that only looks is asked", () => {
  expect([...new Set(asked.map(([request]) => request))].sort()).toEqual([...looking].sort());
});

const seen: unknown[][] = [];

test.each(bothHosts)("on %s nothing is changed by looking", async (_, open) => {
  const book: HeldWorkbook = await open(club);
  const answers: unknown[] = [];
  seen.push(answers);
  const look = () => {
    const before = whatStands(book.tabs(), book.kept());
    for (const [request, given] of asked) {
      const message = request === "goToCell" ? { ...given, tabId: book.tabId("Races") } : given;
      answers.push([request, withNames(book.ask(request, message), book.tabs())]);
      expect([request, whatStands(book.tabs(), book.kept())]).toEqual([request, before]);
    }
  };
  look();
  book.ask("writeWeek", { ...weeks, athletes: null, changes: [{ athlete: tomas, sets: 3 }] });
  book.ask("writeSeason", { today });
  book.ask("answerTable", { today, tabId: book.tabId("Camp"), table: "Races" });
  look();
  book.close();
});

test.each(
  asked.map(([request, message], at) => [request, message.kind ?? "all of it", at] as const),
)("%s (%s) is answered the same by both hosts, before writing and after", (_, __, at) => {
  const [memory, platform] = seen as [unknown[], unknown[]];
  expect(memory).toHaveLength(2 * asked.length);
  for (const turn of [at, at + asked.length]) expect(platform[turn]).toEqual(memory[turn]);
});
