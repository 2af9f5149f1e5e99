import type { Day } from "../calendar/day";
import type { AvailabilitySpell, MayDo } from "../record/availability-spell";
import { nameKey } from "../record/name-key";

/** `not cleared` is a clearance that names nobody: nothing may be built on it. */
export type MayDoOn = MayDo | "not cleared";

const caution: readonly MayDo[] = ["full", "cleared", "modified", "out"];

/**
 * The spell that holds a day for an athlete: of several the one that began last; of two that began
 * on one day the more cautious. Null without one.
 */
export function spellOn(
  spells: readonly AvailabilitySpell[],
  athlete: string,
  day: Day,
): AvailabilitySpell | null {
  const key = nameKey(athlete);
  let latest: AvailabilitySpell | null = null;
  for (const spell of spells) {
    if (nameKey(spell.athlete) !== key || spell.from > day) continue;
    if (spell.until !== null && spell.until < day) continue;
    const later = latest === null || spell.from > latest.from;
    const stricter =
      latest !== null &&
      spell.from === latest.from &&
      caution.indexOf(spell.mayDo) > caution.indexOf(latest.mayDo);
    if (later || stricter) latest = spell;
  }
  return latest;
}

/** What an athlete may do on a day: full without a spell, not cleared when nobody signed for it. */
export function mayDoOn(spells: readonly AvailabilitySpell[], athlete: string, day: Day): MayDoOn {
  const spell = spellOn(spells, athlete, day);
  if (spell === null) return "full";
  return spell.mayDo === "cleared" && spell.by.trim() === "" ? "not cleared" : spell.mayDo;
}
