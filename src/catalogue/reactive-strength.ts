import { reactiveStrength } from "../coaching/jumps/reactive-strength";
import { elementwise } from "./arguments/elementwise";
import { lengthCell } from "./arguments/number-cell";
import { secondsCell } from "./arguments/seconds-cell";
import type { SheetFunction } from "./sheet-function";

export const reactiveStrengthFunction: SheetFunction = {
  name: "REACTIVE_STRENGTH",
  summary: "Reactive strength of a drop jump: height over ground contact time, m/s.",
  parameters: [
    { name: "height", help: "Jump height, cm. A cell or a column." },
    { name: "contact_time", help: "Ground contact time in s or ms." },
  ],
  results: ["reactive strength (m/s)"],
  examples: [{ formula: "=REACTIVE_STRENGTH(36, 180)", args: [36, 180], result: 2 }],
  compute: ([height, contact]) =>
    elementwise(
      [
        { name: "height", cells: height, needed: true, inUnit: true },
        { name: "contact_time", cells: contact, needed: true },
      ],
      (heightCell, contactCell) => {
        const heightCm = lengthCell(heightCell, "height");
        if (!heightCm.ok) return heightCm;
        const contactS = secondsCell(contactCell, "contact_time");
        return contactS.ok ? reactiveStrength(heightCm.value, contactS.value) : contactS;
      },
    ),
};
