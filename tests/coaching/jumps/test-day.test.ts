import { attemptHeight } from "../../../src/coaching/jumps/attempt-height";
import { testDays } from "../../../src/coaching/jumps/test-day";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { Plate } from "../../../src/coaching/record/plate";
import { jumpAttempt } from "../series/invented-season";

const plates: Plate[] = [
  { row: 2, massKg: 15, thicknessCm: 6, owned: 2 },
  { row: 3, massKg: 5, thicknessCm: 2, owned: null },
];
const day = (...attempts: Partial<JumpAttempt>[]) => {
  const [only, ...others] = testDays(
    attempts.map((of) => jumpAttempt({ day: 1, ...of })),
    plates,
  );
  expect(others).toEqual([]);
  return only!;
};

test("of drops from two heights on one day those from the first count, all attempts are counted", () => {
  const mixed = day(
    { dropCm: 30, heightCm: 20, contactS: 0.2 },
    { dropCm: 45, heightCm: 40, contactS: 0.3 },
    { dropCm: 30, heightCm: 22, contactS: 0.24 },
  );
  expect(mixed).toMatchObject({ attempts: 3, dropCm: 30, heightCm: 21, bestCm: 22 });
  expect(mixed.contactS).toBeCloseTo(0.22, 12);
});

test("a plate nobody measured and a flight that cannot be are heights not read; a miss or a blank is none", () => {
  expect(
    day({ stackKg: [17] }, { flightS: 3 }, { stackKg: [5] }, { cleared: false }, {}),
  ).toMatchObject({ heightsNotRead: 2, heightCm: 2, attempts: 5 });
  expect(day({ cleared: false }, { contactS: 0.2 })).toMatchObject({
    heightsNotRead: 0,
    heightCm: null,
    bestCm: null,
  });
});

test("measured heights are averaged; where a stack was cleared or missed the best of the day counts", () => {
  const measured = [{ heightCm: 40 }, { heightCm: 44 }];
  expect(day(...measured)).toMatchObject({ heightCm: 42, byStack: false });
  expect(day(...measured, { stackKg: [15, 15], cleared: false })).toMatchObject({
    heightCm: 44,
    byStack: true,
  });
  expect(day({ heightCm: 40 }, { heightCm: 44, cleared: true })).toMatchObject({
    heightCm: 44,
    byStack: true,
  });
  expect(day(...measured, {})).toMatchObject({ heightCm: 42, byStack: false });
});

test("a contact left blank, or of no time, is left out of the day's", () => {
  const contacts = day({ contactS: null }, { contactS: 0 }, { contactS: 0.2 }, { contactS: 0.22 });
  expect(contacts.contactS).toBeCloseTo(0.21, 12);
  expect(day({ heightCm: 30 }, { heightCm: 30, contactS: 0 })).toMatchObject({
    contactS: null,
    reactiveStrength: null,
  });
});

test("reactive strength needs the height that was reached: a stack cleared is only a bound", () => {
  const drops = day(
    { heightCm: 30, contactS: 0.2 },
    { stackKg: [15, 15], contactS: 0.2 },
    { contactS: 0.2 },
  );
  expect(drops.reactiveStrength).toBeCloseTo(1.5, 12);
  expect(day({ stackKg: [15], contactS: 0.2 }).reactiveStrength).toBeNull();
});

test("days follow one another as they stand", () => {
  const attempts = [1, 1, 2, 4].map((on) => jumpAttempt({ day: on, heightCm: 40 + on }));
  expect(testDays(attempts, plates).map(({ day: on, attempts: of }) => [on, of])).toEqual([
    [1, 2],
    [2, 1],
    [4, 1],
  ]);
  expect(testDays([], plates)).toEqual([]);
});

test("a flight onto a landing that is higher or lower rises by what that landing says", () => {
  // 0.5 s: 9.80665·0.25/8 = 30.6 cm on the level; 20 cm higher: (0.2/0.5 + 9.80665·0.25)²/(2·9.80665).
  expect(day({ flightS: 0.5 }).heightCm).toBeCloseTo(30.6458, 3);
  const higher = attemptHeight(jumpAttempt({ day: 1, flightS: 0.5, landingCm: 20 }), plates);
  expect(higher).toEqual({
    ok: true,
    value: {
      cm: expect.closeTo((100 * (0.4 + 9.80665 * 0.25) ** 2) / (2 * 9.80665), 9),
      isBound: false,
    },
  });
});
