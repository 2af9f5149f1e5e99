import { absences } from "../coaching/availability/absences";
import { daysDone } from "../coaching/availability/days-done";
import { standingAbsences } from "../coaching/availability/standing-absences";
import { speedOnLine } from "../coaching/bar-speed/expected-speed";
import { latestRows, lineRows, squadLines } from "../coaching/bar-speed/squad-lines";
import { squadSetToSet } from "../coaching/bar-speed/squad-set-to-set";
import { strengthEstimate } from "../coaching/bar-speed/strength-estimate";
import { mondayOf } from "../coaching/calendar/day";
import { highSoreness } from "../coaching/diary/high-soreness";
import { unwellDay } from "../coaching/diary/unwell-day";
import { settingInUse } from "../coaching/hold/setting-in-use";
import { boxJumps, lastJump } from "../coaching/jumps/box-jump";
import { squadJumpTrend } from "../coaching/jumps/squad-jump-trend";
import type { AthleteState } from "../coaching/next-week/athlete-state";
import { keepsMovement } from "../coaching/next-week/keeps-movement";
import { liftDays, mainLift } from "../coaching/next-week/main-lift";
import { usualLeads } from "../coaching/next-week/usual-lead";
import { athleteNamed } from "../coaching/record/athlete-named";
import { exerciseKey } from "../coaching/record/exercise-key";
import { nameKey } from "../coaching/record/name-key";
import { grouped } from "../coaching/series/grouped";
import { remembered } from "../coaching/series/remembered";
import { gymDays } from "../coaching/series/season-start";
import { squadIndex } from "../coaching/series/squad-index";
import { standingWords } from "./standing-words";
import type { StateOfSquad } from "./state-of-squad";
import { writtenWords } from "./written-words";

/** What next week's sets depend on, for any athlete: the measures asked once for the squad. */
export function athleteStates(state: StateOfSquad): (athlete: string) => AthleteState {
  const { read, index, hold, dayOf, asOf } = state;
  const { rows } = read;
  const lines = remembered((key: string) => {
    const [lift = "", upTo = ""] = key.split("\n");
    const day = Number(upTo);
    const known = day === asOf ? index : squadIndex({ sets: rows.sets }, day);
    return squadLines({ index: known, exercise: lift });
  });
  const sets = remembered((lift: string) => squadSetToSet({ index, exercise: lift }));
  const { plates, athletes, rules } = rows;
  const jumps = remembered((test: string) =>
    squadJumpTrend({ index, test, plates, athletes, rules }),
  );
  const done = grouped(
    rows.sets.filter(({ day }) => day <= asOf),
    (set) => nameKey(set.athlete),
  );
  const spells = grouped(rows.availability, (spell) => nameKey(spell.athlete));
  const written = writtenWords(state);
  const standing = standingWords(state);
  const doneOn = daysDone(rows);
  const movementKept = keepsMovement(rows.sets);
  return (athlete) => {
    const key = nameKey(athlete);
    const season = hold.of(athlete);
    const own = index.of(athlete);
    // The lift that is proposed, whether its speeds were taken or not: no other lift's speeds speak of it.
    const mine = done.get(key) ?? [];
    const lift = mainLift(liftDays(mine));
    const about = athleteNamed(rows.athletes, athlete);
    const recent = lift === null ? null : lines(`${lift}\n${asOf}`)(athlete);
    // A novice rises: the baseline's speed would never bite. All others are held to their baseline.
    const baselineDay =
      about?.experience === "novice" || season.baseline.to === null ? asOf : season.baseline.to;
    const all = lift === null ? [] : (own?.lifts.get(lift) ?? []);
    const setting = settingInUse(all, baselineDay);
    const usual =
      lift === null || setting === undefined ? null : lines(`${lift}\n${baselineDay}`)(athlete);
    const ofBaseline = usual?.ok === true ? usual.value : null;
    const line = ofBaseline ?? (recent?.ok === true ? recent.value : null);
    const lifted = setting === undefined ? latestRows(all) : lineRows(all, setting);
    const leadOn = usualLeads(lifted);
    const session = lift === null ? null : sets(lift)(athlete);
    const strength =
      recent?.ok === true ? strengthEstimate(recent.value, rows.rules.minimumSpeed) : null;
    const box = boxJumps(own?.jumps ?? new Map());
    const trend = box.length === 0 ? null : jumps(box[0]!.test)(athlete);
    // A session without a device is the last one, too: speeds of an earlier one do not speak of it.
    const said = written(key);
    const told = spells.get(key) ?? [];
    const unwell = unwellDay(said, told, asOf);
    const lastDay = Math.max(...(own ? gymDays(own) : []), ...mine.map(({ day }) => day));
    return {
      athlete,
      word: season.word,
      sinceDay: season.sinceDay,
      lastWord: Number.isFinite(lastDay) ? dayOf(athlete, lastDay).word : null,
      heldSpeed:
        session?.ok !== true ||
        session.value.word === "too few rows" ||
        mine.some((set) => set.day > session.value.day && exerciseKey(set.exercise) === lift)
          ? null
          : session.value.word !== "slower than usual",
      usualSpeed: (loadKg) => (line ? speedOnLine(line, loadKg).speed : null),
      usualLead: (kind, loadKg, on) => {
        // Judged as its card was, by the weeks before: a line with the slow day in it hides it.
        const then =
          lift !== null && on !== undefined && (ofBaseline === null || on <= baselineDay)
            ? lines(`${lift}\n${mondayOf(on) - 1}`)(athlete)
            : null;
        const known = then?.ok === true ? then.value : line;
        return known ? leadOn(known, kind, loadKg) : null;
      },
      strengthLowKg: strength?.ok === true ? strength.value.low : null,
      jumpWord: trend?.ok === true ? trend.value.word : null,
      ...lastJump(box),
      movementKept,
      soreness: highSoreness(own?.diary ?? [], asOf),
      unwellDay: unwell,
      // What is asked after already is not asked twice.
      absences: [
        ...absences(said, doneOn(key), told, asOf),
        ...standingAbsences(standing(key), told, asOf),
      ].filter(({ place }) => place !== unwell?.place),
    };
  };
}
