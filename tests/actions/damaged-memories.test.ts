import { forgetLong, recallLong, rememberLong } from "../../src/actions/answers/remember-long";
import type {
  Done,
  KeptMatter,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekView,
} from "../../src/actions/messages";
import { type RequestName, serveRequest } from "../../src/actions/requests";
import { recallWords } from "../../src/words/remembered";
import { monday, priya, smallClub, today, tomas } from "../faults/small-club";
import { type MemoryWorkbook, memoryWorkbook } from "./memory-workbook";

const ask = <Answer>(book: MemoryWorkbook, name: RequestName, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const week = { monday, changes: [] };
/** A week with a change and a season written, a spelling told. */
const club = () => {
  const book = memoryWorkbook(smallClub());
  ask(book, "answerName", { written: "Priya Telander", athlete: priya, same: true });
  const changes = [{ athlete: tomas, loadKg: 62.5 }];
  ask(book, "writeWeek", { monday, changes, athletes: null });
  ask(book, "writeSeason");
  return book;
};
/** All kept under a key, its parts with it. */
const keptUnder = (book: MemoryWorkbook, key: string) =>
  [key, ...[1, 2].flatMap((turn) => [0, 1, 2].map((part) => `${key}.${turn}.${part}`))].map((one) =>
    book.recall(one),
  );
const cells = (book: MemoryWorkbook) => book.tabs().map(({ id }) => book.values(id));

/** Ways in which what is kept can be spoilt. */
const spoilt: Readonly<Record<string, (book: MemoryWorkbook, key: string) => void>> = {
  "a head that is none": (book, key) => book.remember({ [key]: "3 parts" }),
  "a head of a part that is not there": (book, key) => book.remember({ [key]: "1 7 17000" }),
  "a part cut short": (book, key) => {
    const [turn] = book.recall(key)!.split(" ");
    book.remember({ [`${key}.${turn}.0`]: "{" });
  },
  "a part that is gone": (book, key) =>
    book.forget([`${key}.${book.recall(key)!.split(" ")[0]}.0`]),
  "text that is no list": (book, key) => rememberLong(book, key, "not a list"),
  "a list of something else": (book, key) => rememberLong(book, key, '{"a":[{"b":1}]}'),
};
const writing: Readonly<Record<KeptMatter, readonly (readonly [RequestName, object])[]>> = {
  answers: [
    ["answerName", { written: "Tomas R", athlete: tomas, same: true }],
    ["forgetName", { written: "Priya Telander" }],
    ["answerTable", { tabId: 100, table: "Races" }],
  ],
  "next week": [
    ["writeWeek", { ...week, athletes: null }],
    ["takeBackWeek", { monday }],
  ],
  "week changes": [
    // Without a change, too: the proposal would go over what the coach had changed.
    ["writeWeek", { ...week, athletes: null }],
    ["takeBackWeek", { monday }],
  ],
  season: [["writeSeason", {}]],
};
const matters = Object.keys(writing) as KeptMatter[];
const ways = matters.flatMap((what) => Object.keys(spoilt).map((way) => [what, way] as const));

test.each(ways)("%s, %s: said in one sentence, every view opens", (what, way) => {
  const book = club();
  spoilt[way]!(book, what);
  const shown = [{ what, said: recallWords.damaged[what] }];
  expect(ask<SetUpView>(book, "setUpView").damaged).toEqual(shown);
  expect(ask<WeekView>(book, "weekView", week).damaged).toEqual(what === "season" ? [] : shown);
  const ofAnswers = what === "answers" ? shown : [];
  expect(ask<SquadView>(book, "squadView").damaged).toEqual(ofAnswers);
  expect(ask<RowCheckView>(book, "rowCheck").damaged).toEqual(ofAnswers);
  expect(() => ask(book, "athleteView", { athlete: tomas })).not.toThrow();
});

test.each(ways)("%s, %s: nothing is put over it and no cell is written", (what, way) => {
  const book = club();
  spoilt[way]!(book, what);
  const before = [keptUnder(book, what), cells(book)];
  for (const [name, message] of writing[what]) {
    expect(() => ask(book, name, message)).toThrow(recallWords.damaged[what]);
  }
  expect([keptUnder(book, what), cells(book)]).toEqual(before);
});

test.each(ways)("%s, %s: forgotten when the coach says so, and writing goes on", (what, way) => {
  const book = club();
  spoilt[way]!(book, what);
  expect(serveRequest(book, "forgetDamaged", { what })).toEqual({
    said: recallWords.forgotten[what],
  });
  expect(book.recall(what)).toBeNull();
  expect(ask<SetUpView>(book, "setUpView").damaged).toEqual([]);
  for (const [name, message] of writing[what]) {
    expect(() => ask(book, name, message)).not.toThrow();
  }
  expect(ask<SetUpView>(book, "setUpView").damaged).toEqual([]);
});

test.each(matters)("%s that can be read is not forgotten", (what) => {
  const book = club();
  const before = keptUnder(book, what);
  expect(before[0]).not.toBeNull();
  expect(serveRequest(book, "forgetDamaged", { what })).toEqual({ said: recallWords.readable });
  expect(keptUnder(book, what)).toEqual(before);
});

test("the Next week tab's cells count as the coach's once the note of them is forgotten", () => {
  const book = club();
  const before = book.values(book.tabNamed("Next week").id);
  spoilt["a head that is none"]!(book, "next week");
  serveRequest(book, "forgetDamaged", { what: "next week" });
  const changes = [{ athlete: tomas, loadKg: 70 }];
  const { said } = ask<Done>(book, "writeWeek", { monday, changes, athletes: null });
  expect(said).toContain("Yours, kept:");
  expect(book.values(book.tabNamed("Next week").id)).toEqual(before);
});

test("a coach writing between two of another's reads is waited out, not taken for damage", () => {
  const book = memoryWorkbook({ Sets: [] });
  rememberLong(book, "answers", "a".repeat(6000));
  let reads = 0;
  const between = {
    ...book,
    recallAll: () => {
      if (reads++ > 0) return book.recallAll();
      // The head and the first part are read when the other coach's text replaces this one.
      const { answers, "answers.1.0": first } = book.recallAll();
      rememberLong(book, "answers", "b".repeat(9000));
      return { ...book.recallAll(), answers: answers!, "answers.1.0": first! };
    },
  };
  expect(recallLong(between, "answers")).toEqual({ is: "text", text: "b".repeat(9000) });
});

test("a text of an earlier version, whose head does not say the length, is read", () => {
  const book = memoryWorkbook({ Sets: [] });
  book.remember({ answers: "1 2", "answers.1.0": "abc", "answers.1.1": "de" });
  expect(recallLong(book, "answers")).toEqual({ is: "text", text: "abcde" });
});

test("a forgotten text leaves no part behind", () => {
  const book = memoryWorkbook({ Sets: [] });
  rememberLong(book, "season", "a".repeat(6000));
  rememberLong(book, "season", "b".repeat(3000));
  forgetLong(book, "season");
  expect(keptUnder(book, "season").every((one) => one === null)).toBe(true);
});
