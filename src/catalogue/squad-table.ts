import { mayDoOn } from "../coaching/availability/spell-on";
import type { Day } from "../coaching/calendar/day";
import { racesOf } from "../coaching/diary/races-of";
import type { SeasonHold } from "../coaching/hold/season-hold";
import { valueChange } from "../coaching/hold/value-change";
import { readinessSettingsAt } from "../coaching/readiness/rated-settings";
import { squadReadiness } from "../coaching/readiness/squad-readiness";
import { nameKey } from "../coaching/record/name-key";
import { seasonWeeks } from "../coaching/season/season-weeks";
import { gymDays } from "../coaching/series/season-start";
import { squadIndex } from "../coaching/series/squad-index";
import { accept } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { nameLink } from "../rows/name/near-name";
import { dayWords } from "../words/days";
import { sentence } from "../words/pages";
import { holdWords, sinceWords, valueWords } from "../words/reasons-hold";
import { noteWords } from "../words/reasons-notes";
import { readinessWords } from "../words/reasons-readiness";
import { plainSeasonPicture, seasonPicture } from "../words/season-picture";
import { groupRacesWords } from "../words/season-weeks";
import { mayDoWords, nextRaceWords, rowsBesideWords } from "../words/squad-table";
import { askedAthletes, rowsForAthletes } from "./arguments/asked-athletes";
import { type GivenTables, givenTables } from "./arguments/given-tables";
import { groupRaces } from "./arguments/group-races";
import { holdGiven } from "./arguments/hold-given";
import { thrown } from "./arguments/thrown";
import { exampleDiary, exampleJumps, exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  diaryParameter,
  jumpsParameter,
  platesParameter,
  racesParameter,
  rulesParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const squadTableFunction: SheetFunction = {
  name: "SQUAD_TABLE",
  summary:
    "The whole squad in one call: who may do what, who holds, slips or rises, since when, and how the season went.",
  parameters: [
    athletesParameter,
    { name: "availability", help: "The Availability table with its header row." },
    setsParameter,
    jumpsParameter,
    diaryParameter,
    racesParameter,
    asOfParameter,
    platesParameter,
    rulesParameter,
  ],
  results: [
    "athlete",
    "may do",
    "word",
    "since",
    "value",
    "change (fraction)",
    "wobble (fraction)",
    "loss that would show (fraction)",
    "season picture",
    "last session",
    "rows not used",
    "notes",
  ],
  examples: [
    {
      formula: "=SQUAD_TABLE(A2:A3, MayDo!A:E, Sets!A:F, Jumps!A:D, Diary!A:E, Races!A:F, B1)",
      args: [
        [["Tomas Reyerson"], ["Ilka Brandmoor"]],
        [
          ["athlete", "from", "may do"],
          ["Tomas Reyerson", "2026-05-12", "modified"],
        ],
        exampleSets,
        exampleJumps,
        exampleDiary,
        "",
        "2026-05-21",
      ],
      result: [
        [
          "Tomas Reyerson",
          "modified",
          "slipping",
          "30 Apr (± 5 days)",
          "back squat speed",
          -0.108,
          0.03,
          0.038,
          "⠢⠌⠤⢄⣀⣀⣀",
          "21 May: well below usual",
          0,
          "",
        ],
        [
          "Ilka Brandmoor",
          "full",
          "holding",
          "–",
          "back squat speed",
          0.004,
          0.035,
          0.043,
          "⠔⠢⠢⠢⢄⠔⠢",
          "21 May: as usual",
          0,
          "",
        ],
      ],
    },
  ],
  compute: ([athletes, availability, sets, jumps, diary, races, asOfCell, plates, rulesCells]) => {
    const asked = askedAthletes(athletes);
    const asOf = thrown(readDayArgument(asOfCell));
    const given = givenTables(
      {
        Availability: availability,
        Sets: sets,
        Jumps: jumps,
        Diary: diary,
        Races: races,
        Plates: plates,
        Rules: rulesCells,
      },
      [],
      asOf,
    );
    const index = squadIndex(
      { sets: given.rows("Sets"), jumps: given.rows("Jumps"), diary: given.rows("Diary") },
      asOf,
    );
    const hold = holdGiven(index, asked, given);
    const dayOf = squadReadiness({
      index,
      plates: given.rows("Plates"),
      settings: readinessSettingsAt(given.rules.falseFlagRate),
    });
    const picture = given.rules.plainPicture === 1 ? plainSeasonPicture : seasonPicture;
    const beside = given.unused.beside(asked.asked.map(({ athlete }) => athlete));
    const first = asked.asked.findIndex(({ athlete }) => athlete !== "");
    const listed = new Set(asked.asked.map((one) => nameKey(one.athlete)));
    const strangers = [...given.namesUpTo(asOf).values()].filter(
      (one) => !listed.has(nameKey(one)),
    );
    const nearTo = (athlete: string) =>
      strangers.filter((one) => nameLink(athlete, one) !== null).join(" or ");
    const others = groupRaces(
      asked.asked,
      given.rows("Races").filter(({ day }) => day > asOf),
    );
    return rowsForAthletes(asked, 12, ({ athlete, record }, at) => {
      const season = hold.of(athlete);
      const { value, visibleFall } = season;
      const own = index.of(athlete);
      const last = own ? Math.max(...gymDays(own)) : Number.NEGATIVE_INFINITY;
      const next = racesOf(given.rows("Races"), athlete, record)
        .filter(({ day }) => day > asOf)
        .sort((a, b) => a.day - b.day)[0];
      return accept([
        athlete,
        mayDoCell(given, athlete, asOf),
        holdWords(season),
        sinceWords(season),
        value ? valueWords(value) : "–",
        (value && valueChange(value)) ?? "–",
        value ? value.wobble / 100 : "–",
        visibleFall === null ? "–" : visibleFall / 100,
        picture(seasonWeeks(season, hold.seasonStart)),
        Number.isFinite(last) ? `${dayWords(last)}: ${readinessWords(dayOf(athlete, last))}` : "–",
        given.unused.of(athlete),
        notesOf(
          season,
          nearTo(athlete),
          next,
          asOf,
          at === first ? { rows: beside, races: others } : { rows: 0, races: [] },
        ),
      ]);
    });
  },
};

/** "full" is said only of an athlete whose availability was given and read. */
function mayDoCell(given: GivenTables, athlete: string, asOf: Day): string {
  if (!given.has("Availability")) return mayDoWords.notGiven;
  if (given.dropped("Availability", athlete) > 0) return mayDoWords.unread;
  return mayDoOn(given.rows("Availability"), athlete, asOf);
}

/** What the table's other columns do not say, in one cell. */
function notesOf(
  { notes }: SeasonHold,
  near: string,
  next: { readonly race: string; readonly day: Day; readonly matters: string | null } | undefined,
  asOf: Day,
  beside: { readonly rows: number; readonly races: readonly string[] },
): string {
  return [
    ...notes.map((note) => noteWords({ ...note, facts: { ...note.facts, near } })),
    ...(next ? [nextRaceWords(next, asOf)] : []),
    ...(beside.rows > 0 ? [rowsBesideWords(beside.rows)] : []),
    ...(beside.races.length > 0 ? [`${sentence(groupRacesWords(beside.races))}.`] : []),
  ].join(" ");
}
