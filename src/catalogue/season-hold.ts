import { valueChange } from "../coaching/hold/value-change";
import { squadIndex } from "../coaching/series/squad-index";
import { accept } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { holdReason, holdWords, sinceWords, valueWords } from "../words/reasons-hold";
import { noteWords } from "../words/reasons-notes";
import { askedAthletes, rowsForKnown } from "./arguments/asked-athletes";
import { givenTables } from "./arguments/given-tables";
import { holdGiven } from "./arguments/hold-given";
import { thrown } from "./arguments/thrown";
import { sentences, withUnused } from "./arguments/unused-rows";
import { exampleJumps, exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  jumpsParameter,
  platesParameter,
  rulesParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const seasonHoldFunction: SheetFunction = {
  name: "SEASON_HOLD",
  summary:
    "Whether an athlete holds the speed and power of the season's own baseline, and since when not.",
  parameters: [
    athletesParameter,
    setsParameter,
    jumpsParameter,
    asOfParameter,
    platesParameter,
    rulesParameter,
  ],
  results: ["word", "since", "value", "change (fraction)", "why"],
  examples: [
    {
      formula: '=SEASON_HOLD("Ilka Brandmoor", Sets!A:F, Jumps!A:D, B1)',
      args: ["Ilka Brandmoor", exampleSets, exampleJumps, "2026-05-21"],
      result: [
        [
          "holding",
          "–",
          "back squat speed",
          0.004,
          "back squat speed +0.4 % from baseline, wobble 4 %, last 4 sessions against 6; a loss of 4 % would usually show within six more sessions",
        ],
      ],
    },
  ],
  compute: ([athletes, sets, jumps, asOfCell, plates, rulesCells]) => {
    const asked = askedAthletes(athletes);
    const asOf = thrown(readDayArgument(asOfCell));
    const given = givenTables(
      { Sets: sets, Jumps: jumps, Plates: plates, Rules: rulesCells },
      [],
      asOf,
    );
    const index = squadIndex({ sets: given.rows("Sets"), jumps: given.rows("Jumps") }, asOf);
    const hold = holdGiven(index, asked, given);
    return rowsForKnown(asked, given, asOf, 5, (athlete) => {
      const season = hold.of(athlete);
      const { value } = season;
      const why = sentences(holdReason(season), season.notes.map(noteWords));
      return accept([
        holdWords(season),
        sinceWords(season),
        value ? valueWords(value) : "–",
        (value && valueChange(value)) ?? "–",
        withUnused(why, given.unused.of(athlete)),
      ]);
    });
  },
};
