import { formulaHelp, parameterHelp } from "../words/formula-help";
import { agreementFunction } from "./agreement";
import { dayLoadFunction } from "./day-load";
import { expectedSpeedFunction } from "./expected-speed";
import { flightHeightFunction } from "./flight-height";
import { helpInWords } from "./help-in-words";
import { jumpTrendFunction } from "./jump-trend";
import { loadDropFunction } from "./load-drop";
import { loadSpeedLineFunction } from "./load-speed-line";
import { nextBlockFunction } from "./next-block";
import { reactiveStrengthFunction } from "./reactive-strength";
import { readinessFunction } from "./readiness";
import { reliabilityFunction } from "./reliability";
import { repsInReserveFunction } from "./reps-in-reserve";
import { rowCheckFunction } from "./row-check";
import { runLoadFunction } from "./run-load";
import { seasonHoldFunction } from "./season-hold";
import { seasonWeeksFunction } from "./season-weeks";
import { setToSetFunction } from "./set-to-set";
import type { SheetFunction } from "./sheet-function";
import { squadTableFunction } from "./squad-table";
import { stackHeightFunction } from "./stack-height";
import { strengthEstimateFunction } from "./strength-estimate";
import { unusualDaysFunction } from "./unusual-days";
import { velocityLossFunction } from "./velocity-loss";
import { whatDifferedFunction } from "./what-differed";

// The build asks the catalogue alone for all that the declarations say.
export { mayBeLeftOut } from "../words/formula-help";

/** In the order the README lists them. */
const entries: readonly SheetFunction[] = [
  velocityLossFunction,
  setToSetFunction,
  loadSpeedLineFunction,
  expectedSpeedFunction,
  strengthEstimateFunction,
  flightHeightFunction,
  stackHeightFunction,
  reactiveStrengthFunction,
  jumpTrendFunction,
  readinessFunction,
  seasonHoldFunction,
  squadTableFunction,
  unusualDaysFunction,
  whatDifferedFunction,
  runLoadFunction,
  loadDropFunction,
  dayLoadFunction,
  nextBlockFunction,
  repsInReserveFunction,
  seasonWeeksFunction,
  rowCheckFunction,
  reliabilityFunction,
  agreementFunction,
];

/** Every custom function, its help in the language the words are in. */
export const catalogue: readonly SheetFunction[] = helpInWords(entries, {
  formulas: formulaHelp,
  parameters: parameterHelp,
});
