import { jumpSets } from "../../src/coaching/next-week/jumps/jump-sets";
import { sessionPlan } from "../../src/coaching/next-week/session/session-plan";
import { assistanceWords, itemWords } from "../../src/words/session";

const given = {
  lift: "back squat",
  sets: 2,
  reps: 5,
  loadKg: 85,
  markerKg: 67.5,
  jumps: jumpSets(30, 20),
  noJumps: false,
  isCut: false,
  state: { soreness: null, lastWord: null },
  missing: [],
  noPlates: [],
  lastLoad: () => null,
} as const;

test("assistance in one line, shorter in a race week, swapped when sore", () => {
  expect(assistanceWords(sessionPlan(given))).toBe(
    "rear-foot-elevated split squat, weight opposite 2×6; seated twist 2×8; by feel, 2–3 in reserve",
  );
  expect(assistanceWords(sessionPlan({ ...given, isCut: true }))).toMatch(/1×6.*1×8; by feel/);
  const sore = { soreness: { day: 1, value: 7 }, lastWord: null };
  expect(assistanceWords(sessionPlan({ ...given, state: sore }))).toBe(
    "step-up 1×6 (for rear-foot-elevated split squat; sore: ask first); seated twist 1×8; by feel, 2–3 in reserve",
  );
});

test("the last load done stands with it, the split squat's in the hand opposite the working leg", () => {
  const lastLoad = (exercise: string) => (/split squat/.test(exercise) ? 12 : null);
  expect(assistanceWords(sessionPlan({ ...given, lastLoad }))).toBe(
    "rear-foot-elevated split squat 2×6, 12 kg in the opposite hand; seated twist 2×8, by feel, 2–3 in reserve",
  );
});

test("without a rack, and with a limb to spare, the alternative and why", () => {
  expect(assistanceWords(sessionPlan({ ...given, missing: ["rack"] }))).toMatch(
    /^leg press 2×5 \(for back squat; no rack\); rear-foot-elevated/,
  );
  const knee = assistanceWords(sessionPlan({ ...given, missing: ["leg", "rack"] }));
  expect(knee).toMatch(/^single-leg press, other leg 2×5 \(for back squat; spared: ask first\)/);
  expect(knee).toMatch(/split squat, other leg only 2×6/);
  const back = assistanceWords(sessionPlan({ ...given, missing: ["trunk"] }));
  expect(back).toMatch(/side plank 2×8 \(for seated twist; spared: ask first\)$/);
});

test("no jumps is said of each", () => {
  const words = sessionPlan({ ...given, noJumps: true }).map(itemWords);
  expect(words).toContain("straight-leg box jump: no jumps until asked about");
});
