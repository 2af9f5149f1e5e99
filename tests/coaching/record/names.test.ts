import { athleteNamed } from "../../../src/coaching/record/athlete-named";
import { exerciseKey } from "../../../src/coaching/record/exercise-key";
import { nameKey } from "../../../src/coaching/record/name-key";
import { ruleSources } from "../../../src/coaching/record/rule-sources";
import { ruleDefinitions, usualRules } from "../../../src/coaching/record/squad-rules";

test("a name is one however its letters are cased, spaced and put together", () => {
  const written = [
    "Zoë Brackenridge",
    "  zoë   BRACKENRIDGE ",
    // The two dots as a sign of their own, a space that does not break, a joiner nobody sees.
    "Zoe\u0308 Brackenridge",
    "Zoë\u00a0Brackenridge",
    "Zoë\tBracken\u200bridge",
    "\ufeffZoë Bracken\u00adridge",
  ];
  expect([...new Set(written.map(nameKey))]).toEqual(["zoë brackenridge"]);
});

test("names in plain letters are as they are lower-cased, but for spaces around them and more than one between", () => {
  const written = [
    "Bea Lindqvale",
    "BEA LINDQVALE",
    " Bea Lindqvale",
    "Bea Lindqvale ",
    "Bea  Lindqvale",
  ];
  expect(written.map(nameKey)).toEqual(written.map(() => "bea lindqvale"));
  expect(["O'Hara-Smith", "A", " ", ""].map(nameKey)).toEqual(["o'hara-smith", "a", "", ""]);
});

test("names further apart than that are never made one", () => {
  const others = ["Zoe Brackenridge", "Zoë Brackenrigde", "Zoë-Brackenridge", "ZoëBrackenridge"];
  expect(new Set(["Zoë Brackenridge", ...others].map(nameKey)).size).toBe(5);
});

test.each([
  "Back squat",
  "squat",
  "High-bar squat",
  "high bar squat",
  "High-bar back squat",
  "high bar back squat",
  "BS",
  "Kniebeuge",
  "KB",
  "SQ",
  "BSq",
  "back sq.",
  "Barbell squat",
  "BB back squats",
])("%s is the back squat", (written) => {
  expect(exerciseKey(written)).toBe("back squat");
});

test("several of a lift are that lift; a press is no plural", () => {
  for (const squats of ["Squats", "back squats", "Kniebeugen", "High-bar squats", "BS"])
    expect(exerciseKey(squats)).toBe("back squat");
  expect(exerciseKey("Step ups")).toBe(exerciseKey("step up"));
  expect(exerciseKey("Bench press")).toBe("bench press");
});

test("a lift with hyphens, points or shortened is the same lift", () => {
  for (const [one, other] of [
    ["Trap-bar deadlift", "trap bar deadlifts"],
    ["TBDL", "hex-bar DL"],
    ["RDLs", "Romanian deadlift"],
    ["FS", "front-squat"],
    ["DL", "Dead lift"],
    ["Rear-foot-elevated split squat", "rear foot elevated split squats"],
  ] as const)
    expect(exerciseKey(one)).toBe(exerciseKey(other));
  const apart = ["DL", "RDL", "TBDL", "FS", "SQ", "split squat", "hip thrust"].map(exerciseKey);
  expect(new Set(apart).size).toBe(7);
});

test("another lift is its own, under any spelling", () => {
  expect(exerciseKey(" Front  Squat")).toBe("front squat");
  expect(exerciseKey("split squat")).toBe("split squat");
});

test("every rule's usual value lies between its least and its most, and has a source", () => {
  for (const [key, { usual, least, most }] of Object.entries(ruleDefinitions)) {
    expect([key, least <= usual && usual <= most]).toEqual([key, true]);
    expect(usualRules[key as keyof typeof usualRules]).toBe(usual);
  }
  expect(Object.keys(ruleSources).sort()).toEqual(Object.keys(ruleDefinitions).sort());
  for (const [key, source] of Object.entries(ruleSources))
    expect([key, source]).toEqual([key, expect.stringMatching(/\w{4}.* \w/)]);
});

test("the row of an athlete is found under any spelling of the name, and none of another's", () => {
  const rows = [{ athlete: "Tomas Reyerson" }, { athlete: "Zoë  Brackenridge" }];
  expect(athleteNamed(rows, "zoë brackenridge")).toBe(rows[1]);
  expect(athleteNamed(rows, "Tomas Reyer")).toBeUndefined();
});
