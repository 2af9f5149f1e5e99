import { absences } from "../../../src/coaching/availability/absences";
import type { Written } from "../../../src/coaching/diary/unwell-day";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";

const asOf = 100;
const written = (day: number, text: string, more: Partial<Written> = {}): Written => ({
  day,
  from: day,
  text,
  beside: "set",
  at: () => ({ place: `Gym E${day}`, words: text }),
  ...more,
});
type Spell = Pick<AvailabilitySpell, "from" | "until" | "mayDo">;
const told = (
  all: readonly Written[],
  done: readonly number[] = [],
  spells: readonly Spell[] = [],
) => absences(all, () => done, spells, asOf).map(({ day, words }) => `${day} ${words}`);

test("an absence written in place of something done holds until something is done", () => {
  const out = [written(90, "injured")];
  expect(told(out)).toEqual(["90 injured"]);
  expect(told(out, [80])).toEqual(["90 injured"]);
  expect([told(out, [91]), told(out, [asOf])]).toEqual([[], []]);
  // What is planned for a day to come is not done.
  expect(told(out, [101])).toEqual(["90 injured"]);
  expect(told([written(90, "bike")])).toEqual([]);
  // Pain and illness keep somebody away as well.
  expect(told([written(90, "flu")])).toEqual(["90 flu"]);
});

test("beside something done, and in the diary, only words that name a time are an absence", () => {
  expect(told([written(90, "injured")], [90])).toEqual([]);
  expect(told([written(90, "away until 12/6")], [90])).toEqual(["90 away until 12/6"]);
  expect(told([written(90, "holiday", { beside: "diary" })])).toEqual([]);
  expect(told([written(90, "holiday from Monday", { beside: "diary" })])).toEqual([
    "90 holiday from Monday",
  ]);
  // Words of a week in which something was done stand beside it.
  expect(told([written(90, "camp", { from: 84 })], [85])).toEqual([]);
  expect(told([written(90, "camp", { from: 84 })], [83])).toEqual(["90 camp"]);
});

test("an absence to come is not ended by what is done before it, for two weeks", () => {
  const away = (day: number) => told([written(day, "away from Monday")], [day, day + 1, 99]);
  expect(away(86)).toEqual(["86 away from Monday"]);
  expect(away(85)).toEqual([]);
  // Without anything done since it holds on.
  expect(told([written(50, "away from Monday")], [50])).toEqual(["50 away from Monday"]);
});

test("the same words of several days are told once, of the latest; other words in order, days to come too", () => {
  const all = [
    written(95, "injured"),
    written(98, "injured"),
    written(97, "injured"),
    written(104, "away, camp"),
    written(94, "school trip"),
  ];
  expect(told(all)).toEqual(["94 school trip", "98 injured", "104 away, camp"]);
  // Of two cells of one day the first.
  const twice = ["Gym E9", "Gym F9"].map((place) =>
    written(95, "injured", { at: () => ({ place, words: "injured" }) }),
  );
  expect(absences(twice, () => [], [], asOf).map(({ place }) => place)).toEqual(["Gym E9"]);
});

test("what Availability says since, or of that day as out, is an answer", () => {
  const out = [written(90, "out")];
  const spell = (from: number, mayDo: Spell["mayDo"], until: number | null = null): Spell => ({
    from,
    until,
    mayDo,
  });
  expect(told(out, [], [spell(90, "full")])).toEqual([]);
  expect(told(out, [], [spell(105, "full")])).toEqual([]);
  expect(told(out, [], [spell(80, "out", 90)])).toEqual([]);
  expect(told(out, [], [spell(80, "out")])).toEqual([]);
  expect(told(out, [], [spell(80, "out", 89)])).toEqual(["90 out"]);
  expect(told(out, [], [spell(80, "modified", 95)])).toEqual(["90 out"]);
});

test("beside a run a later run ends it, too", () => {
  const run = [written(90, "away", { beside: "run" })];
  const doneOn = (beside: Written["beside"]) => (beside === "run" ? [95] : []);
  expect(absences(run, doneOn, [], asOf)).toEqual([]);
  expect(absences([written(90, "away")], doneOn, [], asOf)).toHaveLength(1);
});
