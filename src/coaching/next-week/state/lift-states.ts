import { valueOrNull } from "../../../outcome";
import { speedOnLine } from "../../bar-speed/expected-speed";
import { latestRows, lineRows, squadLines } from "../../bar-speed/squad-lines";
import { squadSetToSet } from "../../bar-speed/squad-set-to-set";
import { strengthEstimate } from "../../bar-speed/strength-estimate";
import { type Day, mondayOf } from "../../calendar/day";
import { settingInUse } from "../../hold/measures/setting-in-use";
import { type OtherSetting, otherSetting } from "../../hold/measures/setting-notes";
import type { SquadHold } from "../../hold/squad-hold";
import { athleteNamed } from "../../record/athlete-named";
import { exerciseKey } from "../../record/exercise-key";
import type { LiftingSet } from "../../record/lifting-set";
import type { SquadRows } from "../../record/squad-rows";
import { remembered } from "../../series/remembered";
import { upToDay } from "../../series/span-of-days";
import type { SpeedSet } from "../../series/speed-set";
import { type SquadIndex, squadIndex } from "../../series/squad-index";
import type { LiftState, UsualSpeeds } from "./athlete-state";
import { usualLeads } from "./usual-lead";
import { weekdaySetting } from "./weekday-setting";

/** A squad's rows, laid out up to the day it is asked about, and who holds. */
export type LiftsOfSquad = {
  readonly rows: SquadRows;
  readonly index: SquadIndex;
  readonly hold: SquadHold;
};

/**
 * What is known of any athlete's lifts, each from its own rows: the measures asked once for the squad.
 *
 * @param setsOf an athlete's sets up to the day the squad is asked about
 */
export function liftStates(
  { rows, index, hold }: LiftsOfSquad,
  setsOf: (athlete: string) => readonly LiftingSet[],
): (athlete: string) => (exercise: string) => LiftState {
  const { asOf } = index;
  const lines = remembered((key: string) => {
    const [lift, upTo] = key.split("\n") as [string, string];
    const day = Number(upTo);
    const known = day === asOf ? index : squadIndex({ sets: rows.sets }, day);
    return squadLines({ index: known, exercise: lift });
  });
  const sets = remembered((lift: string) => squadSetToSet({ index, exercise: lift }));
  const isHeld = (athlete: string, lift: string): boolean | null => {
    const session = valueOrNull(sets(lift)(athlete));
    if (session === null || session.word === "too few rows") return null;
    // A session without a device is the last one, too: speeds of an earlier one do not speak of it.
    const isSince = setsOf(athlete).some(
      (set) => set.day > session.day && exerciseKey(set.exercise) === lift,
    );
    return isSince ? null : session.word !== "slower than usual";
  };
  return (athlete) => {
    const { baseline } = hold.of(athlete);
    const about = athleteNamed(rows.athletes, athlete);
    // A novice rises: the baseline's speed would never bite. All others are held to their baseline.
    const baselineDay = about?.experience === "novice" || baseline.to === null ? asOf : baseline.to;
    return remembered((exercise: string): LiftState => {
      // Whether its speeds were taken or not: no other lift's speeds speak of it.
      const lift = exerciseKey(exercise);
      const lineUpTo = (day: Day) => valueOrNull(lines(`${lift}\n${day}`)(athlete));
      const recent = lineUpTo(asOf);
      const all = index.of(athlete)?.lifts.get(lift) ?? [];
      const setting = settingInUse(all, baselineDay);
      const ofBaseline = setting === undefined ? null : lineUpTo(baselineDay);
      const line = ofBaseline ?? recent;
      const leadOn = usualLeads(setting === undefined ? latestRows(all) : lineRows(all, setting));
      /** Another tool or gym than the baseline's was in use when that week's cards were made. */
      const wasAway = remembered(
        (monday: Day) => settingInUse(upToDay(all, monday - 1), baselineDay) === undefined,
      );
      // Judged as its card was, by the weeks before: a line with the slow day in it hides it.
      const lineOn = (on: Day) =>
        ofBaseline === null || on <= baselineDay || wasAway(mondayOf(on))
          ? lineUpTo(mondayOf(on) - 1)
          : null;
      const speedsOn = (known: typeof line, leads = leadOn): UsualSpeeds => ({
        usualSpeed: (loadKg) => (known ? speedOnLine(known, loadKg).speed : null),
        usualLead: (kind, loadKg) => known && leads(known, kind, loadKg),
      });
      const onDay = remembered((day: Day): UsualSpeeds | null => {
        const ofDay = weekdaySetting(all, day);
        if (ofDay === undefined) return null;
        const rows = lineRows(all, ofDay);
        // As it was known before the day's week, within the baseline where there is one.
        const before = upToDay(rows, Math.min(baselineDay, mondayOf(day) - 1));
        const last = before[before.length - 1];
        return last ? speedsOn(lineUpTo(last.day), usualLeads(rows)) : null;
      });
      const strength = recent && valueOrNull(strengthEstimate(recent, rows.rules.minimumSpeed));
      return {
        heldSpeed: isHeld(athlete, lift),
        usualSpeed: speedsOn(line).usualSpeed,
        onDay,
        usualLead: (kind, loadKg, on) => {
          const ofDay = on === undefined ? null : onDay(on);
          if (ofDay) return ofDay.usualLead(kind, loadKg);
          const known = (on === undefined ? null : lineOn(on)) ?? line;
          return known && leadOn(known, kind, loadKg);
        },
        recent: speedsOn(recent),
        otherSetting: setting === undefined ? changedSetting(all, baselineDay) : null,
        strengthLowKg: strength?.low ?? null,
      };
    });
  };
}

/** How the latest set's setting differs from the one the baseline ended with; null without either. */
function changedSetting(all: readonly SpeedSet[], baselineDay: Day): OtherSetting | null {
  const before = upToDay(all, baselineDay);
  const [last, latest] = [before[before.length - 1], all[all.length - 1]];
  return last?.setting && latest?.setting ? otherSetting(latest.setting, last.setting) : null;
}
