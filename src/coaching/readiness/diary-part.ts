import { meanOf } from "../../statistics/spread";
import type { Day } from "../calendar/day";
import type { AthleteRows } from "../series/squad-index";
import { againstUsual } from "./against-usual";
import { itemByDay } from "./diary-items";
import type { PartOrGap } from "./part-or-gap";
import { pastValues } from "./past-values";
import type { ReadinessItem } from "./readiness";
import { moreIsWorse, type ReadinessSettings, usualSpread } from "./readiness-settings";
import type { SquadSpreads } from "./squad-spreads";

/** One diary item of a day against the athlete's usual. */
export function diaryPart(
  { diary }: AthleteRows,
  day: Day,
  item: ReadinessItem,
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  const values = itemByDay(diary, item);
  const today = values.find((one) => one.day === day);
  if (!today) return null;
  const past = pastValues(values, day, settings);
  const usual = { past, squadSd: squad.item(item), leastSd: usualSpread[item].least };
  const distance = againstUsual(today.value, usual, settings);
  if (distance === null) {
    return { gap: { part: item, of: "", rows: settings.leastPast - past.length } };
  }
  return {
    part: {
      part: item,
      of: "",
      unit: item === "sleep" ? "h" : "points",
      z: moreIsWorse.has(item) ? -distance : distance,
      today: today.value,
      usual: meanOf(past),
      pastRows: past.length,
    },
  };
}
