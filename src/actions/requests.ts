import * as z from "zod/mini";
import { type Day, dayFromIso, isoFromDay } from "../coaching/calendar/day";
import { mostSessions } from "../coaching/season/usual-sessions-a-week";
import { tabMatters } from "../rows/layout/tab-question";
import { tableNames } from "../rows/table-name";
import { bridgeWords } from "../words/bridge";
import { wrongMessageWords } from "../words/wrong-message";
import { answerColumn, forgetColumn } from "./answers/answer-column";
import { answerName, forgetName } from "./answers/answer-name";
import { answerSet } from "./answers/answer-set";
import { answerTab, answerTable, forgetTab, forgetTable } from "./answers/answer-tab";
import { forgetDamaged } from "./answers/forget-damaged";
import { makeCleanTabs } from "./clean-tabs/make-clean-tabs";
import { diaryView } from "./diary/diary-view";
import { writeDiaryAnswer } from "./diary/write-diary-answer";
import { keptMatters, type WeekChange } from "./messages";
import { printPages } from "./pages/print-pages";
import { mendCell } from "./row-check/mend-cell";
import { rowCheck } from "./row-check/row-check";
import { writeSeason } from "./season/write-season";
import { setUpView } from "./set-up/set-up";
import { athleteView } from "./squad/athlete-view";
import { highlightSquad } from "./squad/highlight-squad";
import { squadView } from "./squad/squad-view";
import { weekView } from "./week/week-view";
import { writeProposedWeek } from "./week/write-proposed-week";
import { takeBackWeek } from "./week/write-week";
import type { Workbook } from "./workbook";

/** A request the sidebar may make: its arguments, checked before anything is done, and the work. */
type Request = {
  readonly run: (workbook: Workbook, message: unknown) => unknown;
};

const text = z.string().check(z.maxLength(500));
const isoDay = z.pipe(
  z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/)),
  z.transform((iso: string, context): Day => {
    const day = dayFromIso(iso);
    if (day !== null) return day;
    context.issues.push({ code: "custom", message: "no such day", input: iso });
    return z.NEVER;
  }),
);
const tabId = z.int().check(z.gte(0));
const cell = z.string().check(z.regex(/^[A-Z]{1,3}[1-9]\d{0,6}$/));
const today = { today: isoDay };
/** A question about a whole tab: what it is about, and how a doubtful bar is written. */
const matter = { about: z.enum(tabMatters), written: text };
const change = z.strictObject({
  athlete: text,
  turn: z.optional(text),
  asProposed: z.optional(z.literal(true)),
  leaveOut: z.optional(z.boolean()),
  block: z.optional(text),
  loadKg: z.optional(z.number().check(z.gte(0), z.lte(500))),
  sets: z.optional(z.int().check(z.gte(1), z.lte(10))),
  sessions: z.optional(z.int().check(z.gte(1), z.lte(mostSessions))),
  day: z.optional(text),
  contacts: z.optional(z.int().check(z.gte(0), z.lte(200))),
  stack: z.optional(text),
  noRack: z.optional(z.boolean()),
});
const changes = z.array(change).check(z.maxLength(500));

function request<Shape extends z.core.$ZodLooseShape>(
  shape: Shape,
  run: (workbook: Workbook, given: z.output<z.ZodMiniObject<Shape>>) => unknown,
): Request {
  const schema = z.strictObject(shape);
  return {
    run: (workbook, message) => {
      const read = schema.safeParse(message);
      if (!read.success) {
        const [issue] = read.error.issues;
        throw new Error(wrongMessageWords(issue?.path.join(".") ?? ""));
      }
      return run(workbook, read.data as z.output<z.ZodMiniObject<Shape>>);
    },
  };
}

/** Everything the sidebar may ask; nothing else of the script can be reached from it. */
export const requests = {
  squadView: request(today, (workbook, given) => squadView(workbook, given.today)),
  athleteView: request({ ...today, athlete: text }, (workbook, given) =>
    athleteView(workbook, given.today, given.athlete),
  ),
  diaryView: request({ ...today, athlete: text }, (workbook, given) =>
    diaryView(workbook, given.today, given.athlete),
  ),
  writeDiaryAnswer: request(
    { ...today, athlete: text, day: isoDay, answer: text },
    (workbook, given) => writeDiaryAnswer(workbook, given.today, given),
  ),
  rowCheck: request(today, (workbook, given) => rowCheck(workbook, given.today)),
  goToCell: request({ tabId, cell }, (workbook, given) => {
    workbook.select(given.tabId, given.cell);
    return { said: given.cell };
  }),
  mendCell: request({ ...today, tabId, cell, found: text, mend: text }, (workbook, given) =>
    mendCell(workbook, given.today, given),
  ),
  highlightSquad: request({}, (workbook) => highlightSquad(workbook)),
  setUpView: request(today, (workbook, given) => setUpView(workbook, given.today)),
  makeCleanTabs: request(today, (workbook, given) => makeCleanTabs(workbook, given.today)),
  answerTable: request(
    { ...today, tabId, table: z.nullable(z.enum(tableNames)) },
    (workbook, given) => {
      answerTable(workbook, given.tabId, given.table);
      return setUpView(workbook, given.today);
    },
  ),
  forgetTable: request({ ...today, tabId }, (workbook, given) => {
    forgetTable(workbook, given.tabId);
    return setUpView(workbook, given.today);
  }),
  answerTab: request(
    { ...today, tabId, ...matter, answer: text },
    (workbook, { today: day, tabId: tab, about, written, answer }) => {
      answerTab(workbook, tab, { about, said: written, answer });
      return setUpView(workbook, day);
    },
  ),
  forgetTab: request(
    { ...today, tabId, ...matter },
    (workbook, { today: day, tabId: tab, about, written }) => {
      forgetTab(workbook, tab, { about, said: written });
      return setUpView(workbook, day);
    },
  ),
  answerColumn: request(
    {
      ...today,
      tabId,
      heading: text,
      column: z.int().check(z.gte(1)),
      field: z.optional(z.nullable(text)),
      unit: z.optional(text),
      dateOrder: z.optional(z.enum(["day first", "month first"])),
    },
    (workbook, { today: day, tabId: tab, ...answer }) => {
      answerColumn(workbook, tab, answer);
      return setUpView(workbook, day);
    },
  ),
  forgetColumn: request(
    {
      ...today,
      tabId,
      column: z.int().check(z.gte(0)),
      tag: z.nullable(text),
      about: z.enum(["meaning", "unit", "date order"]),
    },
    (workbook, given) => {
      forgetColumn(workbook, given.tabId, given);
      return setUpView(workbook, given.today);
    },
  ),
  answerName: request(
    { ...today, written: text, athlete: text, same: z.boolean() },
    (workbook, given) => {
      answerName(workbook, given.written, given.athlete, given.same);
      return rowCheck(workbook, given.today);
    },
  ),
  forgetName: request({ ...today, written: text, athlete: z.optional(text) }, (workbook, given) => {
    forgetName(workbook, given.written, given.athlete);
    return setUpView(workbook, given.today);
  }),
  answerSet: request({ ...today, set: text }, (workbook, given) => {
    answerSet(workbook, given.set, true);
    return rowCheck(workbook, given.today);
  }),
  forgetSet: request({ ...today, set: text }, (workbook, given) => {
    answerSet(workbook, given.set, false);
    return setUpView(workbook, given.today);
  }),
  forgetDamaged: request({ what: z.enum(keptMatters) }, (workbook, { what }) =>
    forgetDamaged(workbook, what),
  ),
  weekView: request({ ...today, monday: z.nullable(isoDay), changes }, (workbook, given) =>
    weekView(workbook, given.today, given.monday, given.changes as WeekChange[]),
  ),
  writeWeek: request(
    {
      ...today,
      monday: isoDay,
      changes,
      athletes: z.nullable(z.array(text)),
      again: z.optional(z.boolean()),
    },
    (workbook, given) =>
      writeProposedWeek(
        workbook,
        given.today,
        given.monday,
        given.changes as WeekChange[],
        given.athletes,
        given.again,
      ),
  ),
  writeSeason: request(today, (workbook, given) => writeSeason(workbook, given.today)),
  printPages: request(
    {
      ...today,
      kind: z.enum(["cards", "rack plan", "week page", "pictures"]),
      monday: z.nullable(isoDay),
      changes,
    },
    (workbook, given) =>
      printPages(workbook, given.today, given.kind, given.monday, given.changes as WeekChange[]),
  ),
  takeBackWeek: request({ ...today, monday: isoDay }, (workbook, given) =>
    takeBackWeek(workbook, isoFromDay(given.monday)),
  ),
} satisfies Readonly<Record<string, Request>>;

export type RequestName = keyof typeof requests;

/** Serves one request by name. Throws for a name that is none, whatever it is a property of. */
export function serveRequest(workbook: Workbook, name: string, message: unknown): unknown {
  if (!Object.prototype.propertyIsEnumerable.call(requests, name)) {
    throw new Error(bridgeWords.notAsked(name));
  }
  return requests[name as RequestName].run(workbook, message);
}
