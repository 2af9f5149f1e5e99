import type { Day } from "../coaching/calendar/day";
import { nameKey } from "../coaching/record/name-key";
import type { SquadRows } from "../coaching/record/squad-rows";

/** What the Availability table says of a day: the latest spell that holds it, "full" without one. */
export function mayDoToday(rows: SquadRows, athlete: string, day: Day): string {
  const key = nameKey(athlete);
  const spells = rows.availability
    .filter(
      (spell) =>
        nameKey(spell.athlete) === key &&
        spell.from <= day &&
        (spell.until === null || spell.until >= day),
    )
    .sort((a, b) => a.from - b.from);
  return spells[spells.length - 1]?.mayDo ?? "full";
}
