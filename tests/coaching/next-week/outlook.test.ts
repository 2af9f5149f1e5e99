import fc from "fast-check";
import { blockText, rotation } from "../../../src/coaching/blocks/block";
import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { outlook } from "../../../src/coaching/next-week/outlook";
import type { Race } from "../../../src/coaching/record/race";

const monday = dayFromIso("2026-05-11")!;
const usual = {
  monday,
  block: rotation[0]!,
  loadKg: 70,
  guardKg: 110,
  stepKg: 2.5,
  largestStep: 0.05,
  weeksHeld: 0,
  firstTurn: false,
  sessionsAWeek: 2,
  holding: false,
  races: [],
  rules: { holdWeeks: 1, firstHold: 1, raceWeekSets: 0.5, resetShare: 0, stepBySession: 0 },
  weeks: 5,
} as const;
const rules = (over: Partial<Parameters<typeof outlook>[0]["rules"]>) => ({
  rules: { ...usual.rules, ...over },
});
const shown = (over: Partial<Parameters<typeof outlook>[0]> = {}) =>
  outlook({ ...usual, ...over }).map(({ block, loadKg }) => `${blockText(block)} ${loadKg}`);
const race: Race = {
  row: 2,
  day: dayFromIso("2026-05-23")!,
  startMinute: 600,
  race: "R2",
  who: "all",
  distanceKm: 10,
  surface: "road",
  matters: "A",
};

test("a step a week, and the rotation again", () => {
  // The new start leaves room for three steps at the guard: 3×3 needs five repetitions, 87 % of
  // 110 is 95.7 kg, so 77.5 itself does: 5×5 at 77.5 needs seven, 83 % of 110 is 91.3 kg.
  expect(shown()).toEqual(["5×5 70", "3×5 72.5", "5×3 75", "3×3 77.5", "5×5 77.5"]);
});

test("weeks held before count, and a squad that holds longer steps later", () => {
  expect(shown({ ...rules({ holdWeeks: 3 }), weeksHeld: 1 })).toEqual([
    "5×5 70",
    "5×5 70",
    "3×5 72.5",
    "3×5 72.5",
    "3×5 72.5",
  ]);
});

test("the season's first 5×5 is held by a rule of its own, later ones by the rule for all", () => {
  const held = rules({ firstHold: 3 });
  expect(shown({ ...held, firstTurn: true })).toEqual([
    "5×5 70",
    "5×5 70",
    "5×5 70",
    "3×5 72.5",
    "5×3 75",
  ]);
  expect(shown(held)[1]).toBe("3×5 72.5");
});

test("steps by session: a week of two sessions is two steps, whatever weeks a step is held for", () => {
  // Mondays: 70, then two steps on 75, then two on: after 3×3 at 77.5 the rotation begins at 77.5.
  expect(shown(rules({ stepBySession: 1, holdWeeks: 3 })).slice(0, 3)).toEqual([
    "5×5 70",
    "5×3 75",
    "5×5 77.5",
  ]);
  const once = shown({ ...rules({ stepBySession: 1 }), sessionsAWeek: 1 });
  expect(once.slice(0, 2)).toEqual(["5×5 70", "3×5 72.5"]);
});

test("the size of a step and the load a new rotation begins at are the coach's", () => {
  // 8 % of 70 is 5.6 kg, two plate steps of 2.5; of 75 six, two again; of 80 6.4, two again.
  expect(shown({ wanted: 0.08, largestStep: 0.08, guardKg: 150 }).slice(0, 4)).toEqual([
    "5×5 70",
    "3×5 75",
    "5×3 80",
    "3×3 85",
  ]);
  expect(new Set(shown({ wanted: 0 }).map((one) => one.split(" ")[1]))).toEqual(new Set(["70"]));
  // 80 % of 77.5 is 62, on steps of 2.5 from 77.5 down 60.
  expect(shown(rules({ resetShare: 0.8 }))[4]).toBe("5×5 60");
});

test("no step in a race week: sets cut, load kept", () => {
  const weeks = outlook({ ...usual, races: [race] });
  expect(
    weeks.map(({ monday: day, kind, sets, loadKg }) => [isoFromDay(day), kind, sets, loadKg]),
  ).toEqual([
    ["2026-05-11", "ordinary", 5, 70],
    ["2026-05-18", "race week", 2, 70],
    ["2026-05-25", "week after", 3, 72.5],
    ["2026-06-01", "ordinary", 5, 75],
    ["2026-06-08", "ordinary", 3, 77.5],
  ]);
});

test("who is held stays", () => {
  expect(new Set(shown({ holding: true }))).toEqual(new Set(["5×5 70"]));
});

test("every step after the proposed one leaves two repetitions and rises by one step at most", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...rotation),
      fc.integer({ min: 10, max: 60 }),
      fc.integer({ min: 50, max: 200 }),
      fc.integer({ min: 0, max: 10 }),
      fc.integer({ min: 1, max: 4 }),
      (block, steps, guardKg, percent, holdWeeks) => {
        const loadKg = steps * 2.5;
        const weeks = outlook({
          ...usual,
          block,
          loadKg,
          guardKg,
          largestStep: percent / 100,
          ...rules({ holdWeeks }),
          weeks: 8,
        });
        for (const [at, week] of weeks.entries()) {
          const before = weeks[at - 1];
          expect((week.loadKg / 2.5) % 1).toBe(0);
          if (!before) continue;
          expect(week.loadKg - before.loadKg).toBeLessThanOrEqual(2.5);
          const moved = blockText(week.block) !== blockText(before.block);
          // A ladder no load of which keeps the reserve stays where it is; it never climbs.
          if (moved) expect(week.reserve).toBeGreaterThanOrEqual(2 - 1e-9);
          else expect(week.loadKg).toBeLessThanOrEqual(before.loadKg);
        }
      },
    ),
  );
});
