import type { Finding } from "../coaching/diary/finding";
import { seededChance } from "../coaching/diary/seeded-chance";
import { squadDiffered } from "../coaching/diary/squad-differed";
import { symptomDays } from "../coaching/diary/symptom-day";
import { itemsOfAthlete, whatDiffered } from "../coaching/diary/what-differed";
import { nameKey } from "../coaching/record/name-key";
import { accept, refuse } from "../outcome";
import { findingWords, symptomWordsOf } from "../words/diary";
import { diaryOfSquad } from "./arguments/diary-of-squad";
import { withUnused } from "./arguments/unused-rows";
import { exampleDiary, exampleJumps, exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  diaryParameter,
  jumpsParameter,
  runsParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const whatDifferedFunction: SheetFunction = {
  name: "WHAT_DIFFERED",
  summary:
    "Which diary items go with good and slow days, athlete by athlete and all together, with counts of days and p-values held against all items looked at.",
  parameters: [
    athletesParameter,
    setsParameter,
    jumpsParameter,
    diaryParameter,
    runsParameter,
    asOfParameter,
  ],
  results: [
    "athlete",
    "item",
    "difference (fraction)",
    "low (fraction)",
    "high (fraction)",
    "days",
    "p-value",
    "adjusted p-value",
    "in words",
  ],
  examples: [
    {
      formula: '=WHAT_DIFFERED("Tomas Reyerson", Sets!A:F, Jumps!A:D, Diary!A:M, Runs!A:E, B1)',
      args: ["Tomas Reyerson", exampleSets, exampleJumps, exampleDiary, "", "2026-05-21"],
      result: [
        [
          "Tomas Reyerson",
          "sleep",
          0.001,
          -0.006,
          0.008,
          14,
          0.77,
          0.77,
          "No link to be seen over 14 days: an hour more sleep, box jump +0.1 % (95 %: −0.6 % to +0.8 %); no slow day among them, 1 of 14 days had sleep under 6.6 h. The season's slow drift and the weekday taken out, 1 item looked at.",
        ],
        [
          "Tomas Reyerson",
          "soreness",
          "–",
          "–",
          "–",
          14,
          "–",
          "–",
          "Not enough days to say: 1 day with and 13 without, of 4 needed each way.",
        ],
      ],
    },
  ],
  compute: ([athletes, sets, jumps, diary, runs, asOf]) => {
    const squad = diaryOfSquad(athletes, asOf, {
      Sets: sets,
      Jumps: jumps,
      Diary: diary,
      Runs: runs,
    });
    const laidOut: ReturnType<typeof itemsOfAthlete>[] = [];
    const rows = squad.rows(9, ({ athlete }) => {
      const own = squad.of(athlete);
      const items = itemsOfAthlete(own);
      if (items.items.length === 0 && items.writtenAfter === 0) {
        return refuse("diary-without-rows", { athlete });
      }
      laidOut.push(items);
      const findings = whatDiffered(items, seededChance(`${nameKey(athlete)} ${squad.asOf}`));
      const symptoms = symptomDays(own.diary, squad.asOf);
      const first = symptoms.length === 0 ? [] : [lookFirst(symptoms)];
      return accept(
        [...first, ...findings.map(findingRow)].map((row, at) => {
          const unused = at === 0 ? squad.given.unused.of(athlete) : 0;
          return [...row.slice(0, -1), withUnused(String(row[row.length - 1]), unused)];
        }),
      );
    });
    if (laidOut.length < 2) return rows;
    const together = squadDiffered(laidOut, seededChance(`all together ${squad.asOf}`));
    return [...rows, ...together.map((finding) => ["all together", ...findingRow(finding)])];
  },
};

function findingRow(finding: Finding): unknown[] {
  const fraction = (percent: number | null) => (percent === null ? "–" : percent / 100);
  const { item, difference, low, high, days, p, adjustedP } = finding;
  return [
    item,
    fraction(difference),
    fraction(low),
    fraction(high),
    days,
    p ?? "–",
    adjustedP ?? "–",
    findingWords(finding),
  ];
}

function lookFirst(days: ReturnType<typeof symptomDays>): unknown[] {
  return ["look first", "–", "–", "–", days.length, "–", "–", symptomWordsOf(days)];
}
