import { readinessSettingsAt } from "../coaching/readiness/rated-settings";
import { squadReadiness } from "../coaching/readiness/squad-readiness";
import { squadIndex } from "../coaching/series/squad-index";
import { accept } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { readinessReason, readinessWords } from "../words/reasons-readiness";
import { askedAthletes, rowsForKnown } from "./arguments/asked-athletes";
import { givenTables } from "./arguments/given-tables";
import { thrown } from "./arguments/thrown";
import { withUnused } from "./arguments/unused-rows";
import { exampleDiary, exampleJumps, exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  diaryParameter,
  jumpsParameter,
  platesParameter,
  rulesParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const readinessFunction: SheetFunction = {
  name: "READINESS",
  summary: "One day against the athlete's own usual: first speeds, jump and diary together.",
  parameters: [
    athletesParameter,
    setsParameter,
    jumpsParameter,
    diaryParameter,
    asOfParameter,
    platesParameter,
    rulesParameter,
  ],
  results: ["word", "size (own wobbles)", "main reason"],
  examples: [
    {
      formula: '=READINESS("Tomas Reyerson", Sets!A:F, Jumps!A:D, Diary!A:E, B1)',
      args: ["Tomas Reyerson", exampleSets, exampleJumps, exampleDiary, "2026-05-21"],
      result: [["well below usual", -2.68, "sleep 4.5 h, usual 7.7, 13 earlier days"]],
    },
  ],
  compute: ([athletes, sets, jumps, diary, asOfCell, plates, rulesCells]) => {
    const asked = askedAthletes(athletes);
    const asOf = thrown(readDayArgument(asOfCell));
    const given = givenTables(
      { Sets: sets, Jumps: jumps, Diary: diary, Plates: plates, Rules: rulesCells },
      [],
      asOf,
    );
    const index = squadIndex(
      { sets: given.rows("Sets"), jumps: given.rows("Jumps"), diary: given.rows("Diary") },
      asOf,
    );
    const dayOf = squadReadiness({
      index,
      plates: given.rows("Plates"),
      settings: readinessSettingsAt(given.rules.falseFlagRate),
    });
    return rowsForKnown(asked, given, asOf, 3, (athlete) => {
      const day = dayOf(athlete);
      return accept([
        readinessWords(day),
        day.size ?? "–",
        withUnused(readinessReason(day), given.unused.of(athlete)),
      ]);
    });
  },
};
