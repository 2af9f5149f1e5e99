import { squadSetToSet } from "../coaching/bar-speed/squad-set-to-set";
import { accept } from "../outcome";
import { setToSetWords } from "../words/reasons-set-to-set";
import { liftOfSquad } from "./arguments/lift-of-squad";
import { withUnused } from "./arguments/unused-rows";
import { exampleSets } from "./example-rows";
import { asOfParameter, athletesParameter, exerciseParameter, setsParameter } from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const setToSetFunction: SheetFunction = {
  name: "SET_TO_SET",
  summary: "The last session's sets against its first, and against that athlete's own habit.",
  parameters: [athletesParameter, setsParameter, exerciseParameter, asOfParameter],
  results: [
    "second set against first (fraction)",
    "last set against first (fraction)",
    "usual last against first (fraction)",
    "set that left the usual",
    "words",
  ],
  examples: [
    {
      formula: '=SET_TO_SET("Tomas Reyerson", Sets!A:F, "back squat", B1)',
      args: ["Tomas Reyerson", exampleSets, "back squat", "2026-05-21"],
      result: [
        [-0.0303, -0.0303, -0.0205, "–", "as usual: last set −3 % against the first on 21 May"],
      ],
    },
  ],
  compute: ([athletes, sets, exercise, asOf]) => {
    const lift = liftOfSquad({ athletes, sets, exercise, asOf });
    const sessionOf = squadSetToSet({ index: lift.index, exercise: lift.exercise });
    return lift.rows(5, (athlete) => {
      const read = sessionOf(athlete);
      if (!read.ok) return read;
      const { secondVsFirst, lastVsFirst, usualLastVsFirst, leftUsualAtSet } = read.value;
      return accept([
        secondVsFirst ?? "–",
        lastVsFirst,
        usualLastVsFirst ?? "–",
        leftUsualAtSet ?? "–",
        withUnused(setToSetWords(read.value), lift.given.unused.of(athlete)),
      ]);
    });
  },
};
