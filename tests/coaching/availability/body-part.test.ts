import { bodyParts } from "../../../src/coaching/availability/body-part";

const sites = {
  foot: "Achilles, left calf, calves, ankle, ankles, foot, feet, heel, heels, toe, toes, plantar fascia",
  leg: "knee, both knees, patella, patellar tendon, hamstring, hamstrings, quad, quads, quadriceps, thigh, thighs, groin, groins, adductor, adductors, hip, hips, glute, gluteus medius, leg, legs",
  trunk: "lower back, lumbar, spine, neck, rib, ribs, abs, abdominal, trunk",
  arm: "shoulder, shoulders, elbow, elbows, wrist, wrists, hand, hands, finger, fingers, thumb, thumbs, arm, arms, collarbone",
};

test.each(Object.entries(sites))("what coaches write of the %s: %s", (part, written) => {
  for (const site of written.split(", ")) expect([site, bodyParts(site)]).toEqual([site, [part]]);
});

test("words that only begin or end alike name no part of the body", () => {
  for (const other of ["backpack", "setback", "handy", "toenail", "hippy", "calfskin", "chin", ""])
    expect([other, bodyParts(other)]).toEqual([other, []]);
});

test("a site that names two parts limits both", () => {
  expect(bodyParts("lower back into left hamstring")).toEqual(["leg", "trunk"]);
});
