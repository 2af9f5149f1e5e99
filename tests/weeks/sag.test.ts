import { speedOnLine } from "../../src/coaching/bar-speed/expected-speed";
import { squadLines } from "../../src/coaching/bar-speed/squad-lines";
import { loadDrop } from "../../src/coaching/blocks/load-drop";
import { decideToday } from "../../src/coaching/next-week/on-the-day/decide-today";
import { proposeLine } from "../../src/coaching/next-week/propose-line";
import { usualWidth } from "../../src/coaching/next-week/state/usual-width";
import { squadIndex } from "../../src/coaching/series/squad-index";
import { accept } from "../../src/outcome";
import { dayDecisionWords } from "../../src/words/day-load";
import { lineReasonWords } from "../../src/words/week";
import {
  athlete,
  clubRuns,
  day,
  movesAt,
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
      ...movesAt(speed),
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

/**
 * The same answer from his own rows: the baseline of six sessions, marker and work sets on his line.
 * Usual spread of days 0.04 m/s and of sets 0.02: the low end of the interval lies about 0.06 under.
 */
test("Tuesday on the phone: 0.79 is out of his usual interval and past a band, so 80 kg at once", () => {
  const baseline = squadIndex(
    {
      sets: ["2026-04-07", "2026-04-09", "2026-04-14", "2026-04-16", "2026-04-21", "2026-04-23"]
        .flatMap((iso) => session(name, iso, at85))
        .map((set) => ({ ...set, repSpeeds: [speed(set.loadKg ?? 0)] })),
    },
    day("2026-05-11"),
  );
  const line = squadLines({ index: baseline, exercise: "back squat" })(name);
  if (!line.ok) throw new Error(line.refusal.code);
  // The squad's usual speed at zero load steadies his line by three thousandths; his own is 0.856.
  expect(speedOnLine(line.value, 67.5).speed).toBeCloseTo(speed(67.5), 2);
  const usualSpeed = speed(67.5);
  const lowSpeed = speedOnLine(line.value, 67.5).speed - usualWidth(line.value, 67.5);
  expect(lowSpeed).toBeGreaterThan(0.79);
  expect(lowSpeed).toBeLessThan(0.82);
  const plan = { plannedKg: 85, setsLeft: 3, stepKg: 2.5, usualDrop: 0.1, gym: null };
  const said = (...speeds: number[]) => {
    const answer = decideToday(
      { kind: "speeds", sets: [speeds] },
      { ...plan, usualSpeed, lowSpeed },
    );
    return answer.ok ? dayDecisionWords(answer.value, 67.5) : answer.refusal.code;
  };
  expect(said(0.79, 0.8, 0.78)).toBe(
    "80 kg for the remaining 3 sets (−5.9 %): 0.07 m/s slower than usual at 67.5",
  );
  // The ordinary week's marker, on the same line.
  expect(said(0.86, 0.85, 0.86)).toBe("as planned: lift 85");
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
  expect(why).toContain(
    "Thu 2 Jul refused: 41 h before R4 county track weekend, an A race (rule: 72 h).",
  );
  expect(found.odd).toBe(true);
});

test("the week of 6 July: the second session is back, Tuesday and Thursday 9 July", () => {
  const found = propose(day("2026-07-06"));
  expect(found.kind).toBe("week after");
  expect(found.sessions.length).toBe(2);
  expect(found.sessions.map((one) => one.day)).toEqual([day("2026-07-07"), day("2026-07-09")]);
  expect(found.sessions.every(({ sets, loadKg }) => sets === 3 && loadKg === 85)).toBe(true);
});
