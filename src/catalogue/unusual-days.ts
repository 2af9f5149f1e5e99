import { performanceDays } from "../coaching/diary/performance-day";
import { racesOf } from "../coaching/diary/races-of";
import { unusualDays } from "../coaching/diary/unusual-day";
import { accept, refuse } from "../outcome";
import { dayCell, unusualDayWords, unusualValueWords } from "../words/diary";
import { countWords } from "../words/reasons-figures";
import { groupRacesWords } from "../words/season-weeks";
import { diaryOfSquad } from "./arguments/diary-of-squad";
import { groupRaces } from "./arguments/group-races";
import { withUnused } from "./arguments/unused-rows";
import { exampleDiary, exampleJumps, exampleSets } from "./example-rows";
import {
  asOfParameter,
  athletesParameter,
  diaryParameter,
  jumpsParameter,
  racesParameter,
  runsParameter,
  setsParameter,
} from "./parameters";
import type { SheetFunction } from "./sheet-function";

export const unusualDaysFunction: SheetFunction = {
  name: "UNUSUAL_DAYS",
  summary:
    "Each day beyond the athlete's own wobble, slow or good, with what stood out on it and the day before.",
  parameters: [
    athletesParameter,
    setsParameter,
    jumpsParameter,
    diaryParameter,
    runsParameter,
    racesParameter,
    asOfParameter,
  ],
  results: ["athlete", "date", "value", "size (own wobbles)", "what stood out"],
  examples: [
    {
      formula:
        '=UNUSUAL_DAYS("Ilka Brandmoor", Sets!A:F, Jumps!A:D, Diary!A:M, Runs!A:E, Races!A:F, B1)',
      args: ["Ilka Brandmoor", exampleSets, exampleJumps, exampleDiary, "", "", "2026-05-21"],
      result: [
        [
          "Ilka Brandmoor",
          "2026-05-07",
          "back squat speed −12 %",
          -3.21,
          "sleep 5 h, usual 7.7 h; note: “late train home”",
        ],
      ],
    },
  ],
  compute: ([athletes, sets, jumps, diary, runs, races, asOf]) => {
    const squad = diaryOfSquad(athletes, asOf, {
      Sets: sets,
      Jumps: jumps,
      Diary: diary,
      Runs: runs,
      Races: races,
    });
    const raced = squad.given.rows("Races");
    const others = groupRaces(
      squad.asked.asked,
      raced.filter(({ day }) => day <= squad.asOf),
    );
    return squad.rows(5, ({ athlete, record }) => {
      const own = squad.of(athlete);
      const sessions = performanceDays(own.hold).length;
      if (sessions < 4) {
        return refuse("season-without-level", { athlete, sessions: own.hold.sessions.length });
      }
      const days = unusualDays({
        ...own,
        races: racesOf(raced, athlete, record),
      });
      const unused = squad.given.unused.of(athlete);
      // A race for a group may be this athlete's, too.
      const told = (words: string) =>
        withUnused(others.length === 0 ? words : `${words}; ${groupRacesWords(others)}`, unused);
      if (days.length === 0) {
        const none = `no day beyond the athlete's own wobble in ${countWords(sessions, "session")}`;
        return accept([["–", "–", "–", told(none)]]);
      }
      return accept(
        days.map((day, at) => [
          dayCell(day.day),
          unusualValueWords(day),
          day.size,
          at === 0 ? told(unusualDayWords(day)) : unusualDayWords(day),
        ]),
      );
    });
  },
};
