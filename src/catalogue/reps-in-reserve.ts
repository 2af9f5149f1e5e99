import { repsInReserve } from "../coaching/blocks/reps-in-reserve";
import { elementwise } from "./arguments/elementwise";
import { massCell, numberCell } from "./arguments/number-cell";
import type { SheetFunction } from "./sheet-function";

export const repsInReserveFunction: SheetFunction = {
  name: "REPS_IN_RESERVE",
  summary:
    "Repetitions left after a set, by the handbooks' repetition chart: more than ten where it gives over ten, below zero past what it allows.",
  parameters: [
    { name: "load", help: "Load on the bar, kg. A cell or a column." },
    { name: "reps", help: "Repetitions of the set." },
    { name: "strength", help: "Strength estimate, kg; its low end is the cautious one." },
  ],
  results: ["repetitions"],
  examples: [{ formula: "=REPS_IN_RESERVE(87, 3, 100)", args: [87, 3, 100], result: 2 }],
  compute: ([load, reps, strength]) =>
    elementwise(
      [
        { name: "load", cells: load, needed: true },
        { name: "reps", cells: reps },
        { name: "strength", cells: strength },
      ],
      (loadCell, repsCell, strengthCell) => {
        const loadKg = massCell(loadCell, "load");
        if (!loadKg.ok) return loadKg;
        const count = numberCell(repsCell, "reps");
        if (!count.ok) return count;
        const strengthKg = massCell(strengthCell, "strength");
        return strengthKg.ok
          ? repsInReserve(loadKg.value, count.value, strengthKg.value)
          : strengthKg;
      },
    ),
};
