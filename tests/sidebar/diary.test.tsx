import render from "preact-render-to-string";
import type { DiaryView } from "../../src/actions/messages";
import type { Event } from "../../src/sidebar/event";
import { type State, startState } from "../../src/sidebar/state";
import { update } from "../../src/sidebar/update";
import { Sidebar } from "../../src/sidebar/view/sidebar";
import { squad } from "./views";

const athlete = "Tomas Reyerson";
const today = "2026-06-28";
const line = squad.lines[0]!;
const plain = { unit: "kg", mark: "." } as const;
const athleteView = { numbers: plain, line, season: null, loadSpeed: null, sets: null };
const diary: DiaryView = {
  athlete,
  first: "1 day with words of pain or illness: 23 Jun (sore). Ask first.",
  picture: {
    athlete,
    from: "2026-06-02",
    to: "2026-06-23",
    sessions: [
      { day: "2026-06-02", size: 0.4, side: 0 },
      { day: "2026-06-23", size: -2.1, side: -1 },
    ],
    band: 1.28,
    marks: [{ day: "2026-06-23", kind: "pain or illness" }],
    inWords: "2 sessions, one slow.",
  },
  days: [
    {
      day: "2026-06-23",
      dayWords: "23 Jun",
      value: "box jump −8 %",
      size: "2 own wobbles below usual",
      stoodOut: ["Look first: sore.", "note: “<i>shin</i> sore”"],
      answerTo: "Diary L223",
      noAnswer: "",
    },
    {
      day: "2026-06-09",
      dayWords: "9 Jun",
      value: "box jump −8 %",
      size: "2 own wobbles below usual",
      stoodOut: ["nothing recorded that stood out: ask"],
      answerTo: null,
      noAnswer: "Diary has no row of Tomas Reyerson on 9 Jun.",
    },
  ],
  noDays: "",
  items: [{ item: "sleep", words: "No link to be seen over 17 days." }],
  noItems: "",
};
const opened: State = { ...startState(today), view: "squad", squad, athlete };
const diaryAsk = { name: "diaryView", message: { today, athlete } };
const athleteAsk = { name: "athleteView", message: { today, athlete } };
const step = (state: State, event: Event) => update(state, event);
const shown = (state: Partial<State>) =>
  render(<Sidebar state={{ ...opened, ...state }} dispatch={() => {}} />);
const words = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

test("in the squad the diary is asked for once the athlete's page can be read", () => {
  const { state, asks } = step(opened, {
    type: "answered",
    ask: athleteAsk,
    answer: athleteView,
  });
  expect([state.athleteView, state.busy, asks]).toEqual([
    athleteView,
    "Reading the diary",
    [diaryAsk],
  ]);
  const done = step(state, { type: "answered", ask: diaryAsk, answer: diary }).state;
  expect([done.diary, done.busy]).toEqual([diary, null]);
});

test("in the week's view an opened athlete's diary is not read", () => {
  const { asks } = step(
    { ...opened, view: "week" },
    { type: "answered", ask: athleteAsk, answer: athleteView },
  );
  expect(asks).toEqual([]);
});

test("one athlete's diary is never shown under another's name", () => {
  const other = step({ ...opened, diary }, { type: "opened athlete", athlete: "Priya Tellander" });
  expect(other.state.diary).toBeNull();
  const late = step(other.state, { type: "answered", ask: diaryAsk, answer: diary });
  expect(late.state.diary).toBeNull();
  expect(step({ ...opened, diary }, { type: "closed athlete" }).state.diary).toBeNull();
  expect(step({ ...opened, diary }, { type: "chose view", view: "rows" }).state.diary).toBeNull();
});

test("after an answer is written it is said, and that athlete's diary is read again", () => {
  const ask = {
    name: "writeDiaryAnswer",
    message: { today, athlete, day: "2026-06-23", answer: "exam" },
  };
  const { state, asks } = step(
    { ...opened, diary },
    { type: "answered", ask, answer: { said: "Diary L223: the answer is written." } },
  );
  expect([state.said, state.squad, asks]).toEqual([
    "Diary L223: the answer is written.",
    squad,
    [diaryAsk],
  ]);
});

test("a failed writing leaves the page and what was typed; trying again reads the athlete", () => {
  const ask = { name: "writeDiaryAnswer", message: { today, athlete } };
  const { state } = step({ ...opened, diary }, { type: "failed", ask, message: "No such row." });
  expect([state.diary, state.error]).toEqual([diary, "No such row."]);
  expect(step(state, { type: "asked again" }).asks).toEqual([athleteAsk]);
});

test("what to look at first stands before the picture, the days and the figures", () => {
  const text = words(shown({ athleteView, diary }));
  const places = ["words of pain or illness", "2 sessions, one slow.", "Days to ask about"];
  const at = [...places, "box jump −8 %", "What differed", "No link to be seen"].map((part) =>
    text.indexOf(part),
  );
  expect(at.every((place) => place >= 0)).toBe(true);
  expect(at).toEqual([...at].sort((a, b) => a - b));
});

test("a day with a row has a named field that says where it goes; one without says why not", () => {
  const html = shown({ athleteView, diary });
  expect(html.match(/<input/g)).toHaveLength(1);
  expect(words(html)).toMatch(/Answer for 23 Jun.*Goes to Diary L223/);
  expect(words(html)).toContain("Diary has no row of Tomas Reyerson on 9 Jun.");
  expect(html).toMatch(/<button[^>]*disabled[^>]*>Write into the Diary/);
});

test("a note is shown as typed, whatever signs are in it", () => {
  const html = shown({ athleteView, diary });
  expect(html).toContain("&lt;i>shin&lt;/i> sore");
  expect(html).not.toContain("<i>shin");
});
