import { loadSpeedLineFunction } from "../catalogue/load-speed-line";
import { seasonHoldFunction } from "../catalogue/season-hold";
import { setToSetFunction } from "../catalogue/set-to-set";
import type { SheetFunction } from "../catalogue/sheet-function";

/** A formula of the spreadsheet as a function of the warehouse. */
export type WarehouseFunction = {
  /** Name in the library; the SQL's is made from it. */
  readonly name: string;
  readonly formula: SheetFunction;
  /** What it is told besides the squad, in the library's order. */
  readonly told: readonly ("exercise" | "as_of")[];
  /** Names of the answer's columns, in the order of the formula's results; the rest are words. */
  readonly figures: readonly string[];
  readonly words: readonly string[];
  /** Order of the answer's columns in the formula's result. */
  readonly order: readonly string[];
};

const withWordsLast = (figures: readonly string[], words: readonly string[]) => ({
  figures,
  words,
  order: [...figures, ...words],
});

/** Formulas that are asked of a whole squad, and so of many squads side by side. */
export const warehouseFunctions: readonly WarehouseFunction[] = [
  {
    name: "setToSet",
    formula: setToSetFunction,
    told: ["exercise", "as_of"],
    ...withWordsLast(
      [
        "second_against_first",
        "last_against_first",
        "usual_last_against_first",
        "left_usual_at_set",
      ],
      ["words"],
    ),
  },
  {
    name: "loadSpeedLine",
    formula: loadSpeedLineFunction,
    told: ["exercise", "as_of"],
    ...withWordsLast(
      ["slope", "intercept", "residual_sd", "sets_used", "lightest_kg", "heaviest_kg"],
      ["rests_on"],
    ),
  },
  {
    name: "seasonHold",
    formula: seasonHoldFunction,
    told: ["as_of"],
    figures: ["change"],
    words: ["word", "since", "value", "why"],
    order: ["word", "since", "value", "change", "why"],
  },
];
