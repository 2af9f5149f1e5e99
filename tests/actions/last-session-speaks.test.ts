import { athleteStates } from "../../src/actions/squad/athlete-states";
import { stateOfSquad } from "../../src/actions/squad/state-of-squad";
import { isoFromDay } from "../../src/coaching/calendar/day";
import { firstDay, wobble } from "../coaching/series/invented-season";
import { memoryWorkbook } from "./memory-workbook";

const name = "Nils Quarrington";
const head = ["Date", "Athlete", "Exercise", "Set", "Kind", "Load (kg)", "Rep speeds", "Tool"];
type Row = readonly unknown[];
type Session = {
  readonly tool?: string;
  /** m/s that the tool reads over the first one. */
  readonly over?: number;
  /** Share that the third set loses against the first. */
  readonly loses?: number;
  readonly noSpeeds?: boolean;
};

/** A Tuesday's marker at 50 kg and three sets at 70 kg; sets move at 1.50 − 0.0125·load. */
const session = (week: number, of: Session = {}): Row[] => {
  const { tool = "bar tool A", over = 0, loses = 0.02, noSpeeds = false } = of;
  const at = (kg: number) => 1.5 - 0.0125 * kg + over + 0.01 * wobble(week);
  const row = (kind: string, set: unknown, kg: number, speed: number): Row => [
    isoFromDay(firstDay + 1 + 7 * week),
    name,
    "back squat",
    set,
    kind,
    kg,
    noSpeeds ? "" : [0, 0.01].map((less) => (speed - less).toFixed(3)).join(" "),
    tool,
  ];
  return [
    row("marker", "", 50, at(50)),
    ...[1, 2, 3].map((set) => row("work", set, 70, at(70) * (1 - (loses * (set - 1)) / 2))),
  ];
};
const state = (sessions: readonly Session[]) => {
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Sessions a week"],
      [name, "trained", 1],
    ],
    Sets: [head, ...sessions.flatMap((of, week) => session(week, of))],
  });
  const squad = stateOfSquad(book, firstDay + 1 + 7 * (sessions.length - 1));
  const of = athleteStates(squad)(name);
  return { ...of, ...of.ofLift("back squat") };
};
const usual = Array<Session>(8).fill({});
const marker = (sessions: readonly Session[]) => state(sessions).usualLead("marker", 50)!.usual;

test("what the marker usually shows is told in the tool in use now, not in the baseline's", () => {
  const other = { tool: "bar tool B", over: 0.06 };
  const before = marker(usual);
  expect(marker([...usual, other, other]) - before).toBeGreaterThan(0.045);
  // One session away with another tool is no change of tool.
  expect(Math.abs(marker([...usual, other]) - before)).toBeLessThan(0.005);
  expect(Math.abs(marker([...usual, other, {}]) - before)).toBeLessThan(0.005);
});

test("speeds of an earlier session do not speak of a last one without a bar-speed device", () => {
  const lost = [...usual, { loses: 0.5 }];
  expect(state(lost).heldSpeed).toBe(false);
  expect(state([...lost, { noSpeeds: true }]).heldSpeed).toBeNull();
  const slow = [...usual, { over: -0.2 }];
  expect(state(slow).lastWord).toBe("well below usual");
  expect(state([...slow, { noSpeeds: true }]).lastWord).toBe("too few rows");
});
