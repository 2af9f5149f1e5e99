import { nameKey } from "../coaching/record/name-key";
import { weekLoad } from "../coaching/season/run-load";
import { accept } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { weekRunsWords } from "../words/week-runs";
import { askedAthletes, rowsForKnown } from "./arguments/asked-athletes";
import { givenTables } from "./arguments/given-tables";
import { thrown } from "./arguments/thrown";
import { withUnused } from "./arguments/unused-rows";
import { asOfParameter, athletesParameter, runsParameter } from "./parameters";
import type { SheetFunction } from "./sheet-function";

const exampleRuns = [
  ["date", "athlete", "minutes", "exertion"],
  ["2026-05-11", "Ilka Brandmoor", 60, 5],
  ["2026-05-13", "Ilka Brandmoor", 60, 7],
  ["2026-05-14", "Ilka Brandmoor", 45, 4],
  ["2026-05-16", "Ilka Brandmoor", 60, 6],
  ["2026-05-17", "Ilka Brandmoor", 90, 6],
];

export const runLoadFunction: SheetFunction = {
  name: "RUN_LOAD",
  summary:
    "Exertion × minutes of the seven days that end on a day, with monotony (mean over SD, n − 1, rest days as zero) and strain: context beside the gym, no forecast of injury.",
  parameters: [athletesParameter, runsParameter, asOfParameter],
  results: [
    "the day",
    "seven days",
    "monotony",
    "strain",
    "6 days before",
    "5 days before",
    "4 days before",
    "3 days before",
    "2 days before",
    "1 day before",
    "rows",
  ],
  examples: [
    {
      formula: '=RUN_LOAD("Ilka Brandmoor", Runs!A:D, B1)',
      args: ["Ilka Brandmoor", exampleRuns, "2026-05-17"],
      result: [[540, 1800, 1.2421, 2235.8124, 300, 0, 420, 180, 0, 360, "5 runs"]],
    },
  ],
  compute: ([athletes, runs, asOfCell]) => {
    const asked = askedAthletes(athletes);
    const asOf = thrown(readDayArgument(asOfCell));
    const given = givenTables({ Runs: runs }, ["Runs"], asOf);
    return rowsForKnown(asked, given, asOf, 11, (athlete) => {
      const own = given
        .rows("Runs")
        .filter((run) => nameKey(run.athlete) === nameKey(athlete) && run.day <= asOf);
      const week = weekLoad(own, asOf);
      if (!week.ok) return week;
      const { days, total, monotony, strain } = week.value;
      const counted = own.filter(({ day }) => day > asOf - 7).length;
      return accept([
        days[6]!,
        total,
        monotony ?? "–",
        strain ?? "–",
        ...days.slice(0, 6),
        withUnused(weekRunsWords(counted, monotony === null), given.unused.of(athlete)),
      ]);
    });
  },
};
