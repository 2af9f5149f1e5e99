import { loadDrop } from "../coaching/blocks/load-drop";
import { accept } from "../outcome";
import { noHeavyWork } from "../words/day-load";
import { elementwise } from "./arguments/elementwise";
import { barSpeedCell, massCell, numbersOf } from "./arguments/number-cell";
import type { SheetFunction } from "./sheet-function";

const names = ["planned_load", "speed", "usual_speed", "step"] as const;

export const loadDropFunction: SheetFunction = {
  name: "LOAD_DROP",
  summary:
    "Load for the remaining sets when the marker or first set is slower than usual; never above the plan.",
  parameters: [
    { name: "planned_load", help: "Load planned, kg. A cell or a column." },
    { name: "speed", help: "Mean speed of today's marker or first set, m/s." },
    {
      name: "usual_speed",
      help: "What that mean usually is, m/s, such as EXPECTED_SPEED’s usual mean.",
    },
    { name: "step", help: "Smallest change of load on the bar, kg." },
  ],
  results: ["load (kg)"],
  examples: [
    { formula: "=LOAD_DROP(85, 0.79, 0.86, 2.5)", args: [85, 0.79, 0.86, 2.5], result: 80 },
    { formula: "=LOAD_DROP(85, 0.84, 0.86, 2.5)", args: [85, 0.84, 0.86, 2.5], result: 85 },
  ],
  compute: ([planned, speed, usual, step]) =>
    elementwise(
      [
        { name: names[0], cells: planned, needed: true },
        { name: names[1], cells: speed, needed: true },
        { name: names[2], cells: usual },
        { name: names[3], cells: step },
      ],
      (...cells) => {
        const numbers = numbersOf(cells, names, (cell, name) =>
          (name.endsWith("speed") ? barSpeedCell : massCell)(cell, name),
        );
        if (!numbers.ok) return numbers;
        const [plannedKg, speedMs, usualMs, stepKg] = numbers.value;
        const drop = loadDrop(plannedKg!, speedMs!, usualMs!, stepKg!);
        if (!drop.ok) return drop;
        return accept(drop.value.kind === "no heavy work" ? noHeavyWork : drop.value.loadKg);
      },
    ),
};
