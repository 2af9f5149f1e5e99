import type { TestDay } from "../../../src/coaching/jumps/test-day";
import { jumpValues } from "../../../src/coaching/readiness/jump-values";

const testDay = (day: number, of: Partial<TestDay>): TestDay => ({
  day,
  attempts: 3,
  heightsNotRead: 0,
  dropCm: null,
  heightCm: null,
  bestCm: null,
  byStack: false,
  contactS: null,
  reactiveStrength: null,
  ...of,
});
const height = (day: number, heightCm: number | null, of: Partial<TestDay> = {}) =>
  testDay(day, { heightCm, ...of });
const daysOf = (days: readonly TestDay[], like = days.at(-1)) =>
  jumpValues(days, like)?.dated.map(({ day }) => day) ?? null;

test("heights are read upward and contacts downward, and both lead back to what was written", () => {
  const rise = jumpValues([height(1, 40), height(2, 42)], height(2, 42))!;
  expect(rise.unit).toBe("cm");
  // 100·ln(42/40) = 4.879.
  expect(rise.dated[1]!.value - rise.dated[0]!.value).toBeCloseTo(4.879, 3);
  expect(rise.valueAt(rise.dated[0]!.value)).toBeCloseTo(40, 9);
  const contacts = [testDay(1, { contactS: 0.2 }), testDay(2, { contactS: 0.21 })];
  const longer = jumpValues(contacts, contacts[1])!;
  expect(longer.unit).toBe("s");
  expect(longer.dated[1]!.value - longer.dated[0]!.value).toBeCloseTo(-4.879, 3);
  expect(longer.valueAt(longer.dated[1]!.value)).toBeCloseTo(0.21, 9);
  expect(longer.leastSd).toBe(0);
});

test("only days from the same drop with the same kind of figure are comparable", () => {
  const days = [
    height(1, 30, { dropCm: 30 }),
    height(2, 30, { dropCm: 45 }),
    height(3, null, { dropCm: 30, contactS: 0.2 }),
    height(4, 30),
    height(5, 31, { dropCm: 30 }),
  ];
  expect(daysOf(days)).toEqual([1, 5]);
});

test("a day that was not jumped, has neither figure or a height of nothing is not held against others", () => {
  const earlier = [height(1, 40), height(2, 41)];
  expect(jumpValues(earlier, undefined)).toBeNull();
  expect(daysOf([...earlier, height(3, null)])).toBeNull();
  expect(daysOf([...earlier, height(3, 0)])).toBeNull();
  expect(daysOf([...earlier, height(3, 0), height(4, 40)])).toEqual([1, 2, 4]);
});

test("heights written to ten centimetres are known to 2.9 of them", () => {
  const days = [40, 50, 40, 50, 40, 50, 40].map((cm, day) => height(day, cm));
  // Uniform within a step: 10/√12 = 2.9 cm of a mean of 310/7 cm.
  expect(jumpValues(days, days[6])!.leastSd).toBeCloseTo((100 * 2.9) / (310 / 7), 9);
  const fine = [40, 41.3, 42, 40.7, 43.1, 39.8, 41].map((cm, day) => height(day, cm));
  expect(jumpValues(fine, fine[6])!.leastSd).toBe(0);
  // Today's contact is not read in the steps of other days' heights.
  const contact = testDay(9, { contactS: 0.2 });
  expect(jumpValues([...days, contact], contact)!.leastSd).toBe(0);
});
