import { flightHeightFunction } from "./flight-height";
import { reactiveStrengthFunction } from "./reactive-strength";
import { repsInReserveFunction } from "./reps-in-reserve";
import { rowCheckFunction } from "./row-check";
import type { SheetFunction } from "./sheet-function";
import { stackHeightFunction } from "./stack-height";
import { velocityLossFunction } from "./velocity-loss";

/** Every custom function, in the order the README lists them. */
export const catalogue: readonly SheetFunction[] = [
  velocityLossFunction,
  flightHeightFunction,
  stackHeightFunction,
  reactiveStrengthFunction,
  repsInReserveFunction,
  rowCheckFunction,
];
