import { squadLines } from "../coaching/bar-speed/squad-lines";
import { strengthEstimate } from "../coaching/bar-speed/strength-estimate";
import { accept, refuse } from "../outcome";
import { lineReason } from "../words/reasons-line";
import { liftOfSquad } from "./arguments/lift-of-squad";
import { withUnused } from "./arguments/unused-rows";
import { exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  exerciseParameter,
  rulesParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const strengthEstimateFunction: SheetFunction = {
  name: "STRENGTH_ESTIMATE",
  summary:
    "Load at the lift's minimum speed with its 90 % interval: context and a guard, not a load to try.",
  parameters: [athletesParameter, setsParameter, exerciseParameter, asOfParameter, rulesParameter],
  results: ["strength (kg)", "low (kg)", "high (kg)", "rests on"],
  examples: [
    {
      formula: '=STRENGTH_ESTIMATE("Ilka Brandmoor", Sets!A:F, "back squat", B1)',
      args: ["Ilka Brandmoor", exampleSets, "back squat", "2026-05-21"],
      result: [[100.6, 97.5, 104, "28 sets on 14 days, 60 to 85 kg"]],
    },
  ],
  compute: ([athletes, sets, exercise, asOf, rules]) => {
    const lift = liftOfSquad({ athletes, sets, exercise, asOf, rules });
    const lineOf = squadLines({ index: lift.index, exercise: lift.exercise });
    return lift.rows(4, (athlete) => {
      const line = lineOf(athlete);
      if (!line.ok) return line;
      const estimate = strengthEstimate(line.value, lift.given.rules.minimumSpeed);
      if (!estimate.ok) {
        const { code, facts } = estimate.refusal;
        return refuse(code, { ...facts, exercise: lift.exercise });
      }
      const { kg, low, high } = estimate.value;
      return accept([
        kg,
        low,
        high,
        withUnused(lineReason(line.value), lift.given.unused.of(athlete)),
      ]);
    });
  },
};
