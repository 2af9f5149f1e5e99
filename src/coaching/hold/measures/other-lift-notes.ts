import { lineRows } from "../../bar-speed/squad-lines";
import { fromDay } from "../../series/span-of-days";
import type { AthleteRows } from "../../series/squad-index";
import type { HoldNote } from "../season-hold";
import { oldAfterDays } from "../word-caveats";
import { firstOfDays, settingChanged } from "./setting-notes";

/**
 * One note where the lift that the season is followed by has given way to another: the other's sessions
 * since then, which are held against no baseline. Nothing is said of a lift laid aside for two weeks.
 *
 * @param lift key of the lift that is followed
 */
export function otherLiftNotes(rows: AthleteRows, lift: string): readonly HoldNote[] {
  const followed = lineRows(rows.lifts.get(lift)!);
  const last = followed[followed.length - 1];
  if (last === undefined) return [];
  const [other] = [...rows.lifts.values()]
    .map((sets) => firstOfDays(fromDay(lineRows(sets), last.day + 1)))
    .sort((a, b) => b.length - a.length);
  const latest = other?.[other.length - 1];
  if (!other || !latest || latest.day - last.day <= oldAfterDays) return [];
  const [before, after] = [last.set.exercise, latest.set.exercise];
  return [
    settingChanged(
      other.map(({ day }) => day),
      { what: "lift", before, after },
    ),
  ];
}
