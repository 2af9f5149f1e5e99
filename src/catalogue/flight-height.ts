import { flightHeight } from "../coaching/jumps/flight-height";
import { accept, refuse } from "../outcome";
import { plausible } from "../rows/column/quantity";
import { elementwise, isBlank } from "./arguments/elementwise";
import { lengthCell } from "./arguments/number-cell";
import { secondsCell } from "./arguments/seconds-cell";
import type { SheetFunction } from "./sheet-function";

export const flightHeightFunction: SheetFunction = {
  name: "FLIGHT_HEIGHT",
  summary: "Height of a jump in cm from its flight time, also when the landing is raised.",
  parameters: [
    { name: "flight_time", help: "Flight time in s or ms, a cell or a column." },
    {
      name: "landing_height",
      help: "Height of the landing above the take-off, cm. Level when left out.",
      optional: true,
    },
  ],
  results: ["height (cm)"],
  examples: [
    { formula: "=FLIGHT_HEIGHT(0.5)", args: [0.5], result: 30.6 },
    { formula: "=FLIGHT_HEIGHT(500, 30)", args: [500, 30], result: 47.5 },
  ],
  compute: ([flight, landing]) =>
    elementwise(
      [
        { name: "flight_time", cells: flight, needed: true },
        { name: "landing_height", cells: landing, inUnit: true },
      ],
      (flightCell, landingCell) => {
        const flightS = secondsCell(flightCell, "flight_time");
        if (!flightS.ok) return flightS;
        const landingCm = isBlank(landingCell)
          ? accept(0)
          : lengthCell(landingCell, "landing_height");
        if (!landingCm.ok) return landingCm;
        const raisedCm = landingCm.value;
        return raisedCm !== 0 && Math.abs(raisedCm) < plausible.landingCm.lowUnnamed
          ? refuse("landing-impossible", { landingCm: raisedCm })
          : flightHeight(flightS.value, raisedCm);
      },
    ),
};
