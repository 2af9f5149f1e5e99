import { type TabMatter, tabChoices, tabMatters } from "../../src/rows/layout/tab-question";
import { withTabAnswer } from "../../src/rows/layout/with-tab-answer";

const answered = (about: TabMatter, answer: string, said = "") =>
  withTabAnswer({ exercise: "back squat" }, about, said, answer);

test.each([
  ["scheme order", "sets × repetitions", { setsFirst: true }],
  ["scheme order", "repetitions × sets", { setsFirst: false }],
  ["set speed", "mean of the repetitions", { setSpeed: "mean of reps" }],
  ["set speed", "fastest repetition", { setSpeed: "best rep" }],
  ["speeds", "one for each set", { speeds: "each set" }],
  ["speeds", "one for each repetition", { speeds: "each rep" }],
  ["runs", "minutes", { runs: "minutes" }],
  ["runs", "kilometres", { runs: "km" }],
  ["athlete", " Oona Petrakell ", { athlete: "Oona Petrakell" }],
] as const)(
  "asked of %s, “%s” is taken beside what was answered before",
  (about, answer, taken) => {
    expect(answered(about, answer)).toEqual({ exercise: "back squat", ...taken });
  },
);

test("a lift answered anew takes the place of the one before", () => {
  expect(answered("exercise", "front squat")).toEqual({ exercise: "front squat" });
});

test("nothing, and words that are none of the choices, are no answer", () => {
  for (const about of tabMatters) {
    expect(answered(about, "  ")).toBeNull();
    if (tabChoices[about].length > 0) expect(answered(about, "either")).toBeNull();
  }
});

test.each([
  ["15", 15],
  ["12,5", 12.5],
  ["20 kg", 20],
  ["2", 2],
  ["40KG", 40],
  ["1.9", null],
  ["41", null],
  ["heavy", null],
  ["45 lb", null],
])("a bar of “%s” is %p kg", (answer, kg) => {
  const taken = answered("bar", answer, "their bar (15?)");
  expect(taken?.bars ?? null).toEqual(kg === null ? null : new Map([["their bar (15?)", kg]]));
});

test("each doubtful bar keeps its own mass", () => {
  const first = withTabAnswer({}, "bar", "old bar", "15")!;
  const second = withTabAnswer(first, "bar", "their bar", "20")!;
  expect([...second.bars!]).toEqual([
    ["old bar", 15],
    ["their bar", 20],
  ]);
  expect([...first.bars!]).toHaveLength(1);
});
