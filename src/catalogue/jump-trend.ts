import { squadJumpTrend } from "../coaching/jumps/squad-jump-trend";
import { squadIndex } from "../coaching/series/squad-index";
import { accept } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { jumpTrendReason, jumpTrendWords } from "../words/reasons-jump";
import { noteWords } from "../words/reasons-notes";
import { askedAthletes, rowsForKnown } from "./arguments/asked-athletes";
import { givenTables } from "./arguments/given-tables";
import { textCell } from "./arguments/number-cell";
import { thrown } from "./arguments/thrown";
import { sentences, withUnused } from "./arguments/unused-rows";
import { exampleJumps } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  jumpsParameter,
  platesParameter,
  rulesParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const jumpTrendFunction: SheetFunction = {
  name: "JUMP_TREND",
  summary: "One jump test from the season's own baseline to now, against what could be wobble.",
  parameters: [
    athletesParameter,
    jumpsParameter,
    { name: "test", help: "The jump test, as the Jumps table writes it." },
    asOfParameter,
    platesParameter,
    rulesParameter,
  ],
  results: [
    "baseline (cm)",
    "now (cm)",
    "change (fraction)",
    "smallest change that matters (fraction)",
    "word",
    "why",
  ],
  examples: [
    {
      formula: '=JUMP_TREND("Tomas Reyerson", Jumps!A:D, "box jump", B1)',
      args: ["Tomas Reyerson", exampleJumps, "box jump", "2026-05-21"],
      result: [
        [
          44.1,
          41.7,
          -0.053,
          0.02,
          "slipping",
          "41.7 cm, −5 % from 44.1 since 30 Apr, smallest change that matters 2 %, 7 days against 6",
        ],
      ],
    },
  ],
  compute: ([athletes, jumps, testCell, asOfCell, plates, rulesCells]) => {
    const asked = askedAthletes(athletes);
    const asOf = thrown(readDayArgument(asOfCell));
    const test = thrown(textCell(testCell, "test"));
    const given = givenTables({ Jumps: jumps, Plates: plates, Rules: rulesCells }, ["Jumps"], asOf);
    const trendOf = squadJumpTrend({
      index: squadIndex({ jumps: given.rows("Jumps") }, asOf),
      test,
      plates: given.rows("Plates"),
      athletes: asked.table?.records ?? [],
      rules: given.rules,
    });
    return rowsForKnown(asked, given, asOf, 6, (athlete) => {
      const read = trendOf(athlete);
      if (!read.ok) return read;
      const trend = read.value;
      const why = sentences(jumpTrendReason(trend), trend.notes.map(noteWords));
      return accept([
        trend.baselineCm ?? "–",
        trend.nowCm ?? "–",
        trend.change ?? "–",
        trend.smallestChange ?? "–",
        jumpTrendWords(trend),
        withUnused(why, given.unused.of(athlete)),
      ]);
    });
  },
};
