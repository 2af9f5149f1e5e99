import type { Member } from "./club";
import { type Gear, kgOfPound } from "./gear";
import type { Lifted } from "./lifted-set";
import { dayOf, isoOf } from "./season-days";
import type { SampleCell } from "./table";

/** A set as the coach types it, in the order of the headings. */
export function setCells(
  { athlete }: Member,
  day: number,
  gear: Gear,
  { kind, set, reps, loadKg, speeds }: Lifted,
  usualKg: number,
): readonly SampleCell[] {
  const work = kind === "work";
  const kneesIn = athlete === "Wren Castellow" && day === dayOf("2026-05-14") && work;
  const load = gear.inPounds ? `${Math.round(loadKg / kgOfPound)} lb` : loadKg;
  return [
    isoOf(day),
    "18:00",
    athlete,
    "back squat",
    set,
    kind,
    reps,
    load,
    speeds.map((speed) => speed.toFixed(2)).join(" "),
    speeds.length === 0 ? null : "mean",
    speeds.length === 0 ? null : gear.tool,
    gear.bar,
    gear.gym,
    work ? (kneesIn ? "n" : "y") : null,
    work ? inReserve(usualKg, loadKg, reps, set ?? 1) : null,
    gear.gym === "home" ? "NQ" : day % 7 === 5 ? "MG" : "TP",
    kneesIn ? "knees in" : null,
  ];
}

/** What a careful lifter says is left: by Epley's equation (1985), one fewer, and fewer each set. */
function inReserve(bestKg: number, loadKg: number, reps: number, set: number): number {
  return Math.max(0, Math.floor(30 * (bestKg / loadKg - 1) - reps - 1 - 0.25 * (set - 1)));
}
