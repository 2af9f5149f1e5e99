import { readinessSettingsAt } from "../../../src/coaching/readiness/rated-settings";
import { squadReadiness } from "../../../src/coaching/readiness/squad-readiness";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { diaryDay } from "../diary/constructed";
import { inventedSeason, sessionDay, wobble } from "../series/invented-season";

const last = 16;
const day = sessionDay(last);
const { sets, jumps } = inventedSeason("Ilka Brandmoor", last + 1);
const diary: DiaryDay[] = Array.from({ length: last + 1 }, (_, s) =>
  diaryDay(sessionDay(s), {
    row: s + 2,
    athlete: "Ilka Brandmoor",
    sleepH: 7.5 + 0.6 * wobble(3 * s + 1),
    soreness: 2 + Math.round(wobble(4 * s)),
  }),
);
const read = (rows: { sets?: LiftingSet[]; jumps?: typeof jumps; diary?: DiaryDay[] }) =>
  squadReadiness({ index: squadIndex(rows, day), plates: [] })("Ilka Brandmoor");
const slower = (share: number) =>
  sets.map((set) =>
    set.day === day ? { ...set, repSpeeds: set.repSpeeds.map((v) => v! * share) } : set,
  );

test("an ordinary day is as usual, on all its parts", () => {
  const today = read({ sets, jumps, diary });
  expect(today.word).toBe("as usual");
  expect(today.parts.map(({ part }) => part)).toEqual(["speed", "jump", "sleep", "soreness"]);
  expect(today.reason).toBeNull();
});

test("a bar 15 % slower is well below usual, and the speed is the reason", () => {
  const today = read({ sets: slower(0.85), jumps, diary });
  expect(today.word).toBe("well below usual");
  expect(today.reason).toMatchObject({ part: "speed", of: "back squat", unit: "m/s" });
  expect(today.reason!.today / today.reason!.usual).toBeCloseTo(0.85, 1);
});

test("a bar 15 % faster is above usual", () => {
  expect(read({ sets: slower(1.15), jumps, diary }).word).toBe("above usual");
});

test("sore and sleepless with an ordinary bar names the worst item", () => {
  const bad = diary.map((row) => (row.day === day ? { ...row, sleepH: 3, soreness: 5 } : row));
  const today = read({ sets, diary: bad });
  expect(["sleep", "soreness"]).toContain(today.reason!.part);
  expect(today.size!).toBeLessThan(0);
});

test("missing parts are done without", () => {
  expect(read({ sets }).parts.map(({ part }) => part)).toEqual(["speed"]);
  expect(read({ jumps }).parts.map(({ part }) => part)).toEqual(["jump"]);
});

test("one diary item alone is no diary", () => {
  const sleepOnly = diary.map((row) => ({ ...row, soreness: null }));
  expect(read({ diary: sleepOnly }).word).toBe("too few rows");
});

test.each([
  [3, "too few rows"],
  [4, "as usual"],
])("with %i earlier sessions the word is %s", (earlier, word) => {
  const few = sets.filter((set) => set.day >= sessionDay(last - earlier));
  const today = read({ sets: few });
  expect(today.word).toBe(word);
  if (earlier === 3) expect(today.needed).toEqual([{ part: "speed", of: "back squat", rows: 1 }]);
});

test("a day without rows is too few rows with nothing needed", () => {
  const of = squadReadiness({ index: squadIndex({ sets }, day + 1), plates: [] });
  expect(of("Ilka Brandmoor")).toMatchObject({ word: "too few rows", parts: [], needed: [] });
  expect(of("Nobody Known")).toMatchObject({ word: "too few rows", parts: [], needed: [] });
});

test("who is asked for is named as in the rows, who is not in them as asked", () => {
  const of = squadReadiness({ index: squadIndex({ sets }, day), plates: [] });
  expect(of("ilka  BRANDMOOR").athlete).toBe("Ilka Brandmoor");
  expect(of("Nobody Known").athlete).toBe("Nobody Known");
});

test("a new tool on the day is not held against the old one", () => {
  const other = slower(0.8).map((set) => (set.day === day ? { ...set, tool: "new" } : set));
  expect(read({ sets: other })).toMatchObject({
    word: "too few rows",
    needed: [{ part: "speed", rows: 4 }],
  });
});

test("the marker set speaks for the day when there is one", () => {
  const markers = sets
    .filter(({ set }) => set === 1)
    .map((set) => ({ ...set, kind: "marker" as const, loadKg: 40, repSpeeds: [0.94], row: 1 }));
  const slowWork = slower(0.8);
  expect(read({ sets: [...markers, ...slowWork] }).parts[0]).toMatchObject({ today: 0.94 });
});

test("a squad that wants fewer false flags hears below usual later, and the rate is the share of a normal bell under it", () => {
  const words = [0.33, 0.1, 0.02].map(
    (rate) =>
      squadReadiness({
        index: squadIndex({ sets: slower(0.93), jumps, diary }, day),
        plates: [],
        settings: readinessSettingsAt(rate),
      })("Ilka Brandmoor").word,
  );
  expect(words).toEqual(["well below usual", "below usual", "as usual"]);
  // Standard normal table: 5 % below −1.645, 1.25 % below −2.241 (NIST/SEMATECH e-Handbook 1.3.6.7.1).
  expect(readinessSettingsAt(0.05).below).toBeCloseTo(-1.645, 2);
  expect(readinessSettingsAt(0.05).above).toBeCloseTo(1.645, 2);
  expect(readinessSettingsAt(0.05).wellBelow).toBeCloseTo(-2.241, 2);
});
