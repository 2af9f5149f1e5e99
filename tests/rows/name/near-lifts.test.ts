import { nearLifts } from "../../../src/rows/name/near-lifts";

/** So many rows of each exercise, in order. */
const rowsOf = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts).flatMap(([exercise, count]) => Array(count).fill({ exercise }));
const asked = (counts: Readonly<Record<string, number>>) =>
  nearLifts(rowsOf(counts)).map(({ written, rows, near, nearRows }) =>
    [written, rows, near, nearRows].join(" "),
  );

test.each([
  ["Black squat", "back squat"],
  ["bakc squat", "Back squat"],
  ["Squatt", "squat"],
  ["trap bar deadlft", "trap bar deadlift"],
  ["trapbar deadlift", "trap bar deadlift"],
  ["stepup", "step-up"],
  ["romanian deadlfit", "Romanian deadlift"],
])("“%s” in few rows beside “%s” in many is asked about", (written, near) => {
  expect(asked({ [near]: 15, [written]: 3 })).toEqual([`${written} 3 ${near} 15`]);
});

test.each([
  ["back squat", "hack squat"],
  ["hack squat", "back squat"],
  ["box squat", "back squat"],
  ["front squat", "back squat"],
  ["half squat", "back squat"],
  ["wall squat", "ball squat"],
  ["side lunge", "slide lunge"],
  ["slide lunge", "side lunge"],
  ["leg press", "leg curl"],
  ["squat A", "squat B"],
  ["squat 1", "squat 2"],
  ["step-up 20cm", "step-up 30cm"],
  ["row", "bow"],
  // One lift already.
  ["Squats", "back squat"],
])("“%s” beside “%s” is never asked about", (written, near) => {
  expect(asked({ [near]: 100, [written]: 1 })).toEqual([]);
});

test("a lift in a fifth of the other's rows or more is a lift of its own", () => {
  expect(asked({ "back squat": 14, "black squat": 3 })).toEqual([]);
});

test("all spellings of a lift count together, on either side", () => {
  expect(asked({ "back squat": 8, Squats: 7, "black squat": 2, "Black Squat": 1 })).toEqual([
    "black squat 3 back squat 15",
  ]);
});
