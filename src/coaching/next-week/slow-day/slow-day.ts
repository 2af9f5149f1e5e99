import { dropBands } from "../../blocks/load-drop";
import type { LiftingSet } from "../../record/lifting-set";
import { speedOfSet, speedsTaken } from "../on-the-day/set-speed";
import type { LiftState } from "../state/athlete-state";

/** How far a usual speed may have moved since the day was judged by it, m/s (our simulations). */
const moved = 0.02;

/**
 * Whether the sets that lead a day, its markers or else its first work set, were slow enough for a
 * lighter load: past the first band of the load drop, or out of the athlete's own usual interval, or as
 * good as that. Of a repeated marker the better one counts. False where no speed was taken or no usual
 * one is known.
 *
 * @param session sets of one athlete's lift on one day, in order
 */
export function slowDay(
  session: readonly LiftingSet[],
  usualLead: LiftState["usualLead"],
): boolean {
  const markers = session.filter(({ kind }) => kind === "marker");
  const first = session.filter(({ kind }) => kind === "work").slice(0, 1);
  const told = (markers.length > 0 ? markers : first).flatMap((set) => {
    const speeds = speedsTaken(set);
    if (speeds.length === 0 || set.loadKg === null) return [];
    const lead = usualLead(set.kind === "marker" ? "marker" : "work", set.loadKg, set.day);
    return lead === null ? [] : [{ ...lead, speed: speedOfSet(speeds) }];
  });
  return (
    told.length > 0 &&
    told.every(
      ({ usual, low, speed }) => speed <= Math.max(usual - dropBands.light.from, low) + moved,
    )
  );
}
