import type { Day } from "../calendar/day";
import type { AthleteRows } from "../series/squad-index";
import { againstLine } from "./against-usual";
import type { PartOrGap } from "./part-or-gap";
import { type ReadinessSettings, usualSpread } from "./readiness-settings";
import { speedToday } from "./speed-today";
import type { SquadSpreads } from "./squad-spreads";

/** The lift of the day with most earlier readings. */
export function speedPart(
  rows: AthleteRows,
  day: Day,
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  let best: PartOrGap = null;
  let most = -1;
  for (const [lift, sets] of rows.lifts) {
    const now = speedToday(sets, day, squad.lift(lift), settings);
    const of = sets[0]!.set.exercise;
    const today = sets.some((set) => set.day === day && set.loadKg !== null);
    const past = now?.past.length ?? 0;
    if (!today || past <= most) continue;
    most = past;
    const { least } = usualSpread.speed;
    const z = now
      ? againstLine(
          now.offLine,
          now.lineError,
          { past: now.past.map(({ value }) => value), squadSd: squad.speed(lift), leastSd: least },
          settings,
        )
      : null;
    best =
      now && z !== null
        ? {
            part: {
              part: "speed",
              of,
              unit: "m/s",
              z,
              today: now.today,
              usual: now.usual,
              pastRows: past,
            },
          }
        : { gap: { part: "speed", of, rows: settings.leastPast - past } };
  }
  return best;
}
