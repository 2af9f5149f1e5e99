import { expectedSpeed } from "../../coaching/bar-speed/expected-speed";
import { latestRows, squadLines } from "../../coaching/bar-speed/squad-lines";
import { squadSetToSet } from "../../coaching/bar-speed/squad-set-to-set";
import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { racesOf } from "../../coaching/diary/races-of";
import type { SeasonHold } from "../../coaching/hold/season-hold";
import { liftDays, mainLift } from "../../coaching/next-week/present-step/main-lift";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { exerciseKey } from "../../coaching/record/exercise-key";
import { nameKey } from "../../coaching/record/name-key";
import { holdReason, valueWords } from "../../words/reasons-hold";
import { daysSetsWords } from "../../words/reasons-set-to-set";
import type { AthleteView, LinePicture, SeasonPicture, SetsPicture } from "../messages";
import type { Workbook } from "../workbook";
import { squadLine } from "./squad-view";
import { type StateOfSquad, stateOfSquad } from "./state-of-squad";

/** One athlete: the word and why, and pictures of the season, the load–speed line and the last sets. */
export function athleteView(workbook: Workbook, today: Day, athlete: string): AthleteView {
  return athleteViewOf(stateOfSquad(workbook, today), athlete);
}

export function athleteViewOf(state: StateOfSquad, athlete: string): AthleteView {
  const season = state.hold.of(athlete);
  const lift = liftShown(state, athlete);
  return {
    numbers: state.numbers.style,
    line: squadLine(state, athlete),
    season: season.sessions.length === 0 ? null : seasonPicture(state, season),
    loadSpeed: lift === null ? null : linePicture(state, athlete, lift),
    sets: lift === null ? null : setsPicture(state, athlete, lift),
  };
}

/** The lift the athlete is on, or where its speeds were not taken the one with most that were. */
function liftShown({ index, read, asOf }: StateOfSquad, athlete: string): string | null {
  const lifts = index.of(athlete)?.lifts ?? new Map<string, never>();
  const key = nameKey(athlete);
  const own = read.rows.sets.filter((set) => set.day <= asOf && nameKey(set.athlete) === key);
  const [most] = [...lifts].sort((a, b) => b[1].length - a[1].length);
  const shown = lifts.get(mainLift(liftDays(own)) ?? "") ?? most?.[1];
  return shown?.[0]?.set.exercise ?? null;
}

export function seasonPicture(state: StateOfSquad, season: SeasonHold): SeasonPicture {
  const { sessions, measures } = season;
  const first = sessions[0]!.day;
  const last = Math.max(sessions[sessions.length - 1]!.day, state.asOf);
  const details = athleteNamed(state.read.rows.athletes, season.athlete);
  const races = racesOf(state.read.rows.races, season.athlete, details ?? null);
  return {
    athlete: season.athlete,
    from: isoFromDay(first),
    to: isoFromDay(last),
    series: measures.map((measure, at) => ({
      name: valueWords(measure),
      band: 2 * measure.wobble,
      turned: measure.kind === "contact time",
      points: sessions.flatMap(({ day, percents }) => {
        const percent = percents[at];
        return percent === null || percent === undefined ? [] : [{ day: isoFromDay(day), percent }];
      }),
    })),
    since:
      season.sinceDay === null
        ? null
        : {
            day: isoFromDay(season.sinceDay),
            from: isoFromDay(season.sinceFrom ?? season.sinceDay),
            to: isoFromDay(season.sinceTo ?? season.sinceDay),
            way: season.word === "rising" ? "high" : "low",
          },
    races: races
      .filter(({ day }) => day >= first && day <= last)
      .map(({ day, race, matters }) => ({
        day: isoFromDay(day),
        name: race,
        matters: matters ?? "",
      })),
    inWords: state.numbers.told(`${season.athlete}: ${holdReason(season)}`),
  };
}

function linePicture(state: StateOfSquad, athlete: string, exercise: string): LinePicture | null {
  const rows = state.index.of(athlete);
  const line = squadLines({ index: state.index, exercise })(athlete);
  if (!rows || !line.ok) return null;
  const sets = latestRows(rows.lifts.get(exerciseKey(exercise)) ?? []);
  const { lightestKg, heaviestKg, lastDay } = line.value;
  const steps = 12;
  const width = Math.max(heaviestKg - lightestKg, 10);
  const { speed, withUnit } = state.numbers;
  // Lifted at one load throughout, it is told once.
  const ends = [...new Set([lightestKg, heaviestKg])];
  const speedAt = (kg: number) =>
    `${speed(expectedSpeed(line.value, kg).speed)} m/s at ${withUnit(kg)}`;
  return {
    exercise,
    points: sets.slice(-60).map(({ loadKg, speed, day }) => ({
      loadKg,
      speed,
      latest: day === lastDay,
    })),
    line: Array.from({ length: steps + 1 }, (_, i) => {
      const loadKg = lightestKg + (width * i) / steps;
      return { loadKg, ...expectedSpeed(line.value, loadKg) };
    }),
    inWords: `${exercise}, ${line.value.setsUsed} sets: ${ends.map(speedAt).join(", ")}.`,
  };
}

function setsPicture(state: StateOfSquad, athlete: string, exercise: string): SetsPicture | null {
  const sets = squadSetToSet({ index: state.index, exercise })(athlete);
  if (!sets.ok) return null;
  const percent = (fraction: number | null) => (fraction === null ? null : 100 * fraction);
  return {
    day: isoFromDay(sets.value.day),
    sets: sets.value.sets.map(({ set, change, usual, usualLow, usualHigh }) => ({
      set,
      percent: 100 * change,
      usual: percent(usual),
      low: percent(usualLow),
      high: percent(usualHigh),
    })),
    inWords: state.numbers.marked(daysSetsWords(sets.value)),
  };
}
