import { usualReadinessSettings as usual } from "../../../src/coaching/readiness/readiness-settings";
import { type AthleteReadings, squadTies } from "../../../src/coaching/readiness/squad-ties";

// Units are 4.5 % of speed, 4 % of jump, 0.9 h of sleep, 0.7 points: figures below are so many of them.
const days = (values: readonly (number | null)[], unit: number, level = 0) =>
  values.flatMap((value, day) => (value === null ? [] : [{ day, value: level + unit * value }]));
const speed = (...values: (number | null)[]) => days(values, 4.5);
const jump = (...values: (number | null)[]) => days(values, 4);
const sleep = (...values: (number | null)[]) => days(values, 0.9, 7);
const points = (...values: (number | null)[]) => days(values, 0.7, 3);

const athlete = (of: Partial<AthleteReadings>): AthleteReadings => ({
  speed: [],
  jump: [],
  items: new Map(),
  ...of,
});
const ties = (...squad: Partial<AthleteReadings>[]) => squadTies(squad.map(athlete), usual);
/** The assumed correlation counts as forty days, each athlete's own days as one fewer than they are. */
const drawn = (assumed: number, found: number, freedom: number) =>
  (40 * assumed + freedom * found) / (40 + freedom);

test("two athletes' speeds and jumps are put together, each about that athlete's own mean", () => {
  // Products 4 and 4; squares 8 and 8 of speed, 2 and 8 of jumps: 8/√(16·10).
  const one = { speed: speed(-2, 0, 2), jump: jump(-1, 0, 1) };
  const other = { speed: speed(12, 10, 8), jump: jump(5, 7, 3) };
  expect(ties(one, other).speedWithJump).toBeCloseTo(drawn(0.4, 8 / Math.sqrt(160), 4), 12);
});

test("days with one of the two alone are no pair, and one pair says nothing", () => {
  // The jumps' mean is 0 with the day that has no speed, and without.
  const one = { speed: speed(-2, 0, 2, null), jump: jump(-1, 0, 1, 0) };
  expect(ties(one).speedWithJump).toBeCloseTo(drawn(0.4, 1, 2), 12);
  expect(ties(one, { speed: speed(1, null), jump: jump(null, 1) }).speedWithJump).toBeCloseTo(
    drawn(0.4, 1, 2),
    12,
  );
  expect(ties({ speed: speed(3, 3, 5), jump: jump(0, null, null) }).speedWithJump).toBe(0.4);
});

test("a value that never moved, or none at all, leaves what was assumed", () => {
  const assumed = { betweenItems: 0.35, speedWithJump: 0.4, withDiary: 0.2 };
  expect(ties()).toEqual(assumed);
  expect(ties({ speed: speed(3, 3, 3), jump: jump(-1, 0, 1) })).toEqual(assumed);
  expect(ties({ speed: speed(-1, 0, 1), jump: jump(2, 2, 2) })).toEqual(assumed);
});

test("one wild day counts as three and a half units, no more", () => {
  // ±20 cut to ±3.5: products 3.5 + 1 + 1 + 3.5, squares 26.5 and 4.
  const wild = { speed: speed(-20, 1, -1, 20), jump: jump(-1, 1, -1, 1) };
  expect(ties(wild).speedWithJump).toBeCloseTo(drawn(0.4, 9 / Math.sqrt(26.5 * 4), 3), 12);
});

test("parts that go against one another count as independent, none as one and the same", () => {
  const turns = (count: number, side = 1) =>
    Array.from({ length: count }, (_, day) => (day % 2 ? side : -side));
  const against = { speed: speed(...turns(100)), jump: jump(...turns(100, -1)) };
  expect(ties(against).speedWithJump).toBe(0);
  const alike = { speed: speed(...turns(400)), jump: jump(...turns(400)) };
  expect(ties(alike).speedWithJump).toBe(0.9);
});

test("of two items each pair counts once, and sore is the bad side as little sleep is", () => {
  const night = ["sleep", sleep(-1, 1)] as const;
  const sore = ["soreness", points(2, -2)] as const;
  expect(ties({ items: new Map([night, sore]) }).betweenItems).toBeCloseTo(drawn(0.35, 1, 1), 12);
  // With mood going with neither: products 4, 0 and 0 of three pairs, squares 2 + 2 + 8 and 8 + 2 + 2.
  const three = new Map([
    ["sleep", sleep(-1, 1, 0, 0)] as const,
    ["soreness", points(2, -2, 0, 0)] as const,
    ["mood", points(0, 0, 1, -1)] as const,
  ]);
  expect(ties({ items: three }).betweenItems).toBeCloseTo(drawn(0.35, 4 / 12, 9), 12);
});

test("the diary of a day is the mean of its items, of two or more", () => {
  const items = new Map([
    ["sleep", sleep(-1, 0, 1, 0)] as const,
    ["mood", points(-1, 1, 0, null)] as const,
    ["stress", points(1, null, -1, null)] as const,
  ]);
  // Means −1, 1/2, 2/3, the last day left out: products 1 + 0 + 2/3, squares 2 and 1 + 1/4 + 4/9.
  const found = 5 / 3 / Math.sqrt(2 * (1 + 1 / 4 + 4 / 9));
  expect(ties({ speed: speed(-1, 0, 1, 0), items }).withDiary).toBeCloseTo(
    drawn(0.2, found, 2),
    12,
  );
  // Speed and jump are each tied to the diary, and counted together.
  const both = ties({ speed: speed(-1, 0, 1, 0), jump: jump(-1, 0, 1, 0), items }).withDiary;
  expect(both).toBeCloseTo(drawn(0.2, found, 4), 12);
});
