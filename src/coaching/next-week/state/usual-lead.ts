import { leadSpeed, meanUnderFastest } from "../../bar-speed/lead-speed";
import type { AthleteLine } from "../../bar-speed/squad-lines";
import { remembered } from "../../series/remembered";
import type { SpeedSet } from "../../series/speed-set";
import { usualWidth } from "./usual-width";

/** Mean over the repetitions of a set, m/s, and the slowest that is still usual: one ordinary day in ten is slower. */
export type UsualLead = { readonly usual: number; readonly low: number };

/**
 * The set that decides the day, marker or first work set, on a line at a load. Every session of a season
 * is asked about, so that what all sets say is reckoned once.
 *
 * @param sets the athlete's, in the setting of the line
 */
export function usualLeads(
  sets: readonly SpeedSet[],
): (line: AthleteLine, kind: "marker" | "work", loadKg: number) => UsualLead {
  const under = remembered((kind: "marker" | "work") => meanUnderFastest(sets, kind));
  return (line, kind, loadKg) => {
    const usual = leadSpeed(line, line.leads[kind], loadKg) - under(kind);
    return { usual, low: usual - usualWidth(line, loadKg) };
  };
}

/** The set that decides the day at a load: the marker where this athlete's markers were taken at it, else the first work set. */
export function usualLeadAt(
  line: AthleteLine,
  sets: readonly SpeedSet[],
  loadKg: number,
): UsualLead {
  const isMarker = sets.some((one) => one.leads === "marker" && one.loadKg === loadKg);
  return usualLeads(sets)(line, isMarker ? "marker" : "work", loadKg);
}
