import { stackHeight } from "../coaching/jumps/stack-height";
import { refuse } from "../outcome";
import { readStack } from "../rows/value/stack";
import { elementwise, isBlank } from "./arguments/elementwise";
import { tableArgument } from "./arguments/table-argument";
import { thrown } from "./arguments/thrown";
import type { SheetFunction } from "./sheet-function";

const plates = [
  ["mass kg", "thickness cm", "owned"],
  [20, 4.5, 6],
  [15, 3.8, 6],
  [5, 2.1, 4],
];

export const stackHeightFunction: SheetFunction = {
  name: "STACK_HEIGHT",
  summary: "Height in cm of plates laid flat on one another, from this gym's own thicknesses.",
  parameters: [
    { name: "stack", help: "Plates from the bottom up, such as 5x15+5. A cell or a column." },
    { name: "plates", help: "The Plates table with its header row: mass and measured thickness." },
  ],
  results: ["height (cm)"],
  examples: [
    { formula: '=STACK_HEIGHT("5x15+5", Plates!A:C)', args: ["5x15+5", plates], result: 21.1 },
  ],
  compute: ([stack, table]) => {
    const { reading } = thrown(tableArgument("Plates", "plates", table));
    return elementwise([{ name: "stack", cells: stack, needed: true }], (cell) => {
      if (isBlank(cell)) return refuse("argument-blank", { name: "stack" });
      const stackKg = readStack(cell);
      return stackKg.ok ? stackHeight(stackKg.value, reading.records) : stackKg;
    });
  },
};
