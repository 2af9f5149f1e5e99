import { speedOnLine } from "../bar-speed/expected-speed";
import { latestRows, lineRows, squadLines } from "../bar-speed/squad-lines";
import { squadSetToSet } from "../bar-speed/squad-set-to-set";
import { strengthEstimate } from "../bar-speed/strength-estimate";
import { type Day, mondayOf } from "../calendar/day";
import { settingInUse } from "../hold/setting-in-use";
import { otherSetting } from "../hold/setting-notes";
import type { SquadHold } from "../hold/squad-hold";
import { athleteNamed } from "../record/athlete-named";
import { exerciseKey } from "../record/exercise-key";
import type { LiftingSet } from "../record/lifting-set";
import type { SquadRows } from "../record/squad-rows";
import { remembered } from "../series/remembered";
import { upToDay } from "../series/span-of-days";
import { type SquadIndex, squadIndex } from "../series/squad-index";
import type { LiftState } from "./athlete-state";
import { usualLeads } from "./usual-lead";

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
    const [lift = "", upTo = ""] = key.split("\n");
    const day = Number(upTo);
    const known = day === asOf ? index : squadIndex({ sets: rows.sets }, day);
    return squadLines({ index: known, exercise: lift });
  });
  const sets = remembered((lift: string) => squadSetToSet({ index, exercise: lift }));
  return (athlete) => {
    const { baseline } = hold.of(athlete);
    const about = athleteNamed(rows.athletes, athlete);
    // A novice rises: the baseline's speed would never bite. All others are held to their baseline.
    const baselineDay = about?.experience === "novice" || baseline.to === null ? asOf : baseline.to;
    return remembered((exercise: string): LiftState => {
      // Whether its speeds were taken or not: no other lift's speeds speak of it.
      const lift = exerciseKey(exercise);
      const recent = lines(`${lift}\n${asOf}`)(athlete);
      const all = index.of(athlete)?.lifts.get(lift) ?? [];
      const setting = settingInUse(all, baselineDay);
      const usual = setting === undefined ? null : lines(`${lift}\n${baselineDay}`)(athlete);
      const ofBaseline = usual?.ok === true ? usual.value : null;
      const lateLine = recent.ok ? recent.value : null;
      const line = ofBaseline ?? lateLine;
      const lifted = setting === undefined ? latestRows(all) : lineRows(all, setting);
      const leadOn = usualLeads(lifted);
      const [before, latest] = [upToDay(all, baselineDay), all].map(
        (sets) => sets[sets.length - 1]?.setting,
      );
      /** Another tool or gym than the baseline's was in use when that week's cards were made. */
      const wasAway = remembered(
        (monday: Day) => settingInUse(upToDay(all, monday - 1), baselineDay) === undefined,
      );
      const session = sets(lift)(athlete);
      const strength = lateLine ? strengthEstimate(lateLine, rows.rules.minimumSpeed) : null;
      // A session without a device is the last one, too: speeds of an earlier one do not speak of it.
      const isSince = (day: number) =>
        setsOf(athlete).some((set) => set.day > day && exerciseKey(set.exercise) === lift);
      return {
        heldSpeed:
          !session.ok || session.value.word === "too few rows" || isSince(session.value.day)
            ? null
            : session.value.word !== "slower than usual",
        usualSpeed: (loadKg) => (line ? speedOnLine(line, loadKg).speed : null),
        usualLead: (kind, loadKg, on) => {
          // Judged as its card was, by the weeks before: a line with the slow day in it hides it.
          const then =
            on !== undefined && (ofBaseline === null || on <= baselineDay || wasAway(mondayOf(on)))
              ? lines(`${lift}\n${mondayOf(on) - 1}`)(athlete)
              : null;
          const known = then?.ok === true ? then.value : line;
          return known ? leadOn(known, kind, loadKg) : null;
        },
        recent: {
          usualSpeed: (loadKg) => (lateLine ? speedOnLine(lateLine, loadKg).speed : null),
          usualLead: (kind, loadKg) => (lateLine ? leadOn(lateLine, kind, loadKg) : null),
        },
        otherSetting:
          setting === undefined && before && latest ? otherSetting(latest, before) : null,
        strengthLowKg: strength?.ok === true ? strength.value.low : null,
      };
    });
  };
}
