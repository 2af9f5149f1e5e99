import { flightHeightFunction } from "../catalogue/flight-height";
import { jumpTrendFunction } from "../catalogue/jump-trend";
import { loadSpeedLineFunction } from "../catalogue/load-speed-line";
import { reactiveStrengthFunction } from "../catalogue/reactive-strength";
import { seasonHoldFunction } from "../catalogue/season-hold";
import { setToSetFunction } from "../catalogue/set-to-set";
import type { SheetFunction } from "../catalogue/sheet-function";
import { velocityLossFunction } from "../catalogue/velocity-loss";

/** A formula of one figure as a function of the warehouse, asked row by row. */
export type FigureFunction = {
  /** Name in the library; the SQL's is made from it. */
  readonly name: string;
  readonly formula: SheetFunction;
  /** Columns it is given, in order; speeds are a list. */
  readonly given: readonly ("rep_speeds" | "flight_s" | "landing_cm" | "height_cm" | "contact_s")[];
  /** Table whose rows it is asked of. */
  readonly rows: "sets" | "jumps";
  /** Name of the figure in the answer. */
  readonly figure: string;
};

export const figureFunctions: readonly FigureFunction[] = [
  {
    name: "velocityLoss",
    formula: velocityLossFunction,
    given: ["rep_speeds"],
    rows: "sets",
    figure: "loss",
  },
  {
    name: "flightHeight",
    formula: flightHeightFunction,
    given: ["flight_s", "landing_cm"],
    rows: "jumps",
    figure: "height_cm",
  },
  {
    name: "reactiveStrength",
    formula: reactiveStrengthFunction,
    given: ["height_cm", "contact_s"],
    rows: "jumps",
    figure: "reactive_strength",
  },
];

/** A formula of a whole squad as a function of the warehouse. */
export type WarehouseFunction = {
  /** Name in the library; the SQL's is made from it. */
  readonly name: string;
  readonly formula: SheetFunction;
  /** Rows of the squad it is given, by athlete. */
  readonly rows: "sets" | "jumps";
  /** What it is told besides the squad, in the library's order. */
  readonly told: readonly ("exercise" | "test" | "as_of")[];
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
    rows: "sets",
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
    rows: "sets",
    told: ["exercise", "as_of"],
    ...withWordsLast(
      ["slope", "intercept", "residual_sd", "sets_used", "lightest_kg", "heaviest_kg"],
      ["rests_on"],
    ),
  },
  {
    name: "seasonHold",
    formula: seasonHoldFunction,
    rows: "sets",
    told: ["as_of"],
    figures: ["change"],
    words: ["word", "since", "value", "why"],
    order: ["word", "since", "value", "change", "why"],
  },
  {
    name: "jumpTrend",
    formula: jumpTrendFunction,
    rows: "jumps",
    told: ["test", "as_of"],
    ...withWordsLast(["baseline_cm", "now_cm", "change", "smallest_change"], ["word", "why"]),
  },
];

/** A function that lists what of a squad's rows cannot be used. */
export type CheckFunction = {
  readonly name: string;
  readonly rows: "sets" | "jumps";
  readonly told: readonly [];
};

export const checkFunctions: readonly CheckFunction[] = [
  { name: "checkSets", rows: "sets", told: [] },
  { name: "checkJumps", rows: "jumps", told: [] },
];

/** Columns of such a function's answer. */
export const issueColumns = [
  "athlete",
  "day",
  "place",
  "column_name",
  "found",
  "what_to_do",
  "why_it_matters",
] as const;
