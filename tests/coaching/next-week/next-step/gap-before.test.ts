import { gapBefore } from "../../../../src/coaching/next-week/next-step/gap-before";
import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import type { AvailabilitySpell } from "../../../../src/coaching/record/availability-spell";
import { athlete, clubRuns, day, session, squadRows, state } from "../written-squad";

/** Thursday's session is three days past on Sunday; weeks from 11 May on are planned, for Tuesdays. */
const lastDay = day("2026-05-07");
const asOf = day("2026-05-10");
const next = day("2026-05-11");
const gap = (of: Partial<Parameters<typeof gapBefore>[0]>) => {
  const { monday = next } = of;
  return gapBefore({
    lastDay,
    asOf,
    monday,
    firstDay: monday + 1,
    mayLift: () => true,
    ...of,
  });
};

test("before next week's Tuesday lie the five days since Thursday", () => {
  expect(gap({})).toBe(5);
});

test("weeks still to come count as trained: three weeks ahead nobody has been off", () => {
  // From Sunday, the last day before the planned week, to Tuesday.
  expect([7, 14, 21].map((ahead) => gap({ monday: next + ahead }))).toEqual([2, 2, 2]);
});

test("days on which nothing may be proposed are days off, known beforehand", () => {
  const monday = next + 14;
  expect(gap({ monday, mayLift: (on) => on >= monday })).toBe(19);
  // Out from Wednesday of the week between on: trained up to that Tuesday.
  expect(gap({ monday, mayLift: (on) => on <= next + 8 || on >= monday })).toBe(7);
});

test("planned on a Wednesday, this week's sessions are still to come for whoever is in training", () => {
  const wednesday = next - 5;
  expect(gap({ asOf: wednesday, lastDay: wednesday - 7 })).toBe(2);
  expect(gap({ asOf: wednesday, lastDay: wednesday - 8 })).toBe(14);
});

test("a break that lasts by now is as long as it is", () => {
  expect(gap({ lastDay: asOf - 20 })).toBe(22);
});

const name = "Ilka Brandmoor";
const ahead = (
  monday: number,
  availability: readonly AvailabilitySpell[] = [],
  today: number = asOf,
) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(name),
    rows: squadRows({
      availability,
      runs: clubRuns(name, monday),
      sets: ["2026-04-28", "2026-04-30", "2026-05-05", "2026-05-07"].flatMap((iso) =>
        session(name, iso, { sets: 3, reps: 5, loadKg: 70, markerKg: 55 }),
      ),
    }),
    monday,
    asOf: today,
  });

test("a week planned two weeks ahead takes nothing off for sessions nobody has missed", () => {
  const line = ahead(next + 14);
  expect(line.reasons.map(({ code }) => code)).not.toContain("restart");
  // The third week of 3×5 at 70 kg and the first of 5×3 at 72.5 lie between: this is its second.
  expect(line.sessions[0]).toMatchObject({ sets: 5, reps: 3, loadKg: 72.5 });
});

test("whoever is out until then begins lighter, with half the sets", () => {
  const out: AvailabilitySpell = {
    row: 2,
    athlete: name,
    from: next,
    until: next + 13,
    mayDo: "out",
    by: "",
    site: "",
    pain: null,
    note: "",
  };
  const line = ahead(next + 14, [out]);
  // Sixteen days beyond a rhythm of two a week: 20 % off 70 kg is 56, on plates 55; half of three sets is two.
  expect(line.reasons[0]).toEqual({ code: "restart", facts: { days: 16, percent: 20 } });
  expect(line.sessions[0]).toMatchObject({ sets: 2, loadKg: 55 });
});

test("a break that lasts by now ends in the first week in which sets may be proposed, then in grades", () => {
  const back = (monday: number, spells: readonly AvailabilitySpell[] = []) => {
    const { reasons, sessions } = ahead(monday, spells, asOf + 14);
    return [reasons.map(({ code }) => code).join(", "), sessions[0]?.loadKg];
  };
  // Last lifted on 7 May, planned on the 24th: 16 days beyond the rhythm by the 26th, 20 % off 70 kg.
  expect(back(next + 14)).toEqual(["restart, contacts-halved", 55]);
  // The week after is the next grade, 10 % off: 63 kg, on plates 62.5; then the 70 of before.
  expect(back(next + 21)).toEqual(["ahead, grade-back", 62.5]);
  expect(back(next + 28)).toEqual(["ahead, grade-back", 70]);
});
