import type { Day } from "../calendar/day";
import { testDays } from "../jumps/test-day";
import type { Plate } from "../record/plate";
import type { AthleteRows } from "../series/squad-index";
import { againstUsual } from "./against-usual";
import { jumpValues } from "./jump-values";
import type { PartOrGap } from "./part-or-gap";
import { pastValues } from "./past-values";
import { type ReadinessSettings, usualSpread } from "./readiness-settings";
import type { SquadSpreads } from "./squad-spreads";

/** The jump test of the day with most earlier readings; a height before a contact time. */
export function jumpPart(
  rows: AthleteRows,
  day: Day,
  plates: readonly Plate[],
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  let best: PartOrGap = null;
  let most = -1;
  for (const [test, attempts] of rows.jumps) {
    const days = testDays(attempts, plates);
    const today = days.find((one) => one.day === day);
    const values = jumpValues(days, today);
    if (!values) continue;
    const past = pastValues(values.dated, day, settings);
    const rank = past.length + (values.unit === "cm" ? 0.5 : 0);
    if (rank <= most) continue;
    most = rank;
    const of = attempts[0]!.test;
    const now = values.dated.find((one) => one.day === day)!.value;
    const usual = {
      past,
      squadSd: Math.max(squad.jump(test), values.leastSd),
      leastSd: usualSpread.jump.least,
    };
    const z = againstUsual(now, usual, settings);
    const mean = past.reduce((sum, value) => sum + value, 0) / past.length;
    best =
      z === null
        ? { gap: { part: "jump", of, rows: settings.leastPast - past.length } }
        : {
            part: {
              part: "jump",
              of,
              unit: values.unit,
              z,
              today: values.valueAt(now),
              usual: values.valueAt(mean),
              pastRows: past.length,
            },
          };
  }
  return best;
}
