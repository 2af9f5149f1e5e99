import { athleteStates } from "../../src/actions/squad/athlete-states";
import { stateOfSquad } from "../../src/actions/squad/state-of-squad";
import { isoFromDay } from "../../src/coaching/calendar/day";
import { firstDay, wobble } from "../coaching/series/invented-season";
import { memoryWorkbook } from "./memory-workbook";

const name = "Wren Castellow";
const head = ["Date", "Athlete", "Exercise", "Set", "Kind", "Reps", "Load (kg)", "Rep speeds"];
type Row = readonly unknown[];

/**
 * One session a Tuesday: a marker at 50 kg, then work at 60, 70 and 80 kg. Work sets move at
 * 1.50 − 0.0125·load; the marker with full intent 0.04 m/s faster than that line says.
 */
const session = (week: number, reps: readonly number[]): Row[] => {
  const off = 0.02 * wobble(week);
  const speeds = (at: number) => reps.map((rep) => (at + off + rep).toFixed(3)).join(" ");
  const row = (kind: string, set: unknown, kg: number, faster: number): Row => [
    isoFromDay(firstDay + 1 + 7 * week),
    name,
    "back squat",
    set,
    kind,
    reps.length,
    kg,
    speeds(1.5 - 0.0125 * kg + faster),
  ];
  return [row("marker", "", 50, 0.04), ...[60, 70, 80].map((kg, at) => row("work", at + 1, kg, 0))];
};
const squad = (reps: readonly number[], weeks = 10, more: readonly Row[] = []) => {
  const rows = Array.from({ length: weeks }, (_, week) => session(week, reps)).flat();
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Sessions a week"],
      [name, "novice", 1],
    ],
    Sets: [head, ...rows, ...more],
  });
  return stateOfSquad(book, firstDay + 1 + 7 * (weeks - 1));
};

test("the marker's usual speed on the card is READINESS's, with the marker's own offset", () => {
  const state = squad([0]);
  const of = athleteStates(state)(name).ofLift("back squat");
  const card = of.usualLead("marker", 50)!.usual;
  const [today] = state.dayOf(name).parts;
  expect(today).toMatchObject({ part: "speed" });
  // READINESS reads the line of the days before, the card that of all days: a few thousandths apart.
  expect(Math.abs(card - today!.usual)).toBeLessThan(0.006);
  expect(card - of.usualSpeed(50)!).toBeGreaterThan(0.002);
  // First work sets lie under the line here, and are not asked of the marker's figure.
  expect(of.usualLead("work", 60)!.usual).toBeLessThan(of.usualSpeed(60)!);
});

test("at the rack the mean decides, so the usual one is a mean: the fastest less what it usually leads by", () => {
  const fastest = athleteStates(squad([0]))(name)
    .ofLift("back squat")
    .usualLead("marker", 50)!;
  const three = athleteStates(squad([0, -0.03, -0.03]))(name).ofLift("back squat");
  // Every set's mean is (0 + 0.03 + 0.03)/3 = 0.02 m/s under its fastest repetition.
  expect(three.usualLead("marker", 50)!.usual).toBeCloseTo(fastest.usual - 0.02, 3);
  expect(three.usualSpeed(50)).toBeCloseTo(
    athleteStates(squad([0]))(name)
      .ofLift("back squat")
      .usualSpeed(50)!,
    6,
  );
  const { usual, low } = three.usualLead("marker", 50)!;
  expect(usual - low).toBeCloseTo(fastest.usual - fastest.low, 6);
});

test("speeds of another lift say nothing of the one that is proposed", () => {
  const deadlifts = Array.from({ length: 6 }, (_, week): Row[] =>
    [90, 110].map((kg) => {
      const day = isoFromDay(firstDay + 3 + 7 * week);
      return [day, "Bea Lindqvale", "deadlift", 1, "work", 3, kg, (1.2 - 0.006 * kg).toFixed(2)];
    }),
  ).flat();
  const squats = Array.from({ length: 14 }, (_, at): Row => {
    const day = isoFromDay(firstDay + 1 + 7 * Math.floor(at / 2));
    return [day, "Bea Lindqvale", "back squat", (at % 2) + 1, "work", 5, 60, ""];
  });
  const squat = athleteStates(squad([0], 10, [...deadlifts, ...squats]))("Bea Lindqvale").ofLift(
    "back squat",
  );
  expect(squat).toMatchObject({ strengthLowKg: null });
  expect([squat.usualSpeed(60), squat.usualLead("work", 60)]).toEqual([null, null]);
  const only = athleteStates(squad([0], 10, deadlifts))("Bea Lindqvale").ofLift("deadlift");
  expect(only.usualSpeed(100)).toBeCloseTo(0.6, 1);
});
