import { expectedSpeed } from "../coaching/bar-speed/expected-speed";
import { latestRows, squadLines } from "../coaching/bar-speed/squad-lines";
import { usualLeadAt } from "../coaching/next-week/state/usual-lead";
import { exerciseKey } from "../coaching/record/exercise-key";
import { accept, refuse } from "../outcome";
import { mostlyPounds } from "../rows/header/mostly-pounds";
import { understoodOnce } from "../rows/read-once";
import { foundText } from "../rows/value/found-text";
import { lineReason } from "../words/reasons-line";
import { alignedWith } from "./arguments/aligned-with";
import { isBlank, rowsOf } from "./arguments/elementwise";
import { liftOfSquad } from "./arguments/lift-of-squad";
import { massCell } from "./arguments/number-cell";
import { withUnused } from "./arguments/unused-rows";
import { exampleSets } from "./example-rows";
import { asOfParameter, athletesParameter, exerciseParameter, setsParameter } from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const expectedSpeedFunction: SheetFunction = {
  name: "EXPECTED_SPEED",
  summary:
    "Speed a load usually moves at in a first set: its fastest repetition with the range of nine sets in ten, and the mean of its repetitions, which decides the day.",
  parameters: [
    athletesParameter,
    {
      name: "loads",
      help: "Load on the bar, kg unless the cell says otherwise, as 155 lb: one cell, or a column beside the athletes.",
    },
    setsParameter,
    exerciseParameter,
    asOfParameter,
  ],
  results: [
    "expected (m/s)",
    "low (m/s)",
    "high (m/s)",
    "usual mean (m/s)",
    "low mean (m/s)",
    "rests on",
  ],
  examples: [
    {
      formula: '=EXPECTED_SPEED("Ilka Brandmoor", 65, Sets!A:F, "back squat", B1)',
      args: ["Ilka Brandmoor", 65, exampleSets, "back squat", "2026-05-21"],
      result: [[0.74, 0.69, 0.79, 0.74, 0.69, "28 sets on 14 days, 60 to 85 kg"]],
    },
  ],
  compute: ([athletes, loads, sets, exercise, asOf]) => {
    const pairs = alignedWith(athletes, loads, "loads");
    const lift = liftOfSquad({ athletes: pairs.athletes, sets, exercise, asOf });
    const lineOf = squadLines({ index: lift.index, exercise: lift.exercise });
    // Beside sets in pounds a bare number is taken for pounds by whoever types it.
    const inPounds = mostlyPounds(understoodOnce("Sets", rowsOf(sets), lift.asOf).columns);
    return lift.rows(6, (athlete, at) => {
      const load = pairs.cellAt(at);
      if (inPounds && !isBlank(load) && !/[a-z]/i.test(String(load)))
        return refuse("load-without-unit", { load: foundText(load) });
      const loadKg = massCell(load, "loads");
      if (!loadKg.ok) return loadKg;
      if (!(loadKg.value >= 0 && loadKg.value <= 500)) {
        return refuse("load-impossible", { loadKg: loadKg.value });
      }
      const line = lineOf(athlete);
      if (!line.ok) return line;
      const { speed, low, high } = expectedSpeed(line.value, loadKg.value);
      if (!(speed > 0)) return refuse("load-past-line", { loadKg: loadKg.value });
      // An interval down to a bar that stands still says nothing about today.
      if (!(low > 0)) return refuse("speed-too-wide", { loadKg: loadKg.value, high });
      const words = withUnused(lineReason(line.value), lift.given.unused.of(athlete));
      const own = latestRows(lift.index.of(athlete)?.lifts.get(exerciseKey(lift.exercise)) ?? []);
      const lead = usualLeadAt(line.value, own, loadKg.value);
      return accept([speed, low, high, lead.usual, lead.low, words]);
    });
  },
};
