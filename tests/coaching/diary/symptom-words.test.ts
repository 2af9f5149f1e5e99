import { symptomWords } from "../../../src/coaching/diary/symptom-words";

test("pain rated under four of ten is slight; on a shorter scale, or as days, it is not", () => {
  expect(symptomWords("Pain 0-10: 3; slept well")).toEqual([]);
  expect(symptomWords("Any pain or injury?: 2")).toEqual([]);
  expect(symptomWords("left knee pain: 2 of 10")).toEqual([]);
  expect(symptomWords("Pain 0-10: 4")).toEqual(["pain"]);
  expect(symptomWords("Pain 1-5: 3 of 5")).toEqual(["pain"]);
  expect(symptomWords("pain: 3 days now")).toEqual(["pain"]);
  expect(symptomWords("pain; sleep: 2")).toEqual(["pain"]);
});

test.each([
  ["stomach bug", ["stomach", "bug"]],
  ["a bit unwell", ["unwell"]],
  ["rolled left ankle on a root", ["rolled left ankle"]],
  ["pulled my hamstring", ["pulled my hamstring"]],
  ["foam rolled calves, pulled the bar", []],
  ["douleur au genou, fièvre", ["douleur", "fièvre"]],
  ["me duele, fiebre", ["fiebre"]],
  ["lite sjuk", ["sjuk"]],
  ["pijn in de kuit", ["pijn"]],
  ["bugbear", []],
])("“%s” speaks of %j", (note, found) => {
  expect(symptomWords(note)).toEqual(found);
});
