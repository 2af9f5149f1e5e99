import {
  liftDays,
  liftsInTurn,
  mainLift,
} from "../../../../src/coaching/next-week/present-step/main-lift";
import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import type { LiftingSet } from "../../../../src/coaching/record/lifting-set";
import { lineReasonWords } from "../../../../src/words/week";
import { athlete, day, session, squadRows, state } from "../written-squad";

const name = "Tomas Reyerson";
const lifted = (exercise: string, iso: string, loadKg: number, sets = 3): LiftingSet[] =>
  session(name, iso, { sets, reps: 5, loadKg, markerKg: 50 }).map((set) => ({ ...set, exercise }));
const lift = (...sets: LiftingSet[][]) => mainLift(liftDays(sets.flat()));
const weekOf = (monday: string, sets: readonly LiftingSet[]) => {
  const line = proposeLine({
    athlete: athlete(name),
    name,
    state: state(name),
    rows: squadRows({ sets }),
    monday: day(monday),
    asOf: day(monday) - 1,
  });
  const { exercise, sessions, reasons, step } = line;
  const loads = sessions.map(({ sets: count, reps, loadKg }) => `${count}x${reps} ${loadKg}`);
  return { exercise, loads, said: reasons.map(lineReasonWords), step };
};
/** Tuesdays and Thursdays of four weeks from 7 April. */
const squats = [0, 2, 7, 9, 14, 16, 21, 23].flatMap((days) =>
  lifted("back squat", "2026-04-07", 80).map((set) => ({ ...set, day: set.day + days })),
);

test("a new exercise is planned on within its first week, however many sets of the old one stand in the rows", () => {
  const front = ["2026-05-05", "2026-05-07"].flatMap((iso) => lifted("front squat", iso, 60));
  const { exercise, loads, said } = weekOf("2026-05-11", [...squats, ...front]);
  expect([exercise, ...loads]).toEqual(["front squat", "3x5 60", "3x5 60"]);
  expect(said).toContain("Front squat since 5 May in place of back squat: planned on from it.");
  // Begun after three weeks off, it has no block of its own from before them.
  const late = front.map((set) => ({ ...set, day: set.day + 14 }));
  expect(weekOf("2026-05-25", [...squats, ...late]).loads).toEqual(["3x5 60", "3x5 60"]);
  const told = (days: number) =>
    weekOf("2026-05-18", [
      ...squats,
      ...front,
      ...lifted("front squat", "2026-05-05", 60).map((set) => ({ ...set, day: set.day + days })),
    ]).said.some((one) => /in place of/.test(one));
  expect([told(6), told(7)]).toEqual([true, false]);
  // A week later the coach knows, and the squat of weeks ago is no time off.
  const more = ["2026-05-12", "2026-05-14"].flatMap((iso) => lifted("front squat", iso, 60));
  const later = weekOf("2026-05-18", [...squats, ...front, ...more]);
  expect([later.exercise, ...later.loads]).toEqual(["front squat", "3x5 60", "3x5 60"]);
  expect(later.said.join()).not.toMatch(/in place of|longer than usual/);
});

test("one day of another lift beside the usual one changes nothing", () => {
  const odd = lifted("front squat", "2026-05-07", 60);
  expect(lift(squats, lifted("back squat", "2026-05-05", 80), odd)).toBe("back squat");
  // On two of the week's three days it has taken its place.
  const again = lifted("front squat", "2026-05-09", 60);
  expect(lift(squats, lifted("back squat", "2026-05-05", 80), odd, again)).toBe("front squat");
  // Not where nobody wrote a load.
  const bare = [...odd, ...again].map((set) => ({ ...set, loadKg: null }));
  expect(lift(squats, lifted("back squat", "2026-05-05", 80), bare)).toBe("back squat");
});

test("the latest week is seven days: who comes once a week is on the lift done last", () => {
  const weekly = squats.filter((set) => (set.day - squats[0]!.day) % 7 === 0);
  const last = weekly[weekly.length - 1]!.day;
  const front = (days: number) =>
    lifted("front squat", "2026-05-05", 60).map((set) => ({ ...set, day: last + days }));
  expect([lift(weekly, front(7)), lift(weekly, front(6))]).toEqual(["front squat", "back squat"]);
});

test("two lifts are in turn by the days with one of them alone", () => {
  const inTurn = (text: string) => {
    const on = (letter: string, at: number) =>
      lifted(letter === "s" ? "back squat" : "hip thrust", "2026-04-07", 80).map((set) => ({
        ...set,
        day: set.day + Math.ceil(3.5 * at),
      }));
    const sets = text.split(" ").flatMap((day, at) => [...day].flatMap((one) => on(one, at)));
    return liftsInTurn(liftDays(sets), "back squat");
  };
  // A week of both on each day hides no turn; two days after a first one with both make none yet.
  expect([inTurn("s h s h"), inTurn("s h sh sh s h")]).toEqual([["hip thrust"], ["hip thrust"]]);
  expect([inTurn("s h"), inTurn("sh s h"), inTurn("sh sh")]).toEqual([["hip thrust"], [], []]);
});

test("back at a lift after weeks of another one, nothing is taken off as after time off", () => {
  const days = ["2026-04-28", "2026-04-30", "2026-05-05", "2026-05-07", "2026-05-12", "2026-05-14"];
  const front = days.flatMap((iso) => lifted("front squat", iso, 60));
  const back = ["2026-05-19", "2026-05-21"].flatMap((iso) => lifted("back squat", iso, 75, 5));
  const { exercise, loads, said } = weekOf("2026-05-25", [
    ...squats.filter((set) => set.day < day("2026-04-28")),
    ...front,
    ...back,
  ]);
  expect([exercise, ...loads]).toEqual(["back squat", "5x5 75", "5x5 75"]);
  expect(said.join()).not.toMatch(/longer than usual|Back in grades/);
});

/** Tuesdays and Thursdays of so many weeks from 5 May without the bar. */
const away = (exercise: string, weeks: number) =>
  Array.from({ length: 2 * weeks }, (_, at) =>
    lifted(exercise, "2026-05-05", 24).map((set) => ({
      ...set,
      day: set.day + 7 * Math.floor(at / 2) + 2 * (at % 2),
    })),
  ).flat();

test("a week of goblet squats or leg press is no time off the bar: the load stays, and the week says why", () => {
  for (const exercise of ["goblet squat", "leg press", "split squat"]) {
    const { loads, said } = weekOf("2026-05-11", [...squats, ...away(exercise, 1)]);
    expect([exercise, ...loads]).toEqual([exercise, "3x5 80", "3x5 80"]);
    expect(said[0]).toBe(
      "12 days without the bar, other lifts of the legs meanwhile: same load, no step up.",
    );
  }
  // With nothing for the legs it is: 12 days from 30 April to 12 May, less a rhythm of 3.5.
  const goblets = away("goblet squat", 1);
  const warmUps = goblets.map((set) => ({ ...set, kind: "warm-up" as const }));
  const unloaded = goblets.map((set) => ({ ...set, loadKg: null }));
  for (const other of [[], away("seated twist", 1), away("bench press", 1), warmUps, unloaded]) {
    const { loads, said } = weekOf("2026-05-11", [...squats, ...other]);
    expect(loads[0]).toBe("3x5 70");
    expect(said[0]).toBe("Off 9 days longer than usual: 10 % off the load before.");
    expect(said.join()).not.toMatch(/without the bar/);
  }
});

test("weeks of it ease the bar by a grade less than the same time with nothing", () => {
  // 26 days off the bar, 5 at most off the legs: as 15.5 off both, less a rhythm of 3.5.
  const three = weekOf("2026-05-25", [...squats, ...away("goblet squat", 3)]);
  expect(three.loads).toEqual(["3x5 70", "3x5 70"]);
  expect(three.said.slice(0, 2)).toEqual([
    "Off 12 days longer than usual: 10 % off the load before.",
    "26 days without the bar, other lifts of the legs meanwhile: they count as half of it.",
  ]);
  // Whichever rows stand first.
  const others = [...away("goblet squat", 3), ...squats].reverse();
  expect(weekOf("2026-05-25", others).loads).toEqual(three.loads);
  expect(weekOf("2026-05-25", squats).loads[0]).toBe("2x5 55");
  // Goblet squats that ended themselves a fortnight ago say little of today.
  const ended = weekOf("2026-05-25", [...squats, ...away("goblet squat", 1)]);
  expect(ended.loads[0]).toBe("2x5 62.5");
});

test("once back on the bar after such a week there is no way back in grades", () => {
  const back = lifted("back squat", "2026-05-12", 80);
  const week = weekOf("2026-05-18", [...squats, ...away("goblet squat", 1), ...back]);
  expect([week.loads[0], week.said[0]]).toEqual([
    "5x3 82.5",
    "Moved well, volume done, speed held: a step on, 80 to 82.5 kg.",
  ]);
});

test("jumps, the upper body, small muscles and what has no load are never the lift that is planned", () => {
  const beside = [
    "jump squat",
    "box jump",
    "hops",
    "bench press",
    "press",
    "bent-over row",
    "pull-ups",
    "calf raise",
    "Nordic curl",
    "hip abduction",
    "leg extension",
  ];
  for (const exercise of beside) {
    const five = lifted(exercise, "2026-05-05", 20, 5);
    expect([exercise, lift(five, lifted("back squat", "2026-05-05", 80))]).toEqual([
      exercise,
      "back squat",
    ]);
  }
  const bare = lifted("box step", "2026-05-05", 20, 5).map((set) => ({ ...set, loadKg: null }));
  expect(lift(bare, lifted("back squat", "2026-05-05", 80))).toBe("back squat");
  // Nor does a goblet squat of a day without a rack, though it is all there was that week.
  const goblet = lifted("goblet squat", "2026-05-12", 24);
  expect(lift(squats, goblet)).toBe("back squat");
  // Where there is nothing else they are.
  expect([lift(goblet), lift(lifted("calf raise", "2026-05-05", 20))]).toEqual([
    "goblet squat",
    "calf raise",
  ]);
  expect(weekOf("2026-05-18", away("calf raise", 2)).said[0]).toBe("Hold: week 3 of 3.");
  expect(lift(lifted("calf raise", "2026-05-05", 20, 5), goblet)).toBe("goblet squat");
  expect([lift(), lift(lifted("split squat", "2026-05-05", 20))]).toEqual([null, null]);
});

test("of lifts done equally often a squat is planned, the one longest in the rows, then the one with most sets", () => {
  const first = lifted("power clean", "2026-05-05", 60, 5);
  expect(lift(first, lifted("front squat", "2026-05-07", 60))).toBe("front squat");
  expect(lift(first, lifted("Frontkniebeuge", "2026-05-07", 60))).toBe("frontkniebeuge");
  const turn = [lifted("trap-bar deadlift", "2026-05-07", 95, 5)];
  expect(lift(lifted("hip thrust", "2026-05-05", 80), ...turn)).toBe("hip thrust");
  expect(lift(lifted("hip thrust", "2026-05-07", 80), ...turn)).toBe("trap bar deadlift");
  const older = lifted("trap-bar deadlift", "2026-05-05", 95, 2);
  expect(lift(older, lifted("hip thrust", "2026-05-07", 80))).toBe("trap bar deadlift");
  // With nothing to choose between them it is the same one, however the rows are ordered.
  const same = ["hip thrust", "trap-bar deadlift"].map((one) => lifted(one, "2026-05-05", 80));
  expect([lift(...same), lift(...same.reverse())]).toEqual(["hip thrust", "hip thrust"]);
  expect(lift(lifted("squat", "2026-05-07", 80), lifted("front squat", "2026-05-07", 60))).toBe(
    "back squat",
  );
});
