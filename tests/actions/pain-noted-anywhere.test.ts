import { athleteStates } from "../../src/actions/athlete-states";
import { stateOfSquad } from "../../src/actions/state-of-squad";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const name = "Nils Quarrington";
const asOf = dayFromIso("2026-06-12") as number;
type Tab = readonly (readonly unknown[])[];

const unwell = (tabs: Readonly<Record<string, Tab>>) =>
  athleteStates(stateOfSquad(memoryWorkbook({ Athletes: [["Athlete"], [name]], ...tabs }), asOf))(
    name,
  ).unwellDay;
const sets: Tab = [
  ["Date", "Athlete", "Exercise", "Load (kg)", "Notes"],
  ["2026-06-10", name, "back squat", 80, ""],
  ["2026-06-11", "N. Quarrington", "back squat", 80, ""],
  ["2026-06-11", name, "back squat", 80, "knee pain, stopped"],
];
const jumps: Tab = [
  ["Date", "Athlete", "Test", "Height (cm)", "Notes"],
  ["2026-06-10", name, "box jump", 50, "calf hurts"],
];
const diary: Tab = [
  ["Date", "Athlete", "Note"],
  ["2026-06-12", name, "fever"],
];

test("pain written beside a set, a jump or in the diary is asked after before sets are written", () => {
  expect(unwell({ Sets: sets.slice(0, 3) })).toBeNull();
  expect(unwell({ Sets: sets })).toBe(asOf - 1);
  expect(unwell({ Jumps: jumps })).toBe(asOf - 2);
  expect(unwell({ Sets: sets, Jumps: jumps, Diary: diary })).toBe(asOf);
});

test("once Availability says what is allowed, it is not asked again", () => {
  const answered: Tab = [
    ["Athlete", "From", "May do"],
    [name, "2026-06-12", "full"],
  ];
  expect(unwell({ Sets: sets, Diary: diary, Availability: answered })).toBeNull();
});
