import { athleteStates } from "../../src/actions/squad/athlete-states";
import { stateOfSquad } from "../../src/actions/squad/state-of-squad";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleCells, sampleClub } from "./sample-club";

// Whole sample workbooks are judged.

/** What next week's jumps rest on, the box jump of the sample written under a name of the coach's. */
const jumps = (name: string) => {
  const cells = sampleCells("Jumps").map((row) =>
    row.map((cell) => (cell === "box jump" ? name : cell)),
  );
  const stateOf = athleteStates(
    stateOfSquad(sampleClub({ Jumps: cells }), dayFromIso("2026-06-28")!),
  );
  return ["Priya Tellander", "Tomas Reyerson"].map((athlete) => {
    const { jumpWord, lastStackKg, lastJumpCm } = stateOf(athlete);
    return [jumpWord, lastStackKg.length > 0, lastJumpCm];
  });
};

test("the box jump is followed under the card's name for it as under the sample's", () => {
  const usual = jumps("box jump");
  expect(usual).toEqual([
    ["rising", true, null],
    ["holding", false, 41],
  ]);
  expect(jumps("Straight-leg box jump")).toEqual(usual);
});

test("a drop jump from a box is no box jump", () => {
  expect(jumps("box drop jump")).toEqual([
    [null, false, null],
    [null, false, null],
  ]);
});
