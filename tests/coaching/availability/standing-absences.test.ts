import {
  type StandingWords,
  standingAbsences,
} from "../../../src/coaching/availability/standing-absences";

const asOf = 100;
const said = (text: string, until: number | null = null): StandingWords => ({
  text,
  until,
  at: () => ({ place: "Athletes D3", words: text }),
});
type Spells = Parameters<typeof standingAbsences>[1];
const told = (one: StandingWords, spells: Spells = []) =>
  standingAbsences([one], spells, asOf).length > 0;

test("words beside no day hold until the day they name", () => {
  expect(standingAbsences([said("away")], [], asOf)).toEqual([
    { day: null, from: null, place: "Athletes D3", words: "away" },
  ]);
  expect(told(said("out until 12 June", 100))).toBe(true);
  expect(told(said("out until 12 June", 99))).toBe(false);
  expect(told(said("likes the evenings"))).toBe(false);
});

test.each([
  ["has lately begun", { from: 87, until: null, mayDo: "full" }, false],
  ["began before", { from: 86, until: null, mayDo: "full" }, true],
  ["was cleared before", { from: 86, until: null, mayDo: "cleared" }, true],
  ["begins later", { from: 110, until: null, mayDo: "full" }, false],
  ["ends later", { from: 50, until: 100, mayDo: "full" }, false],
  ["has ended", { from: 50, until: 99, mayDo: "out" }, true],
  ["still limits", { from: 50, until: null, mayDo: "modified" }, false],
  ["is open as out", { from: 50, until: null, mayDo: "out" }, false],
] as const)("beside a spell that %s they are told or answered", (_, spell, expected) => {
  expect(told(said("away"), [spell])).toBe(expected);
});
