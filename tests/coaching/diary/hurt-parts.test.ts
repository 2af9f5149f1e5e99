import { hurtParts } from "../../../src/coaching/diary/hurt-parts";
import { saysUnwell } from "../../../src/coaching/diary/says-unwell";

test.each([
  ["achilles 3/10", ["achilles 3/10"]],
  ["Achilles: 1 of 10", ["achilles: 1 of 10"]],
  ["left calf", ["left calf"]],
  ["Calf (r) 2/10", ["calf (r) 2/10"]],
  ["calf", ["calf"]],
  ["L achilles tendon", ["l achilles tendon"]],
  ["knee 5/10", ["knee 5/10"]],
  ["left calf, right hip", ["left calf", "right hip"]],
  ["left calf 0/10, right calf 4/10", ["right calf 4/10"]],
  ["lower back", ["lower back"]],
  ["Wade links", ["wade links"]],
  ["re Achillessehne", ["re achillessehne"]],
  ["slept well; left shin.", ["left shin"]],
  ["both calves", ["both calves"]],
])("“%s” names %j as what hurts", (note, found) => {
  expect(hurtParts(note)).toEqual(found);
});

test.each([
  "calf fine",
  "achilles ok",
  "left calf better",
  "left calf. Fine now",
  "calf 0/10",
  "knee 3/10",
  "calf raise",
  "calf raise 8/10",
  "Calf raises, left calf raise",
  "calf sleeves",
  "knees out",
  "legs",
  "back",
  "arms and abs",
  "left",
  "hip thrust",
  "new shoes, left calf",
  "",
])("“%s” names none", (note) => {
  expect(hurtParts(note)).toEqual([]);
});

test("beside a set a side is of the set, and a part alone what it was for; in a diary neither", () => {
  for (const text of ["left leg", "right arm", "knee", "calf"]) {
    expect([text, saysUnwell(text, "set"), saysUnwell(text, "diary")]).toEqual([text, false, true]);
  }
  for (const text of ["left calf", "achilles 3/10", "achilles", "left knee"])
    expect([text, saysUnwell(text, "set"), saysUnwell(text, "run")]).toEqual([text, true, true]);
});
