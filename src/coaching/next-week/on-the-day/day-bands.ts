import type { DayPlan } from "./day-decision";
import { decideToday } from "./decide-today";

/** One line of the day's decision: marker speeds from–to, and the load for the sets. */
export type DayBand = {
  /** m/s to two decimals; null is open. */
  readonly from: number | null;
  readonly to: number | null;
  /** Null: no heavy work. */
  readonly loadKg: number | null;
  /** Real share off the plan after rounding, fraction. */
  readonly share: number;
  /** From this speed of the band on, m/s, the marker is first repeated once; null in none of it. */
  readonly repeatFrom: number | null;
};

/**
 * The day's decision for paper: for each speed the marker may show, what `decideToday` says of it,
 * written in hundredths so that every speed is in exactly one band. A speed in doubt stands beside the
 * faster ones of its load: the slower ones are none.
 *
 * @returns empty when no load but the plan exists
 */
export function dayBands(plan: DayPlan & { readonly usualSpeed: number }): readonly DayBand[] {
  const bands: DayBand[] = [];
  // From fast to slow, one hundredth at a time: where the answer changes a new band begins.
  for (let at = Math.round(plan.usualSpeed * 100); at >= 5; at--) {
    const speed = at / 100;
    const said = saidOf(speed, plan);
    if (said === null) return [];
    const { loadKg, share, repeatFrom } = said;
    const end = bands.length - 1;
    const last = bands[end];
    if (!last || last.loadKg !== loadKg) {
      if (last) bands[end] = { ...last, from: (at + 1) / 100 };
      bands.push({ from: null, to: last ? speed : null, loadKg, share, repeatFrom });
    } else if (repeatFrom !== null) bands[end] = { ...last, repeatFrom };
  }
  return bands;
}

/** What is lifted after a marker at a speed; null where no load but the plan exists. */
function saidOf(
  speed: number,
  plan: DayPlan,
): Pick<DayBand, "loadKg" | "share" | "repeatFrom"> | null {
  const decided = decideToday({ kind: "speeds", sets: [[speed]] }, plan);
  if (!decided.ok) return null;
  const isRepeated = decided.value.kind === "repeat the marker";
  const said = decided.value.kind === "repeat the marker" ? decided.value.ifSame : decided.value;
  return {
    loadKg: "loadKg" in said ? said.loadKg : null,
    share: said.kind === "lighter" ? said.share : 0,
    repeatFrom: isRepeated ? speed : null,
  };
}
