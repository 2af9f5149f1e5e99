import { saysWhyNothing } from "../../../src/rows/value/why-nothing";

test.each([
  "out – back w/c 1 June",
  "OUT from w/c 13/4",
  "holiday until 12/5",
  "away 1–12 June",
  "Urlaub bis 12.5.",
  "krank bis 12.5",
  "injured, 2 weeks",
  "verletzt seit KW 23",
  "calf pain 4/10",
  "(away until 2026-06-12)",
  "out until June 3rd",
  "camp till 6/14",
])("“%s” says why nothing was done, with its days", (text) => {
  expect(saysWhyNothing(text)).toBe(true);
});

test.each([
  "80x5x5 calf pain",
  "sore 12.5",
  "12.5 sore",
  "injured 85",
  "out 60/70/80",
  "camp 10 km",
  "tempo 12/5",
  "injured",
  "ill 0.62",
  // Five sets of five.
  "5/5 sore",
  "L 5/5 sore",
])("“%s” may hold a figure, or no day at all", (text) => {
  expect(saysWhyNothing(text)).toBe(false);
});

test("more than two hundred letters are no cell that says why", () => {
  const long = (letters: number) => "injured until 12 June ".padEnd(letters, "x");
  expect([saysWhyNothing(long(200)), saysWhyNothing(long(201))]).toEqual([true, false]);
});
