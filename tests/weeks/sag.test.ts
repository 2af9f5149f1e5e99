import { loadDrop } from "../../src/coaching/blocks/load-drop";
import { proposeLine } from "../../src/coaching/next-week/propose-line";
import { accept } from "../../src/outcome";
import { lineReasonWords } from "../../src/words/week";
import {
  athlete,
  clubRuns,
  day,
  race,
  session,
  squadRows,
  state,
} from "../coaching/next-week/written-squad";

/**
 * Week of Monday 22 June: Tomas slips since 12 May, Thursdays stopped. Then the week of 29 June, with
 * R4 on Saturday 4 July at 11:00 (A), and the one after it.
 */
const name = "Tomas Reyerson";
const at85 = { sets: 3, reps: 5, loadKg: 85, markerKg: 67.5 };
const speed = (kg: number) => 0.28 + 1.45 * (1 - kg / 112);
const propose = (monday: number) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(name, {
      word: "slipping",
      sinceDay: day("2026-05-12"),
      lastWord: "below usual",
      usualSpeed: speed,
      strengthLowKg: 104,
    }),
    rows: squadRows({
      sets: ["2026-06-02", "2026-06-09", "2026-06-16", "2026-06-23", "2026-06-30"]
        .filter((iso) => day(iso) < monday)
        .flatMap((iso) => session(name, iso, at85)),
      races: [race("2026-07-04", 11, { race: "R4 county track weekend", distanceKm: null })],
      runs: clubRuns(name, monday),
    }),
    monday,
    asOf: monday - 1,
  });

test("Tuesday's marker 0.79 0.80 0.78: 0.07 slower than 0.86, 80 for 85, really 5.9 % off", () => {
  // Mean 0.79; 5 % off 85 is 80.75, down to 80 on steps of 2.5.
  expect(loadDrop(85, (0.79 + 0.8 + 0.78) / 3, 0.86, 2.5)).toEqual(
    accept({
      kind: "lighter",
      loadKg: 80,
      share: expect.closeTo(0.0588, 4),
      slower: expect.closeTo(0.07, 9),
    }),
  );
});

test("next week: load held, no step up, about half the sets; Thursday refused, 41 h before R4", () => {
  const monday = day("2026-06-29");
  const found = propose(monday);
  expect(found.sessions.map((one) => one.day - monday)).toEqual([1]);
  expect(found.sessions[0]).toMatchObject({ sets: 2, reps: 5, loadKg: 85 });
  // Thursday 18:00 to Saturday 11:00: 6 + 24 + 11 hours.
  expect(found.days!.all[3]!.refused).toMatchObject({ code: "before-race", hours: 41, limit: 72 });
  const why = found.reasons.map(lineReasonWords);
  expect(why).toContain("No step up while slipping.");
  expect(why).toContain("Thu 2 Jul refused: 41 h before R4, an A race (rule: 72 h).");
  expect(found.odd).toBe(true);
});

test("the week of 6 July: the second session is back, Tuesday and Thursday 9 July", () => {
  const found = propose(day("2026-07-06"));
  expect(found.kind).toBe("week after");
  expect(found.sessions.length).toBe(2);
  expect(found.sessions.map((one) => one.day)).toEqual([day("2026-07-07"), day("2026-07-09")]);
  expect(found.sessions.every(({ sets, loadKg }) => sets === 3 && loadKg === 85)).toBe(true);
});
