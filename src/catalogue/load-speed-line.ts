import { squadLines } from "../coaching/bar-speed/squad-lines";
import { accept } from "../outcome";
import { lineReason } from "../words/reasons-line";
import { liftOfSquad } from "./arguments/lift-of-squad";
import { withUnused } from "./arguments/unused-rows";
import { exampleSets } from "./example-rows";
import { asOfParameter, athletesParameter, exerciseParameter, setsParameter } from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const loadSpeedLineFunction: SheetFunction = {
  name: "LOAD_SPEED_LINE",
  summary:
    "Bar speed against load for one lift, recent sessions weighing more, steadied by the squad.",
  parameters: [athletesParameter, setsParameter, exerciseParameter, asOfParameter],
  results: [
    "slope (m/s per kg)",
    "intercept (m/s)",
    "residual SD (m/s)",
    "sets used",
    "lightest (kg)",
    "heaviest (kg)",
    "rests on",
  ],
  examples: [
    {
      formula: '=LOAD_SPEED_LINE("Ilka Brandmoor", Sets!A:F, "back squat", B1)',
      args: ["Ilka Brandmoor", exampleSets, "back squat", "2026-05-21"],
      result: [[-0.01246, 1.547, 0.0276, 28, 60, 85, "28 sets on 14 days, 60 to 85 kg"]],
    },
  ],
  compute: ([athletes, sets, exercise, asOf]) => {
    const lift = liftOfSquad({ athletes, sets, exercise, asOf });
    const lineOf = squadLines({ index: lift.index, exercise: lift.exercise });
    return lift.rows(7, (athlete) => {
      const read = lineOf(athlete);
      if (!read.ok) return read;
      const { slope, intercept, residualSd, setsUsed, lightestKg, heaviestKg } = read.value;
      const words = withUnused(lineReason(read.value), lift.given.unused.of(athlete));
      return accept([slope, intercept, residualSd, setsUsed, lightestKg, heaviestKg, words]);
    });
  },
};
