import type { Day } from "../calendar/day";
import type { Beside } from "../diary/says-unwell";
import { nameKey } from "../record/name-key";
import type { SquadRows } from "../record/squad-rows";
import { grouped } from "../series/grouped";

/** Days on which an athlete (by name key) did something in the gym or, beside a run, ran: rows with a figure. */
export function daysDone({
  sets,
  jumps,
  runs,
}: Pick<SquadRows, "sets" | "jumps" | "runs">): (
  key: string,
) => (beside: Beside) => readonly Day[] {
  const lifted = sets.filter(
    ({ loadKg, reps, setSpeed, repSpeeds }) =>
      loadKg !== null || reps !== null || setSpeed !== null || repSpeeds.length > 0,
  );
  const jumped = jumps.filter(
    ({ heightCm, stackKg, contactS, flightS }) =>
      heightCm !== null || stackKg.length > 0 || contactS !== null || flightS !== null,
  );
  const ran = runs.filter(({ minutes, km }) => minutes !== null || km !== null);
  const byName = (rows: readonly { readonly athlete: string; readonly day: Day }[]) =>
    grouped(rows, ({ athlete }) => nameKey(athlete));
  const inGym = byName([...lifted, ...jumped]);
  const onFoot = byName(ran);
  return (key) => {
    const gym = (inGym.get(key) ?? []).map(({ day }) => day);
    const all = [...gym, ...(onFoot.get(key) ?? []).map(({ day }) => day)];
    return (beside) => (beside === "run" ? all : gym);
  };
}
