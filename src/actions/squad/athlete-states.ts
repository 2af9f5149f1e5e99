import { absences } from "../../coaching/availability/absences";
import { daysDone } from "../../coaching/availability/days-done";
import { standingAbsences } from "../../coaching/availability/standing-absences";
import { highSoreness } from "../../coaching/diary/high-soreness";
import { unwellDay } from "../../coaching/diary/unwell-day";
import type { MovedValue } from "../../coaching/hold/season-hold";
import { fallenUncalled } from "../../coaching/hold/word-caveats";
import { boxJumps, lastJump } from "../../coaching/jumps/box-jump";
import { squadJumpTrend } from "../../coaching/jumps/squad-jump-trend";
import type { AthleteState } from "../../coaching/next-week/state/athlete-state";
import { keepsMovement } from "../../coaching/next-week/state/keeps-movement";
import { liftStates } from "../../coaching/next-week/state/lift-states";
import { nameKey } from "../../coaching/record/name-key";
import { grouped } from "../../coaching/series/grouped";
import { remembered } from "../../coaching/series/remembered";
import { gymDays } from "../../coaching/series/season-start";
import { standingWords } from "../answers/standing-words";
import { writtenWords } from "../answers/written-words";
import type { StateOfSquad } from "./state-of-squad";

/** What next week's sets depend on, for any athlete: the measures asked once for the squad. */
export function athleteStates(state: StateOfSquad): (athlete: string) => AthleteState {
  const { read, index, hold, dayOf, asOf } = state;
  const { rows } = read;
  const { plates, athletes, rules } = rows;
  const jumps = remembered((test: string) =>
    squadJumpTrend({ index, test, plates, athletes, rules }),
  );
  const done = grouped(
    rows.sets.filter(({ day }) => day <= asOf),
    (set) => nameKey(set.athlete),
  );
  const setsOf = (athlete: string) => done.get(nameKey(athlete)) ?? [];
  const ofLift = liftStates({ rows, index, hold }, setsOf);
  const spells = grouped(rows.availability, (spell) => nameKey(spell.athlete));
  const written = writtenWords(state);
  const standing = standingWords(state);
  const doneOn = daysDone(rows);
  const movementKept = keepsMovement(rows.sets);
  return (athlete) => {
    const key = nameKey(athlete);
    const season = hold.of(athlete);
    const own = index.of(athlete);
    const box = boxJumps(own?.jumps ?? new Map());
    const trend = box.length === 0 ? null : jumps(box[0]!.test)(athlete);
    // A session without a device is the last one, too: speeds of an earlier one do not speak of it.
    const said = written(key);
    const told = spells.get(key) ?? [];
    const unwell = unwellDay(said, told, asOf);
    const lastDay = Math.max(
      ...(own ? gymDays(own) : []),
      ...setsOf(athlete).map(({ day }) => day),
    );
    return {
      athlete,
      word: season.word,
      sinceDay: season.sinceDay,
      fallen: fallenUncalled(season) ? (season.value as MovedValue) : null,
      lastWord: Number.isFinite(lastDay) ? dayOf(athlete, lastDay).word : null,
      ofLift: ofLift(athlete),
      jumpWord: trend?.ok === true ? trend.value.word : null,
      ...lastJump(box, plates),
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
