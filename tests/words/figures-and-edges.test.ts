import { mostReps, singleFromSet } from "../../src/coaching/blocks/repetition-load";
import { dayDecisionWords } from "../../src/words/day-load";
import { timelineWords } from "../../src/words/diary-view";
import { dressOf } from "../../src/words/dress";
import {
  byHandWords,
  ifWrittenWords,
  isWeekTitle,
  weekDifferenceWords,
  weekTitleWords,
} from "../../src/words/next-week-tab";
import { bandAgainWords, bandParts, pageWords, spelled } from "../../src/words/pages";
import { answerLabel, askWords, waitingQuestions } from "../../src/words/questions";
import { repetitionsWords } from "../../src/words/reasons-figures";
import { jumpTrendReason } from "../../src/words/reasons-jump";
import { lineReason } from "../../src/words/reasons-line";
import { noteWords } from "../../src/words/reasons-notes";
import { partWords, readinessReason, readinessWords } from "../../src/words/reasons-readiness";
import { daysSetsWords, setToSetWords } from "../../src/words/reasons-set-to-set";
import { squadWords } from "../../src/words/reasons-squad";
import { refusalSentence } from "../../src/words/refusals";
import { mendWords, rowsReadWords } from "../../src/words/row-check";
import { sayRowIssue } from "../../src/words/row-issues";
import { seasonWrittenWords, weekCellWords } from "../../src/words/season-tab";
import { sidebarWords } from "../../src/words/sidebar";
import {
  bandSpeedWords,
  briefWords,
  consequenceWords,
  lineReasonWords,
  platesWords,
  shortWhyWords,
} from "../../src/words/week";
import { gymDaysWords } from "../../src/words/week-days";

/** Monday 6 April 2026. */
const monday = 20_549;

test.each([
  ["meaning", { about: "meaning", heading: "" }, "In Log, what is column AB? It has no heading."],
  ["meaning", { about: "meaning", heading: "Kg" }, "In Log, what is “Kg”?"],
  ["unit", { about: "unit", heading: "Load" }, "In Log, in what unit is “Load”?"],
  [
    "date order",
    { about: "date order", heading: "Day" },
    "In Log, how are the dates of “Day” written?",
  ],
] as const)("a column is asked about in one sentence: %s", (_, asked, sentence) => {
  expect(askWords({ tab: "Log", column: 28, ...asked })).toBe(sentence);
});

test.each([
  ["scheme order", "In Log, which stands first beside the load?", "Log, beside the load: x"],
  ["exercise", "In Log, which lift was done? The rows do not say.", "Log, the lift: x"],
  ["athlete", "Whose rows are in Log? They name no athlete.", "Log, the athlete: x"],
  ["bar", "In Log, how heavy is the bar, in kg?", "Log, the bar in “w”, kg: x"],
  ["set speed", "In Log, what is the one speed beside a load?", "Log, one speed: x"],
  ["speeds", "In Log, what are several speeds beside a load?", "Log, several speeds: x"],
  ["runs", "In Log, what are the bare numbers?", "Log, bare numbers: x"],
] as const)("a tab is asked about its %s, and the answer is listed", (about, question, label) => {
  const asked = { tab: "Log", about, written: "w" } as const;
  expect(askWords(asked)).toBe(question);
  expect(answerLabel({ ...asked, said: "x" })).toBe(label);
});

test("questions that wait are told with the first three of them", () => {
  const asked = ["Feel", "", "Zq", "Kit"].map(
    (heading, at) => ({ tab: "Log", about: "meaning", heading, column: at + 1 }) as const,
  );
  expect(waitingQuestions([])).toBe("");
  expect(waitingQuestions(asked.slice(0, 1))).toBe(
    "To answer under Set up: In Log, what is “Feel”?",
  );
  const three =
    "In Log, what is “Feel”? In Log, what is column B? It has no heading. In Log, what is “Zq”?";
  expect(waitingQuestions(asked.slice(0, 3))).toBe(`To answer under Set up: ${three}`);
  expect(waitingQuestions(asked)).toBe(`To answer under Set up: ${three} And 1 more.`);
});

test("an answer about a column names it, or says that it is gone", () => {
  const answer = { tab: "Log", about: "unit", heading: "Load", column: 3, said: "lb" } as const;
  expect(answerLabel(answer)).toBe("Log, “Load”: lb");
  expect(answerLabel({ ...answer, column: 0 })).toBe("Log, “Load” (no longer there): lb");
  expect(answerLabel({ ...answer, heading: "" })).toBe("Log, column 3: lb");
});

test("a changed setting says what it was and is, in its own unit", () => {
  const facts = { sessions: 1, sinceDay: monday, what: "barKg", before: 20, after: 15 };
  expect(noteWords({ code: "setting-changed", facts })).toBe(
    "1 session from 6 Apr with another bar (15 kg; baseline: 20 kg) is not compared.",
  );
  const tool = { ...facts, sessions: 3, what: "tool", before: "", after: "tool B" };
  expect(noteWords({ code: "setting-changed", facts: tool })).toBe(
    "3 sessions from 6 Apr with another tool (tool B; baseline: not recorded) are not compared.",
  );
  expect(noteWords({ code: "setting-changed", facts: { ...tool, ownBaseline: 1 } })).toBe(
    "3 sessions from 6 Apr with another tool (tool B; baseline: not recorded) are not compared. New baseline dates in the Athletes table would follow them.",
  );
  const odd = { ...facts, what: "light", before: "x", after: "y" };
  expect(noteWords({ code: "setting-changed", facts: odd })).toMatch(/another setting \(y;/);
});

test("another drop height is told with the usual one, when it is known", () => {
  const facts = { test: "Drop jump", sessions: 1, sinceDay: monday, usualCm: 30 };
  expect(noteWords({ code: "drop-height-changed", facts })).toBe(
    "1 day of drop jump from 6 Apr without the baseline’s drop height of 30 cm is not compared.",
  );
  expect(
    noteWords({ code: "drop-height-changed", facts: { ...facts, sessions: 2, usualCm: "" } }),
  ).toBe(
    "2 days of drop jump from 6 Apr with a drop height, which the baseline lacks, are not compared.",
  );
  expect(() => noteWords({ code: "no-such-note", facts: {} })).toThrow("no-such-note");
});

const part = { part: "speed", of: "Back squat", unit: "m/s", today: 0.66, usual: 0.6 } as const;
const more = { z: 1, pastRows: 8 };
const day = (of: object) =>
  ({ word: "as usual", day: monday, parts: [], needed: [], reason: null, size: 0, ...of }) as never;

test("a day's parts are said in their own units", () => {
  expect(partWords({ ...part, ...more } as never)).toBe(
    "back squat speed 10 % faster than usual at that load (0.66 m/s, usual 0.60)",
  );
  expect(partWords({ ...part, ...more, today: 0.54 } as never)).toMatch(
    /^back squat speed 10 % slower/,
  );
  const jump = { part: "jump", of: "Drop jump", today: 0.21, usual: 0.185, ...more };
  expect(partWords({ ...jump, unit: "s" } as never)).toBe("drop jump, contact 210 ms, usual 185");
  expect(partWords({ ...jump, today: 41.25, usual: 43, unit: "cm" } as never)).toBe(
    "drop jump 41.3 cm, usual 43",
  );
  const sore = { part: "soreness", of: "", unit: "points", today: 4, usual: 2.1, ...more };
  expect(partWords(sore as never)).toBe("soreness 4, usual 2.1");
});

test("a day without a word says what is missing; with one, its reason or that all is usual", () => {
  const few = { word: "too few rows", size: null };
  expect(readinessWords(day(few))).toBe("too few rows (no value recorded on 6 Apr)");
  const needed = [
    { part: "jump", of: "Box jump", rows: 3 },
    { part: "sleep", of: "", rows: 1 },
  ];
  expect(readinessReason(day({ ...few, needed }))).toBe("too few rows (1 more day of sleep)");
  expect(readinessReason(day({ size: null }))).toBe("as usual");
  expect(readinessReason(day({ reason: { ...part, ...more } }))).toMatch(
    /usual 0.60\), 8 earlier days$/,
  );
  expect(readinessReason(day({ parts: [{ part: "sleep" }, part] }))).toBe(
    "sleep, back squat speed within the usual",
  );
  const sore = { part: "soreness", of: "", unit: "points", today: 9, usual: 3, z: -3.5 };
  expect(readinessReason(day({ parts: [{ part: "sleep", z: -1.95 }, sore] }))).toBe(
    "sleep within the usual; standing out: soreness 9, usual 3",
  );
  const good = { ...sore, part: "mood", today: 9, usual: 5, z: 1.96 };
  expect(readinessReason(day({ parts: [sore, good] }))).toBe(
    "all together within the usual; standing out: soreness 9, usual 3; mood 9, usual 5",
  );
});

test("a jump trend without heights says its word; with them what moved and what could be told", () => {
  const trend = {
    word: "too few rows",
    baselineCm: null,
    nowCm: null,
    change: null,
    smallestChange: null,
    sinceDay: null,
    baselineDays: 6,
    nowDays: 4,
    daysNeeded: 0,
  };
  expect(jumpTrendReason(trend as never)).toBe("too few rows (1 more test day)");
  const known = { ...trend, word: "slipping", baselineCm: 47.1, nowCm: 45.2, change: -0.04 };
  expect(jumpTrendReason(known as never)).toBe("45.2 cm, −4 % from 47.1, 4 days against 6");
  const since = { ...known, sinceDay: monday, smallestChange: 0.03 };
  expect(jumpTrendReason(since as never)).toBe(
    "45.2 cm, −4 % from 47.1 since 6 Apr, smallest change that matters 3 %, 4 days against 6",
  );
  // What lasts is told as such, and is not called more than it is.
  const small = (change: number, word = "rising") =>
    jumpTrendReason({ ...since, word, change, smallestChange: 0.0251 } as never).split(", ")[2];
  expect(small(0.0234)).toBe("lasting but less than the 3 % that matters");
  expect(small(-0.0234, "slipping")).toBe("lasting but less than the 3 % that matters");
  expect(small(0.0251)).toBe("smallest change that matters 3 %");
  expect(small(0.0234, "holding")).toBe("smallest change that matters 3 %");
  expect(jumpTrendReason({ ...since, change: -0.026, smallestChange: 0.029 } as never)).toBe(
    "45.2 cm, −2.6 % from 47.1 since 6 Apr, lasting but less than the 2.9 % that matters, 4 days against 6",
  );
});

test("a line says its rows, its loads and what was left out", () => {
  const line = { setsUsed: 14, daysUsed: 1, lightestKg: 60, heaviestKg: 60, otherSettingSets: 0 };
  expect(lineReason(line as never)).toBe("14 sets on 1 day, 60 kg");
  expect(lineReason({ ...line, heaviestKg: 90, otherSettingSets: 1 } as never)).toBe(
    "14 sets on 1 day, 60 to 90 kg; 1 set in another setting (tool, mean or peak, bar, gym) left out",
  );
});

test("set to set without a habit asks for as many sessions as are missing", () => {
  const result = {
    word: "too few rows",
    leftUsualAtSet: null,
    sets: [],
    usualSessions: 2,
    notCompared: 1,
    lastVsFirst: -0.03,
    day: monday,
  };
  expect(setToSetWords(result as never)).toBe(
    "too few rows (2 more earlier sessions of as many sets); 1 set at another load or setting not compared",
  );
  expect(setToSetWords({ ...result, word: "as usual", notCompared: 0 } as never)).toBe(
    "as usual: last set −3 % against the first on 6 Apr",
  );
  // A picture names its day once.
  expect(daysSetsWords({ ...result, word: "as usual", notCompared: 0 } as never)).toBe(
    "6 Apr: as usual: last set −3 % against the first",
  );
});

test("a squad's false flags are expected in its own number", () => {
  const squad = (count: number) =>
    Array.from({ length: count }, () => ({ word: "holding" })) as never;
  expect(squadWords(squad(4), 0.1)).toMatch(/with 4 expect either in few seasons\.$/);
  expect(squadWords(squad(12), 0.1)).toMatch(/expect about one athlete of each a season\.$/);
  expect(squadWords(squad(40), 0.3)).toMatch(
    /^Of 40 athletes 40 are holding.*about twelve athletes of each/,
  );
  expect(squadWords(squad(1), 0.1)).toMatch(
    /^Of 1 athlete one is holding\. About one calm season in 10/,
  );
});

test("the day's load is said first, then why, for a phone", () => {
  expect(
    dayDecisionWords(
      { kind: "before the set", keepsFrom: null, loadKg: 85, builtKg: null } as never,
      null,
    ),
  ).toBe("usual by eye: lift 85");
  const lighter = {
    kind: "lighter",
    loadKg: 80,
    share: 0.059,
    slower: null,
    setsLeft: 0,
    plates: [],
  };
  expect(dayDecisionWords(lighter as never, null)).toBe("80 kg (−5.9 %): slow by eye");
  const told = { ...lighter, slower: 0.07, setsLeft: 2, plates: [20, 10] };
  expect(dayDecisionWords(told as never, 60)).toBe(
    "80 kg for the remaining 2 sets (−5.9 %): 0.07 m/s slower than usual at 60, 20+10 a side",
  );
});

test("words are dressed as fallen, risen, not known or plain", () => {
  expect(["well below usual", "above usual", "too few rows (1)", "holding"].map(dressOf)).toEqual([
    "low",
    "high",
    "unsure",
    "plain",
  ]);
});

test("a diary without an unusual session says so", () => {
  const sessions = [{ day: monday, side: 0 }];
  expect(timelineWords("Ilka", { sessions, marks: [] } as never)).toBe(
    "Ilka, 1 session from 6 Apr to 6 Apr; none unusual; pain or illness words on 0 days, diary figure far from own usual on 0 days, note or something new on 0 days.",
  );
});

test("titles of one week and of more are ours; a spoilt Monday is left out", () => {
  expect(weekTitleWords(["2026-06-29"])).toBe("Next week: 29 Jun to 5 Jul");
  const two = weekTitleWords(["2026-06-29", "no day", "2026-07-06"]);
  expect(two).toBe("Weeks of 29 Jun and 6 Jul");
  expect([two, "Weeks of my own"].map(isWeekTitle)).toEqual([true, false]);
});

test("what writing did is counted; kept cells are named up to twelve", () => {
  const none = { added: 0, changed: 0, removed: 0, same: 0, kept: [], deleted: [] };
  expect(weekDifferenceWords(none)).toBe("No rows.");
  expect(weekDifferenceWords({ ...none, added: 1, changed: 2, removed: 1, same: 4 })).toBe(
    "1 row new, 2 rows changed, 1 row taken out, 4 rows the same.",
  );
  const cells = Array.from({ length: 14 }, (_, i) => `C${i + 5}`);
  expect(weekDifferenceWords({ ...none, kept: cells })).toMatch(/C16 and 2 more\.$/);
  const lines = ["a", "b", "c", "d", "e"].map((name) => `2026-06-29 ${name} Name 1`);
  const removed = ["2026-06-29 Wren Ito 1"];
  const merge = { added: [], removed, same: [], kept: [], deleted: [] };
  expect(ifWrittenWords({ ...merge, changed: lines })).toBe(
    "If written: 5 rows changed, 1 row taken out. Changed: a Name, b Name, c Name, d Name and 1 more. Taken out: Wren Ito.",
  );
  expect(byHandWords(["day", "noRack", "colour"])).toBe(
    "Changed by you, kept until taken back: day, no rack, colour.",
  );
});

test("the Season tab says what was written, what stands and which cells are the coach's", () => {
  expect(seasonWrittenWords(12, 0, [])).toBe("Season: 12 weeks, nothing to change.");
  const cells = Array.from({ length: 13 }, (_, i) => `C${i + 5}`);
  expect(seasonWrittenWords(12, 1, cells)).toMatch(
    /1 cell written\. Yours, kept: C5.* and 1 more\.$/,
  );
  const race = { race: "R2, Town", matters: null, day: monday };
  expect(weekCellWords({ kind: "ordinary", races: [race] } as never)).toBe("R2 (C) 6 Apr");
});

test("bands, plates and numbers have their plain forms", () => {
  const numbers = { speed: (value: number) => value.toFixed(2) };
  const band = (from: number | null, to: number | null, repeatFrom: number | null = null) => ({
    ...{ from, to, repeatFrom },
    ...{ loadKg: 80, share: 0 },
  });
  const shown = [
    band(null, null),
    band(0.8, null),
    band(null, 0.7),
    band(0.7, 0.7),
    band(0.7, 0.8),
  ];
  expect(shown.map((one) => bandSpeedWords(one as never))).toEqual([
    "any speed",
    "0.80 or faster",
    "0.70 or slower",
    "0.70",
    "0.70 to 0.80",
  ]);
  const again = [
    ...[band(0.7, 0.8), band(0.7, 0.8, 0.7), band(0.7, 0.8, 0.78), band(0.7, 0.8, 0.8)],
    ...[band(null, 0.7, 0.69), band(0.8, null, 0.85)],
  ];
  expect(again.map((one) => bandAgainWords(one, numbers as never))).toEqual([
    "",
    "repeat the set first",
    "0.78 to 0.80: repeat the set first",
    "0.80: repeat the set first",
    "0.69 to 0.70: repeat the set first",
    "0.85 or faster: repeat the set first",
  ]);
  expect(shown.map((one) => bandParts(one as never, numbers as never).speed)).toEqual([
    "any speed",
    "0.80",
    "0.70",
    "0.70",
    "0.70 to 0.80",
  ]);
  expect([platesWords([]), platesWords([20, 2.5])]).toEqual(["empty bar", "20 + 2.5 a side"]);
  expect(spelled(137)).toBe("137");
  expect([1, 3].map(sidebarWords.questions)).toEqual(["One question", "3 questions"]);
  expect([1, 3].map(sidebarWords.rowsNotUsed)).toEqual([
    "1 row not used in full: see Rows",
    "3 rows not used in full: see Rows",
  ]);
  expect([1, 3].map(sidebarWords.inRows)).toEqual(["in 1 row", "in 3 rows"]);
});

test("reasons of a line name who, what and which race", () => {
  const say = (code: string, facts: object = {}) => lineReasonWords({ code, facts } as never);
  expect(say("modified-held", { mayDo: "cleared" })).toBe(
    "Cleared: load held until the Availability tab says full or its spell ends.",
  );
  expect(say("modified-held", { mayDo: "modified" })).toBe(
    "Modified: load held until the Availability tab says full or its spell ends.",
  );
  const limb = { exercise: "leg press", insteadOf: "back squat, low bar", site: "" };
  expect(say("limb", limb)).toMatch(/^Modified: leg press instead of back squat; ask/);
  expect(say("limb", { ...limb, site: "calf" })).toMatch(/^Calf: leg press/);
  const race = { day: monday, hours: 40, race: "R2 Town", matters: "A", limit: 72 };
  expect(say("day-before-race", race)).toBe(
    "Mon 6 Apr refused: 40 h before R2 Town, an A race (rule: 72 h).",
  );
  expect(say("day-before-race", { ...race, matters: "B" })).toMatch(/a B race/);
  expect(say("no-jumps", { site: "" })).toBe("Availability: no jumps until asked about.");
  expect(say("no-jumps", { site: "calf" })).toBe("Calf: no jumps until asked about.");
  expect(say("ahead")).toBe("If all before it goes as planned.");
  expect(say("contact-long")).toBe("Drop jump lower: contact was slow, past 0.25 s.");
  expect(say("novice-drop")).toBe("Novices drop from 20 cm or less.");
  for (const code of ["no-such-reason", "toString"]) expect(() => say(code)).toThrow(code);
});

test("the short reason is the first, and none where there is none", () => {
  const line = (codes: string[]) =>
    ({ reasons: codes.map((code) => ({ code, facts: {} })) }) as never;
  expect([briefWords(line([])), shortWhyWords(line([]))]).toEqual(["", ""]);
  expect(shortWhyWords(line(["race-week-held"]))).toBe(
    "The step waits until the week after the race.",
  );
  expect(shortWhyWords(line(["slipping-held"]))).toBe("No step up while slipping.");
  // A load's decimal point ends no sentence.
  const coarse = { code: "step-too-coarse", facts: { fromKg: 47.5, toKg: 47.5 } };
  expect(briefWords({ reasons: [coarse] } as never)).toBe("A step on at 47.5 kg");
  // Which step is the coach's own rule to change.
  expect(lineReasonWords(coarse)).toContain("more than the rules’ largest step.");
});

test.each([
  ["race-week-held", "The step waits until the week after the race"],
  ["reserve-short", "No more load"],
  ["under-18-no-supervisor", "Under 18, no supervisor named"],
  ["see-a-doctor", "See a doctor or physiotherapist"],
])("%s: the short reason is true beside what is proposed, and says why", (code, short) => {
  expect(briefWords({ reasons: [{ code, facts: {} }] } as never)).toBe(short);
});

test("a usual hold after lighter loads says what became of them: that is why it is read first", () => {
  const hold = { code: "hold-week", facts: { week: 2, of: 3 } };
  const plan = { code: "lighter-plan", facts: { from: 70, kg: 65 } };
  const day = { code: "lighter-day", facts: { lifted: 80, kg: 85, less: "slow" } };
  const brief = (...reasons: unknown[]) => briefWords({ reasons } as never);
  expect(brief(hold)).toBe("Hold: week 2 of 3");
  expect(brief(hold, plan)).toBe("Lighter than the 70 kg before it, and no row says why");
  expect(brief(hold, day)).toBe("80 kg last session, a slow day");
  const slipping = { code: "slipping-held", facts: {} };
  expect(brief(slipping, day)).toBe("No step up while slipping");
  const short = { code: "reserve-short", facts: { fromKg: 95, toKg: 85 } };
  expect(brief(slipping, day, short)).toBe("No step up while slipping; down from 95 to 85 kg");
});

test("what follows from a session: reserve, volume, contacts and hours to the race", () => {
  const session = {
    sets: 3,
    reps: 5,
    loadKg: 85,
    reserve: { reps: 1.5, from: "speeds" },
    contacts: 20,
    hoursToRace: 50.5,
    instead: null,
  };
  expect(consequenceWords(session as never)).toEqual([
    "About 1.5 repetitions in reserve at the cautious end: fewer than the two asked for.",
    "Volume load 1275 kg.",
    "At most 20 ground contacts.",
    "50 h to the next race.",
  ]);
  const other = { ...session, contacts: 0, hoursToRace: null };
  const reserve = (reps: number, from: "speeds" | "seen" = "speeds") =>
    consequenceWords({ ...other, reserve: { reps, from } } as never)[0];
  expect(reserve(3)).toBe("About 3 repetitions in reserve at the cautious end.");
  // The repetition table ends at ten.
  expect([10, 10.1, 28.5].map((reps) => reserve(reps))).toEqual([
    "About 10 repetitions in reserve at the cautious end.",
    "More than ten repetitions in reserve at the cautious end.",
    "More than ten repetitions in reserve at the cautious end.",
  ]);
  // At the load at which so many were written down as many are told, no tenth of one more.
  for (const reps of [3, 5])
    for (const left of [0, 1, 2, 3, 4, 5]) {
      const strength = singleFromSet(80, reps + left);
      if (!strength.ok) throw new Error(strength.refusal.code);
      const many = `${left} repetition${left === 1 ? "" : "s"}`;
      const few = left < 2 ? ": fewer than the two asked for" : "";
      expect(reserve(mostReps(80 / strength.value) - reps, "seen")).toBe(
        `About ${many} in reserve by those written down last${few}.`,
      );
    }
  // Speeds may well stand in the rows: an estimate is refused where loads are alike.
  expect(consequenceWords({ ...other, reserve: null } as never)[0]).toBe(
    "Repetitions in reserve not known: no strength estimate, none written down.",
  );
  expect(consequenceWords({ ...other, instead: { exercise: "leg press" } } as never)).toEqual([]);
});

test("the week's days: best, second best, and the rule each refused day breaks", () => {
  const refused = (code: string, of: object) => ({ day: monday, refused: { code, ...of } });
  const race = { race: "R2 Town", matters: "A" };
  const clash = { hours: 20.5, limit: 48 };
  const all = [
    refused("may-not-lift", {}),
    refused("key-run", clash),
    refused("before-race", { ...clash, race }),
    refused("after-race", { ...clash, race: { race: "R3", matters: null } }),
    refused("after-race", { ...clash, hours: 0.5, race }),
    { day: monday + 1, refused: null },
  ];
  expect(gymDaysWords({ best: [], second: [{ day: monday + 2 }], all } as never)).toEqual([
    "No day keeps every rule.",
    "Second best: Wed 8 Apr.",
    "Mon 6 Apr refused: nothing may be proposed then.",
    "Mon 6 Apr refused: within 48 h of a key run.",
    "Mon 6 Apr refused: within 48 h before R2 Town, an A race.",
    "Mon 6 Apr refused: within 48 h after R3, a C race.",
    "Mon 6 Apr refused: within 48 h after R2 Town, an A race.",
    "Lifting six hours from a run costs strength little; a key run the next day may still suffer.",
  ]);
  expect(gymDaysWords({ best: [{ day: monday }], second: [], all: [] } as never)).toEqual([
    "Best: Mon 6 Apr.",
  ]);
});

test("refusals count one as one", () => {
  const say = (code: string, facts: object) => refusalSentence({ code, facts } as never);
  expect(say("loss-few-reps", { reps: 0 })).toMatch(/no speed was given/);
  expect(say("loss-few-reps", { reps: 1 })).toMatch(/one was given/);
  expect(say("stack-unreadable", { found: "" })).toMatch(/^The stack is blank/);
  expect(say("stack-unreadable", { found: "x" })).toMatch(/^The stack “x” cannot be read/);
  expect(say("racks-too-few", { bars: 2, racks: 1 })).toMatch(/at 1 rack:/);
  expect(say("racks-too-few", { bars: 3, racks: 2 })).toMatch(/at 2 racks:/);
  expect(say("strength-too-wide", {})).toMatch(/too wide: more sets/);
  expect(say("strength-too-wide", { percent: 14 })).toMatch(/too wide \(± 14 %\): more sets/);
});

test("a mend that came too late says what stands in the cell now", () => {
  expect(mendWords.changedSince("G2", "", "“62”")).toBe(
    "G2 is blank now; “62” was listed. Nothing was written: check again.",
  );
  expect(mendWords.changedSince("G2", "62", "“62”")).toMatch(/^G2 is not asked about any more/);
});

test.each([
  ["day-is-number", {}, /^Format the cell as a date, or type/],
  ["day-is-number", { mend: "2026-05-12" }, /date \(it would be 2026-05-12\), or type/],
  ["supervisor-day", {}, /“A\. Name from 2026-05-05”/],
  [
    "supervisor-day",
    { either: "2026-05-04", or: "2026-04-05" },
    /could be 2026-05-04 or 2026-04-05/,
  ],
  ["day-questioned", {}, /^Check the year, the month and the day/],
  ["day-questioned", { mend: "2026-05-04" }, /^Type 2026-05-04, if day and month/],
] as const)("%s with %j says what to do", (code, facts, todo) => {
  const issue = {
    table: "Sets",
    code,
    row: 2,
    column: 7,
    cell: "G2",
    found: "",
    facts,
    dropsRow: false,
  };
  const said = sayRowIssue(issue as never);
  expect(said.found).toBe("blank");
  expect(said.whatToDo).toMatch(todo);
});

test("one of anything is said in the singular", () => {
  expect(repetitionsWords(1)).toBe("1 repetition");
  expect(repetitionsWords(0.96)).toBe("1 repetition");
  expect(repetitionsWords(1.1)).toBe("1.1 repetitions");
  expect(repetitionsWords(-1.5)).toBe("−1.5 repetitions");
  expect(pageWords.contacts(1)).toBe("1 contact in all.");
  expect(sidebarWords.manyRows(1)).toBe("1 row");
  expect(rowsReadWords(0, 1, 0)).toBe("0 of 1 row read");
});

test("thousands are parted by a narrow space, from five digits on, and by no mark that decimals have", () => {
  // SI Brochure, 9th edition, 5.4.4: groups of three by a space, no dots or commas; four digits as they are.
  expect(rowsReadWords(1204, 12110, 0)).toBe("1204 of 12\u202f110 rows read");
  expect(rowsReadWords(1000000, 1000000, 12345)).toBe(
    "1\u202f000\u202f000 of 1\u202f000\u202f000 rows read, 12\u202f345 under a name that is not among the athletes",
  );
});
