import { isoFromDay } from "../../../src/coaching/calendar/day";
import type { Chance } from "./chance";
import type { SimulatedAthlete } from "./world";

/** The rows a coach would keep of these seasons, as the spreadsheet passes them. */
export type SquadCells = {
  readonly athletes: unknown[][];
  readonly sets: unknown[][];
  readonly jumps: unknown[][];
  readonly diary: unknown[][];
};

const repLoss = 0.015;
const repNoise = 0.006;

/** Cells of a whole squad: three or five work sets a session, one box jump and one drop jump. */
export function squadCells(
  athletes: readonly SimulatedAthlete[],
  random: Chance,
  withDiary = false,
): SquadCells {
  const cells: SquadCells = {
    athletes: [["Athlete", "Experience"]],
    sets: [
      [
        "Date",
        "Athlete",
        "Exercise",
        "Set",
        "Kind",
        "Reps",
        "Load (kg)",
        "Rep 1",
        "Rep 2",
        "Rep 3",
      ],
    ],
    jumps: [["Date", "Athlete", "Test", "Height (cm)", "Contact time (s)"]],
    diary: [["Date", "Athlete", "Sleep (h)", "Soreness", "Fatigue"]],
  };
  for (const athlete of athletes) {
    // An athlete with two seasons has one row.
    if (!cells.athletes.some(([name]) => name === athlete.name))
      cells.athletes.push([athlete.name, athlete.novice ? "novice" : "trained"]);
    const usual = { sleepH: 7 + random.uniform(), soreness: 2 + random.uniform() };
    for (const session of athlete.sessions) {
      const date = isoFromDay(session.day);
      const addSet = (set: number, kind: string, loadKg: number, speed: number) => {
        const reps = [0, 1, 2].map((rep) =>
          round(
            speed * (1 - repLoss * rep) - (rep === 0 ? 0 : Math.abs(repNoise * random.normal())),
            3,
          ),
        );
        cells.sets.push([date, athlete.name, "back squat", set, kind, 3, loadKg, ...reps]);
      };
      if (session.marker) addSet(1, "marker", session.marker.loadKg, session.marker.speed);
      session.setSpeeds.forEach((speed, set) => {
        addSet(set + 1, "work", session.loadKg, speed);
      });
      if (session.jumpCm !== null)
        cells.jumps.push([date, athlete.name, "box jump", round(session.jumpCm, 1), ""]);
      if (session.contactS !== null)
        cells.jumps.push([date, athlete.name, "drop jump", "", round(session.contactS, 4)]);
      if (withDiary) cells.diary.push([date, athlete.name, ...diaryDay(session, usual, random)]);
    }
  }
  return cells;
}

/** Between two items of one day. */
const betweenItems = 0.35;
const itemSd = 0.7;
const sleepSd = 0.9;

/**
 * Sleep to the quarter hour, soreness and fatigue as whole numbers from 1 to 5. A day 5 % off costs
 * one SD, a day 8 % off one and a half.
 */
function diaryDay(
  { dayOff }: { readonly dayOff: number },
  usual: { readonly sleepH: number; readonly soreness: number },
  random: Chance,
): number[] {
  const shared = Math.sqrt(betweenItems) * random.normal();
  const worse = Math.min(1.5, -dayOff / 5);
  const [sleep, soreness, fatigue] = [0, 1, 2].map(
    () => worse + shared + Math.sqrt(1 - betweenItems) * random.normal(),
  ) as [number, number, number];
  const item = (z: number) => Math.min(5, Math.max(1, Math.round(usual.soreness + itemSd * z)));
  return [Math.round(4 * (usual.sleepH - sleepSd * sleep)) / 4, item(soreness), item(fatigue)];
}

function round(value: number, places: number): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}
