import { trialReliability } from "../coaching/reliability/trial-reliability";
import { reliabilityLabels as label, noPercent, trialCell } from "../words/reliability";
import { rowsOf } from "./arguments/elementwise";
import { rowsOfNumbers } from "./arguments/rows-of-numbers";
import { thrown } from "./arguments/thrown";
import type { SheetFunction } from "./sheet-function";

export const reliabilityFunction: SheetFunction = {
  name: "RELIABILITY",
  summary:
    "How well a test repeats, to check a jump test or a new bar-speed tool: typical error, smallest detectable change and intraclass correlations of two or more trials by several athletes. Context: no proposal rests on it.",
  parameters: [
    {
      name: "trials",
      help: "One athlete a row, one trial a column, two or more of each, all in one unit. Figures only; a first row of words is taken for headings.",
    },
  ],
  results: ["figure", "value", "low (95 %)", "high (95 %)"],
  examples: [
    {
      formula: "=RELIABILITY(B1:C6)",
      args: [
        [
          ["Monday (cm)", "Thursday (cm)"],
          [31.2, 31.9],
          [36.4, 35.8],
          [28.9, 29.6],
          [40.1, 40.3],
          [33.5, 32.6],
        ],
      ],
      result: [
        ["athletes", 5, "", ""],
        ["trials", 2, "", ""],
        ["mean change, first trial to last", 0.02, "", ""],
        ["typical error", 0.52, 0.31, 1.5],
        ["smallest detectable change", 1.45, "", ""],
        ["typical error (%)", 1.63, "", ""],
        ["intraclass correlation, trials fixed: ICC(3,1)", 0.985, 0.865, 0.998],
        ["intraclass correlation, trials a sample: ICC(2,1)", 0.988, 0.889, 0.999],
        ["intraclass correlation, trials in no order: ICC(1,1)", 0.988, 0.914, 0.999],
        ["of the mean of all trials: ICC(3,k)", 0.992, "", ""],
        ["of the mean of all trials: ICC(2,k)", 0.994, "", ""],
        ["of the mean of all trials: ICC(1,k)", 0.994, "", ""],
      ],
    },
  ],
  compute: ([trials]) => {
    const rows = thrown(rowsOfNumbers(rowsOf(trials ?? ""), "trials", trialCell));
    const found = thrown(trialReliability(rows));
    const { correlations, limits } = found;
    const single = (name: "consistency" | "agreement" | "oneWay") => [
      label[name],
      told(correlations[name]),
      told(limits[name]?.low),
      told(limits[name]?.high),
    ];
    const alone = (name: string, value: number | string) => [name, told(value), "", ""];
    return [
      alone(label.athletes, found.athletes),
      alone(label.trials, found.trials),
      alone(label.meanChange, found.meanChange),
      [label.typicalError, found.typicalError, found.low, found.high],
      alone(label.detectableChange, found.detectableChange),
      alone(label.percentError, found.percentError ?? noPercent),
      single("consistency"),
      single("agreement"),
      single("oneWay"),
      alone(label.consistencyMean, correlations.consistencyMean),
      alone(label.agreementMean, correlations.agreementMean),
      alone(label.oneWayMean, correlations.oneWayMean),
    ];
  },
};

/** A correlation has no end where the athletes' means are all alike, and no limits where none can be told. */
const told = (value: number | string | undefined) =>
  value === undefined || (typeof value === "number" && !Number.isFinite(value)) ? "–" : value;
