import { linksNamed } from "../../bench/diary/world";

// Seeded worlds of `npm run bench:diary`, smaller: 36 sessions, nine items, speed and jump SD 4 %.
const calm = { sessions: 36, effect: 0, slide: 0, serial: 0 };
const seasons = 60;
/** Of 60 seasons at 5 %, more than six are seen once in thirty tries (binomial). */
const mostFalse = 6;

test.each([
  ["nothing goes with anything", calm, 71],
  ["everything slides together", { ...calm, slide: 12 }, 72],
  ["days resemble the day before", { ...calm, serial: 0.3 }, 73],
] as const)("false links in at most one season in twenty: %s", (_name, world, seed) => {
  expect(linksNamed(world, seasons, seed).falseSeasons).toBeLessThanOrEqual(mostFalse);
});

test("a bad night that costs 12 % of speed is found in most seasons", () => {
  const { found, falseSeasons } = linksNamed({ ...calm, effect: 12 }, seasons, 74);
  expect(found).toBeGreaterThan(0.5 * seasons);
  expect(falseSeasons).toBeLessThanOrEqual(mostFalse);
});
