import { velocityLoss } from "../coaching/bar-speed/velocity-loss";
import { elementwise } from "./arguments/elementwise";
import { speedsFromCells } from "./arguments/speed-cells";
import type { SheetFunction } from "./sheet-function";

export const velocityLossFunction: SheetFunction = {
  name: "VELOCITY_LOSS",
  summary:
    "Loss of bar speed within a set: fastest repetition to last, as a fraction of the fastest.",
  parameters: [
    {
      name: "speeds",
      help: "Speeds of the set's repetitions in order, m/s: several cells in a row, or one cell such as 0.62 0.60 0.57. One row for each set.",
    },
  ],
  results: ["loss (fraction)"],
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
  ],
  compute: ([speeds]) =>
    elementwise([{ name: "speeds", cells: speeds, needed: true, wide: true }], (cells) => {
      const read = speedsFromCells(cells as readonly unknown[]);
      return read.ok ? velocityLoss(read.value) : read;
    }),
};
