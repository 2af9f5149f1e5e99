import { stopRep } from "../coaching/bar-speed/stop-rep";
import { velocityLoss } from "../coaching/bar-speed/velocity-loss";
import { accept, type Outcome, refuse } from "../outcome";
import { elementwise } from "./arguments/elementwise";
import { optionalNumberCell } from "./arguments/number-cell";
import { speedsFromCells } from "./arguments/speed-cells";
import type { SheetFunction } from "./sheet-function";

export const velocityLossFunction: SheetFunction = {
  name: "VELOCITY_LOSS",
  summary:
    "Loss of bar speed within a set: fastest repetition to last, as a fraction of the fastest; with a cap also where it was reached.",
  parameters: [
    {
      name: "speeds",
      help: "Speeds of the set's repetitions in order, m/s: several cells in a row, or one cell such as 0.62 0.60 0.57. One row for each set.",
    },
    {
      name: "cap",
      help: "Loss at which a set is to end, a fraction such as 0.2. One repetition past it may be chance: a set ends at the second in a row.",
      optional: true,
    },
  ],
  results: ["loss (fraction)", "first repetition at the cap", "second in a row"],
  examples: [
    {
      formula: '=VELOCITY_LOSS("0.60 0.57 0.54 0.48")',
      args: ["0.60 0.57 0.54 0.48"],
      result: 0.2,
    },
    {
      formula: "=VELOCITY_LOSS(H2:J3)",
      args: [
        [
          [0.5, 0.48, 0.45],
          [0.62, 0.64, 0.64],
        ],
      ],
      result: [[0.1], [0]],
    },
    {
      formula: "=VELOCITY_LOSS(H2:L2, 0.2)",
      args: [[[0.6, 0.58, 0.48, 0.52, 0.47]], 0.2],
      result: [[0.216667, 3, ""]],
    },
    {
      formula: '=VELOCITY_LOSS("0.60 0.55 0.47 0.45", 0.2)',
      args: ["0.60 0.55 0.47 0.45", 0.2],
      result: [[0.25, 3, 4]],
    },
  ],
  compute: ([speeds, cap]) =>
    elementwise(
      [
        { name: "speeds", cells: speeds, needed: true, wide: true },
        { name: "cap", cells: cap },
      ],
      (cells, capCell) => {
        const read = speedsFromCells(cells as readonly unknown[]);
        if (!read.ok) return read;
        const limit = optionalNumberCell(capCell, "cap");
        if (!limit.ok) return limit;
        return limit.value === null
          ? velocityLoss(read.value)
          : lossAgainst(read.value, limit.value);
      },
    ),
};

/** No set is planned past half its speed; more is rather a speed of the set that stands apart. */
const mostLoss = 0.5;

/** Loss, the first repetition at or past the cap and the second such in a row; blank where none is. */
function lossAgainst(speeds: readonly number[], cap: number): Outcome<readonly unknown[]> {
  if (!(cap > 0 && cap <= mostLoss)) return refuse("cap-impossible", { cap });
  const loss = velocityLoss(speeds);
  return loss.ok
    ? accept([loss.value, stopRep(speeds, cap) ?? "", stopRep(speeds, cap, 2) ?? ""])
    : loss;
}
