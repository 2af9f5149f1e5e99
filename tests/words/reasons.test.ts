import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { squadHold } from "../../src/coaching/hold/squad-hold";
import { usualRules } from "../../src/coaching/record/squad-rules";
import { squadIndex } from "../../src/coaching/series/squad-index";
import { dayWords } from "../../src/words/days";
import { percentWords, signedPercentWords, trimmed } from "../../src/words/reasons-figures";
import { holdReason, holdWords, movedWords, sinceWords } from "../../src/words/reasons-hold";
import { noteWords } from "../../src/words/reasons-notes";
import { readinessReason, readinessWords } from "../../src/words/reasons-readiness";
import { setToSetWords } from "../../src/words/reasons-set-to-set";
import { squadWords } from "../../src/words/reasons-squad";
import { inventedSeason, sessionDay } from "../coaching/series/invented-season";
import { codesIn } from "./codes-in";

const end = sessionDay(29);
const holdOf = (sessions: number, level: (s: number) => number = () => 1) =>
  squadHold({
    index: squadIndex(inventedSeason("Ilka Brandmoor", sessions, level), end),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).of("Ilka Brandmoor");

test("figures are written as a coach would", () => {
  expect([8.4, 1.44, 0, 0.04].map(percentWords)).toEqual(["8 %", "1.4 %", "0 %", "0 %"]);
  expect([-8.4, 3, -0.01].map(signedPercentWords)).toEqual(["−8 %", "+3 %", "0 %"]);
  expect([-2.5, 2.0, -0.001].map((value) => trimmed(value, 1))).toEqual(["−2.5", "2", "0"]);
});

test("a slip is told with its value, size, date, wobble and rows", () => {
  const hold = holdOf(30, (s) => (s < 14 ? 1 : 0.92));
  expect(holdReason(hold)).toMatch(
    /^(back squat speed|box jump) \d+ % under baseline since about \d+ (May|Jun)( \(± \d+ days?\))?, wobble [\d.]+ %, \d+ sessions against 6$/,
  );
  expect(sinceWords(hold)).toMatch(/^\d+ May( \(± \d+ days?\))?$/);
});

test("a word that rests on old sessions says of when they are, and no loss that would show", () => {
  const lateBy = (days: number, level?: (s: number) => number) =>
    holdReason({ ...holdOf(30, level), asOf: end + days });
  expect(lateBy(14)).toMatch(/ against 6; a loss of /);
  expect(lateBy(15)).toMatch(/ from baseline, .* against 6; nothing measured since \d+ \w+$/);
  const fallen = (s: number) => (s < 14 ? 1 : 0.92);
  expect(lateBy(14, fallen)).toMatch(/ against 6$/);
  expect(lateBy(15, fallen)).toMatch(/ against 6; nothing measured since \d+ \w+$/);
});

test("holding says what loss would show", () => {
  expect(holdReason(holdOf(30))).toMatch(
    /^back squat speed [+−]?[\d.]+ % from baseline, wobble [\d.]+ %, last 4 sessions against 6; a loss of [\d.]+ % would usually show within six more sessions$/,
  );
});

test("too few rows say how many more of what", () => {
  expect(holdWords(holdOf(5))).toBe("too few rows (3 more back squat sessions)");
  expect(holdWords(holdOf(7))).toBe("too few rows (1 more back squat session)");
  expect(holdWords(holdOf(0))).toBe("too few rows (no sets or jumps recorded)");
});

test("contact time is longer or shorter, not under or over", () => {
  const measure = {
    kind: "contact time" as const,
    of: "drop jump",
    baselineRows: 6,
    rowsAfter: 6,
    rowsSince: 2,
    change: -21.8,
    changeError: 2,
    wobble: 3,
    baselineValue: 0.19,
    nowValue: 0.243,
  };
  expect(movedWords(measure)).toBe("contact time 28 % longer (243 ms)");
  // Holding: the change carries the value's own sign there too, 4 on the log scale being 4.1 %.
  expect(holdReason({ ...holdOf(30), value: { ...measure, change: -4 } })).toMatch(
    /^contact time \+4 % from baseline/,
  );
});

test("a day without rows says so, a slow one says by how much", () => {
  const day = {
    athlete: "Ilka Brandmoor",
    day: end,
    word: "too few rows" as const,
    size: null,
    reason: null,
    parts: [],
    needed: [],
  };
  expect(readinessWords(day)).toMatch(/^too few rows \(no value recorded on \d+ Jul\)$/);
  const part = { part: "speed" as const, of: "Back squat", unit: "m/s" as const };
  const slow = { ...part, z: -2, today: 0.63, usual: 0.7, pastRows: 12 };
  expect(
    readinessReason({ ...day, word: "below usual", size: -1.6, reason: slow, parts: [slow] }),
  ).toBe(
    "back squat speed 10 % slower than usual at that load (0.63 m/s, usual 0.70), 12 earlier days",
  );
});

test("the set that left the usual is named with the range, and whether the sets after it were usual", () => {
  const set = { set: 4, change: -0.12, usual: -0.03, usualLow: -0.09, usualHigh: 0.03 };
  const left = {
    day: end,
    setsUsed: 5,
    secondVsFirst: -0.01,
    lastVsFirst: -0.12,
    usualLastVsFirst: -0.03,
    usualSessions: 8,
    leftUsualAtSet: 4,
    word: "slower than usual",
    sets: [set],
    notCompared: 1,
  } as const;
  const range = "−12 % against the first, usual −3 % (−9 % to +3 %)";
  expect(setToSetWords(left)).toBe(
    `slower than usual from set 4: ${range}; 1 set at another load or setting not compared`,
  );
  const after = (...changes: number[]) =>
    setToSetWords({
      ...left,
      sets: [set, ...changes.map((change, at) => ({ ...set, set: 5 + at, change }))],
      notCompared: 0,
    });
  expect(after(-0.09, 0.03)).toBe(`slower than usual only in set 4: ${range}`);
  expect(after(-0.02, -0.1)).toBe(`slower than usual from set 4: ${range}`);
  expect(after(0.04)).toBe(`slower than usual from set 4: ${range}`);
});

test("a squad is told how many false flags to expect", () => {
  const squad = [
    ...Array.from({ length: 8 }, () => holdOf(30)),
    holdOf(30, (s) => (s < 14 ? 1 : 0.92)),
    holdOf(3),
  ];
  expect(squadWords(squad, 0.1)).toBe(
    "Of 10 athletes one is slipping, eight holding, one with too few rows. About one calm season in 10 is called slipping by chance, and at most as many rising; with 10 expect about one athlete of each a season.",
  );
});

test("every note code that the season can give has words, and none says why", () => {
  const folder = join(__dirname, "../../src/coaching/hold");
  const files = readdirSync(folder, { recursive: true }) as string[];
  const source = files.flatMap((file) =>
    file.endsWith(".ts") ? [readFileSync(join(folder, file), "utf8")] : [],
  );
  const given = source.flatMap((text) =>
    [...text.matchAll(/code:\s*(?:[^"{}]*\?\s*)?"([a-z-]+)"(?:\s*:\s*"([a-z-]+)")?/g)].flatMap(
      ([, a, b]) => (b ? [a!, b] : [a!]),
    ),
  );
  const noteCodes = new Set(codesIn("reasons-notes.ts"));
  expect(new Set(given)).toEqual(noteCodes);
  const facts = {
    kind: "bar speed",
    of: "back squat",
    sessions: 2,
    sinceDay: end,
    day: end,
    to: end,
    what: "barKg",
    before: 20,
    after: 15,
    test: "drop jump",
    usualCm: 30,
    attempts: 1,
    rows: 1,
    percent: 4,
    weeks: 50,
    sets: 2,
    exercise: "Back squat",
    loadKg: 180,
    speed: 0.62,
    athletes: 4,
    followed: 9,
    reading: "bar speed",
    word: "slipping",
    how: "at once",
    correlation: 0.3,
    athlete: "Ilka Brandmoor",
  };
  for (const code of noteCodes) {
    const sentence = noteWords({ code, facts });
    expect(sentence).toMatch(/^[A-Z\d].*\.$/);
    expect(sentence).not.toMatch(/because|score|target|max|undefined|NaN|\d-\d/i);
  }
});

test("a change that many share says what to look at, and that it may be theirs", () => {
  const facts = { athletes: 7, followed: 12, day: end, reading: "bar speed" };
  const said = (how: string, word: string, reading = "bar speed") =>
    noteWords({ code: "one-date", facts: { ...facts, how, word, reading } }).split(
      dayWords(end),
    )[1];
  expect(
    noteWords({ code: "one-date", facts: { ...facts, how: "at once", word: "slipping" } }),
  ).toBe(
    `7 of 12 athletes followed are slipping in bar speed from about ${dayWords(end)}: look at the tool first; if nothing changed there, the fall is theirs.`,
  );
  expect(said("at once", "rising", "jumps")).toBe(
    ": look at the tool, the floor or the plates first; if nothing changed there, the rise is theirs.",
  );
  expect(said("in both", "slipping")).toBe(
    ", and the squad’s jumps fell too, which no one tool does: look at what they had in common, such as runs, races, travel or illness.",
  );
  expect(said("in both", "rising", "jumps")).toBe(
    ", and the squad’s bar speeds rose too, which no one tool does: the rise is likely theirs.",
  );
  expect(said("little by little", "slipping")).toBe(
    ", little by little, which a tool seldom does: look at what they had in common, such as runs, races, travel or illness.",
  );
  expect(said("little by little", "rising")).toBe(
    ", little by little, which a tool seldom does: the rise is likely theirs.",
  );
});
