import fc from "fast-check";
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

test("among many lifts one is asked about just where it would be beside one of them alone, the first in the rows", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b"), minLength: 4, maxLength: 6 });
  const lift = fc.tuple(word, fc.constantFrom(" squat", " row")).map((one) => one.join(""));
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(lift, fc.constantFrom(1, 6)), {
        maxLength: 12,
        selector: ([name]) => name,
      }),
      (all) => {
        const counts = Object.fromEntries(all);
        const pairs = all.map(
          ([name]) =>
            all.flatMap(([other]) =>
              name === other
                ? []
                : asked({ [name]: counts[name]!, [other]: counts[other]! }).filter((said) =>
                    said.startsWith(`${name} ${counts[name]} `),
                  ),
            )[0] ?? [],
        );
        // Two spellings of one lift count together, which a pair does not know.
        fc.pre(new Set(all.map(([name]) => name.replace(/[ -]/g, ""))).size === all.length);
        expect(asked(counts)).toEqual(pairs.flat());
      },
    ),
  );
});

test("a text too long for a lift is no slip of another", () => {
  const long = "goblet squat with a long pause ".repeat(3).trim();
  expect(asked({ [`${long} now`]: 15, [`${long} nov`]: 3 })).toEqual([]);
});
