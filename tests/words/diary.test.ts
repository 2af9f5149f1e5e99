import type { Finding } from "../../src/coaching/diary/finding";
import {
  countsWords,
  findingWords,
  isNoLink,
  noLinksWords,
  symptomCaution,
  symptomWordsOf,
  unusualDayWords,
  unusualValueWords,
} from "../../src/words/diary";

const finding: Finding = {
  athlete: "Priya Tellander",
  athletes: 1,
  item: "sleep",
  kind: "amount",
  unit: "h",
  word: "goes together",
  days: 32,
  daysWith: 10,
  border: 6,
  side: "under",
  value: { kind: "bar speed", of: "back squat" },
  difference: 2.4,
  step: 1,
  low: 0.9,
  high: 3.9,
  p: 0.0004,
  adjustedP: 0.003,
  itemsLookedAt: 8,
  oddIs: "slow",
  oddDays: 8,
  oddDaysWith: 7,
  otherDays: 24,
  otherDaysWith: 3,
  writtenAfter: 2,
};
const nothing = { difference: null, low: null, high: null, p: null, adjustedP: null } as const;

test("a link is said with its size, its interval, its counts and what was looked at", () => {
  expect(findingWords(finding)).toBe(
    "Goes together over 32 days: an hour more sleep, back squat speed +2 % (95 %: +0.9 % to +4 %); 7 of 8 slow days had sleep under 6 h, 3 of 24 other days. Chance of seeing this without a link 0.3 % (the season's slow drift and the weekday taken out, 8 items looked at). It does not say which way it works: ask. 2 days written after the session left out.",
  );
});

test("an interval clear of zero is never beside the words that no link is to be seen", () => {
  const seen = { ...finding, word: "no link seen", p: 0.08, adjustedP: 0.24 } as Finding;
  for (const [low, high] of [
    [0.9, 3.9],
    [-3.9, -0.9],
  ]) {
    expect(findingWords({ ...seen, low: low!, high: high! })).toMatch(/^Not enough to call a link/);
  }
  expect(findingWords({ ...seen, low: -0.4, high: 3.9 })).toMatch(/^No link to be seen/);
});

test("items without a link are told together, by how many days each has; a close one is not among them", () => {
  const none = { ...finding, word: "no link seen", p: 0.4, low: -1, high: 2, days: 17 } as Finding;
  expect(isNoLink(none)).toBe(true);
  for (const over of [{ p: 0.05 }, { low: 0.1 }, { high: -0.1 }, { athletes: 2 }])
    expect(isNoLink({ ...none, ...over })).toBe(false);
  expect(isNoLink({ ...none, word: "goes together" })).toBe(false);
  const other = { ...none, item: "mood", days: 12 };
  expect(noLinksWords([none, { ...none, item: "soreness" }, other])).toBe(
    "No link to be seen in 17 days: sleep, soreness; in 12 days: mood. The season's slow drift and the weekday taken out, 8 items looked at.",
  );
});

test("a run's load is named as one where its days are counted", () => {
  // The border lies an SD from an athlete's usual: half of all days lie under the usual itself.
  expect(countsWords({ ...finding, border: null } as Finding)).toMatch(
    /had sleep well under the athlete's own usual, /,
  );
  const load = { item: "run the day before", unit: "load", border: 336, step: 100 } as const;
  expect(countsWords({ ...finding, ...load, side: "over" } as Finding)).toBe(
    "7 of 8 slow days had a load over 336 of the run the day before, 3 of 24 other days",
  );
});

test("each word has its sentence, and none says why", () => {
  const said = [
    finding,
    { ...finding, word: "no link seen", p: 0.4, adjustedP: 0.8 },
    { ...finding, word: "no link seen", p: 0.02, adjustedP: 0.16 },
    { ...finding, ...nothing, word: "always the same" },
    { ...finding, ...nothing, word: "not enough days", days: 9 },
    { ...finding, ...nothing, word: "not enough days", kind: "yes or no", daysWith: 2 },
    { ...finding, athletes: 10, athlete: "", border: null, oddDays: 0 },
  ].map((one) => findingWords(one as Finding));
  expect(new Set(said).size).toBe(said.length);
  for (const sentence of said) {
    expect(sentence).toMatch(/\d+ days?/);
    expect(sentence).not.toMatch(/because|caus|due to|score|NaN|null|undefined/i);
  }
  expect(said[4]).toContain("Not enough days to say: 9 days of 12 needed.");
});

test("a contact time is told with its own sign: slower days are longer contacts", () => {
  const value = { kind: "contact time", of: "drop jump" } as const;
  expect(unusualValueWords({ value, valuePercent: -9 })).toBe("contact time +9 %");
  const longer = { ...finding, value, difference: -2.4, low: -3.9, high: 0.5 } as Finding;
  expect(findingWords(longer)).toContain("contact time +2 % (95 %: −0.5 % to +4 %)");
});

test("words of pain come first, with the caution; private words do not come at all", () => {
  const day = {
    day: 20_600,
    value: { kind: "bar speed", of: "back squat" },
    valuePercent: -8,
    size: -2,
    stoodOut: [{ item: "sleep", unit: "h", value: 4.5, usual: 7.6, spreads: -3 }],
    written: [{ day: 20_599, kind: "note", text: "shin sore", symptoms: ["sore"] }],
    privateRows: 1,
    race: null,
  } as const;
  const said = unusualDayWords(day);
  expect(said.startsWith(`Look first: sore (the day before). ${symptomCaution}`)).toBe(true);
  expect(said).toContain("sleep 4.5 h, usual 7.6 h");
  expect(said).toContain("1 private row not shown");
  expect(symptomWordsOf([{ day: 20_600, symptoms: [], private: true }])).toContain("(private row)");
});
