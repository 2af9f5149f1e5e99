import { mondayOf } from "../coaching/calendar/day";
import { athleteSeason } from "../coaching/season/season-plan";
import { accept, refuse } from "../outcome";
import { readDayArgument } from "../rows/argument/day-argument";
import { groupRacesWords, seasonRaces, seasonSigns } from "../words/season-weeks";
import { askedAthletes, rowsForAthletes } from "./arguments/asked-athletes";
import { isBlank } from "./arguments/elementwise";
import { givenTables } from "./arguments/given-tables";
import { groupRaces } from "./arguments/group-races";
import { numberCell } from "./arguments/number-cell";
import { thrown } from "./arguments/thrown";
import { withUnused } from "./arguments/unused-rows";
import { athletesParameter, racesParameter } from "./parameters";
import type { SheetFunction } from "./sheet-function";

const exampleAthletes = [
  ["athlete", "group"],
  ["Tomas Reyerson", "track"],
  ["Hamid Sorley", "marathon"],
];
const exampleRaces = [
  ["date", "start", "race", "who", "distance", "matters"],
  ["2026-05-23", "10:00", "R2", "all", "10 km", "A"],
  ["2026-06-13", "14:00", "R3", "track", "1500 m", "B"],
];
const usualWeeks = 18;

export const seasonWeeksFunction: SheetFunction = {
  name: "SEASON_WEEKS",
  summary:
    "The season at a glance, one sign a week: A for an A race, a for the week after, B and C for other races, · for an ordinary week; four weeks to a group.",
  parameters: [
    athletesParameter,
    racesParameter,
    { name: "first_day", help: "A day of the season's first week, a date cell." },
    { name: "weeks", help: "Weeks of the season; 18 when left out.", optional: true },
  ],
  results: ["weeks", "races"],
  examples: [
    {
      formula: "=SEASON_WEEKS(Athletes!A:B, Races!A:F, B1, 8)",
      args: [exampleAthletes, exampleRaces, "2026-05-04", 8],
      result: [
        ["··Aa ·B··", "R2 (A) 23 May, R3 (B) 13 Jun"],
        ["··Aa ····", "R2 (A) 23 May"],
      ],
    },
  ],
  compute: ([athletes, races, firstDay, weeksCell]) => {
    const asked = askedAthletes(athletes);
    const monday = mondayOf(thrown(readDayArgument(firstDay, "first_day")));
    const weeks = isBlank(weeksCell) ? usualWeeks : thrown(numberCell(weeksCell, "weeks"));
    if (!(Number.isInteger(weeks) && weeks >= 1 && weeks <= 52)) {
      thrown(refuse("weeks-impossible", { weeks }));
    }
    // A race written "9 May" is the one nearest the middle of these weeks.
    const middle = monday + Math.floor((7 * weeks) / 2);
    const given = givenTables({ Races: races }, ["Races"], middle);
    const mondays = Array.from({ length: weeks }, (_, at) => monday + 7 * at);
    const last = monday + 7 * weeks;
    const others = groupRaces(
      asked.asked,
      given.rows("Races").filter(({ day }) => day >= monday && day < last),
    );
    return rowsForAthletes(asked, 2, ({ athlete, record }) => {
      const season = athleteSeason(athlete, record, given.rows("Races"), mondays);
      // A race not read may be anybody's.
      const own = seasonRaces(season);
      const told = others.length === 0 ? own : `${own}; ${groupRacesWords(others)}`;
      const said = withUnused(told, given.unused.beside([]));
      return accept([seasonSigns(season), said]);
    });
  },
};
