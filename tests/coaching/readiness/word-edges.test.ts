import { usualReadinessSettings } from "../../../src/coaching/readiness/readiness-settings";
import { wordOfDay } from "../../../src/coaching/readiness/word-of-day";

/** Bounds and trusts that are sums of halves, so that a day can lie on a bound exactly. */
const settings = {
  ...usualReadinessSettings,
  wellBelow: -2,
  below: -1.25,
  above: 1.5,
  speedTrust: 0.75,
  jumpTrust: 0.5,
};
const bySpeed = (speed: number) => wordOfDay({ speed }, settings).word;

test("a day on a bound has the word beyond it", () => {
  expect([-2, -1.999, -1.25, -1.249].map(bySpeed)).toEqual([
    "well below usual",
    "below usual",
    "below usual",
    "as usual",
  ]);
  expect([1.499, 1.5].map(bySpeed)).toEqual(["as usual", "above usual"]);
});

test("of speed and jump the one that says more, by size and trust, is the reason", () => {
  const reason = (speed: number, jump: number) => wordOfDay({ speed, jump }, settings).reason;
  expect(reason(-3, -3)).toBe("speed");
  expect(reason(-1, -3)).toBe("jump");
  expect(reason(3, 1)).toBe("speed");
  expect(reason(1, 3)).toBe("jump");
  // A slow bar is no reason for a good day.
  expect(reason(-3, 8)).toBe("jump");
});

test("a bad diary names its worst item, a good one its best; of two alike the first asked for", () => {
  const reason = (sleep: number, soreness: number, mood: number | null = null) =>
    wordOfDay({ speed: 0, items: { sleep, soreness, mood } }, settings).reason;
  expect(reason(-3, -3.5)).toBe("soreness");
  expect(reason(3, 3.5)).toBe("soreness");
  expect(reason(-3.5, -3.5)).toBe("sleep");
  expect(reason(-3, -3, -3.5)).toBe("mood");
});

test("one diary item is no diary beside a bar, and a day without any part has no word", () => {
  expect(wordOfDay({ speed: 0, items: { sleep: -3.5 } }, settings)).toEqual({
    word: "as usual",
    size: 0,
    diary: null,
    reason: null,
  });
  expect(wordOfDay({ items: { sleep: -3.5 } }, settings)).toEqual({
    word: "too few rows",
    size: null,
    diary: null,
    reason: null,
  });
  expect(wordOfDay({}, settings).word).toBe("too few rows");
});
