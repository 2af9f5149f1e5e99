import { isoFromDay } from "../../../src/coaching/calendar/day";
import type { Chance } from "./chance";
import type { SimulatedAthlete } from "./world";

/** The rows a coach would keep of these seasons, as the spreadsheet passes them. */
export type SquadCells = {
  readonly athletes: unknown[][];
  readonly sets: unknown[][];
  readonly jumps: unknown[][];
};

const repLoss = 0.015;
const repNoise = 0.006;

/** Cells of a whole squad: three work sets of five a session, one box jump and one drop jump. */
export function squadCells(athletes: readonly SimulatedAthlete[], random: Chance): SquadCells {
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
  };
  for (const athlete of athletes) {
    cells.athletes.push([athlete.name, athlete.novice ? "novice" : "trained"]);
    for (const session of athlete.sessions) {
      const date = isoFromDay(session.day);
      if (session.speed !== null) {
        for (let set = 1; set <= 3; set++) {
          // The first set carries the session's error; later sets tire and add an error of their own.
          const first =
            session.speed * (1 - 0.01 * (set - 1)) + (set === 1 ? 0 : 0.02 * random.normal());
          const reps = [0, 1, 2].map((rep) =>
            round(
              first * (1 - repLoss * rep) - (rep === 0 ? 0 : Math.abs(repNoise * random.normal())),
              3,
            ),
          );
          cells.sets.push([
            date,
            athlete.name,
            "back squat",
            set,
            "work",
            3,
            session.loadKg,
            ...reps,
          ]);
        }
      }
      if (session.jumpCm !== null)
        cells.jumps.push([date, athlete.name, "box jump", round(session.jumpCm, 1), ""]);
      if (session.contactS !== null)
        cells.jumps.push([date, athlete.name, "drop jump", "", round(session.contactS, 4)]);
    }
  }
  return cells;
}

function round(value: number, places: number): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}
