import { accept, type Outcome, refuse } from "../../outcome";
import { dropBands, loadDrop } from "../blocks/load-drop";
import { platesASide, roundDownToPlates } from "../blocks/plate-loading";
import type { Plate } from "../record/plate";

/** How the bar moved for a coach without a device, or that the athlete is ill. */
export type ByEye = "fast" | "usual" | "slow" | "ill";

/** What was seen of today's marker or first set: one list of speeds a set, in order, or by eye. */
export type SeenToday =
  | { readonly kind: "nothing" }
  | { readonly kind: "speeds"; readonly sets: readonly (readonly number[])[] }
  | { readonly kind: "by eye"; readonly word: ByEye };

/** The day's decision. `slower` is m/s under usual, null when judged by eye. */
export type DayDecision =
  | {
      readonly kind: "before the set";
      /** Slowest speed that keeps the plan, m/s; null without a usual speed. */
      readonly keepsFrom: number | null;
      readonly loadKg: number;
    }
  | { readonly kind: "as planned"; readonly loadKg: number; readonly above: boolean }
  | {
      readonly kind: "repeat the marker";
      readonly slower: number;
      /** Load to lift if the repeat says the same. */
      readonly elseKg: number;
      readonly elseShare: number;
    }
  | {
      readonly kind: "lighter";
      readonly loadKg: number;
      /** Real share off the plan, after rounding to loads that exist. */
      readonly share: number;
      readonly slower: number | null;
      readonly setsLeft: number;
      /** kg of each plate on one side; empty when plates were not given. */
      readonly plates: readonly number[];
    }
  | { readonly kind: "no heavy work"; readonly slower: number | null };

export type DayPlan = {
  readonly plannedKg: number;
  readonly setsLeft: number;
  /** Usual speed of the set that was seen, m/s; null for a squad without a device. */
  readonly usualSpeed: number | null;
  readonly stepKg: number;
  /** Share off when judged slow by eye, fraction. */
  readonly usualDrop: number;
  /** Plates of the gym and the bar; null rounds by the step alone. */
  readonly gym: { readonly plates: readonly Plate[]; readonly barKg: number } | null;
};

/**
 * Repetitions of one set that differ by more say rather that one was misread or half done: a set
 * that would change the load is then repeated once (common practice, no source).
 */
const widestSet = 0.15;

/** Speeds are written to a hundredth; means are rounded to it, so that paper and phone agree. */
const hundredths = (speed: number) => Math.round(speed * 100 + 1e-9) / 100;

/**
 * What to lift, from the marker or first set. Up to 0.10 m/s slower than usual takes the light band at
 * once; slower still repeats the marker once, and the better of the two decides; beyond 0.15 m/s, or
 * ill, no heavy work. Faster than usual adds nothing. Never above the plan.
 *
 * @returns Refuses as `loadDrop`, `usual-speed-missing`, `sets-left-impossible` and `load-under-bar`.
 */
export function decideToday(seen: SeenToday, plan: DayPlan): Outcome<DayDecision> {
  const { plannedKg, setsLeft, usualSpeed } = plan;
  if (!(Number.isInteger(setsLeft) && setsLeft >= 0 && setsLeft <= 20)) {
    return refuse("sets-left-impossible", { setsLeft });
  }
  const usual = usualSpeed === null ? null : hundredths(usualSpeed);
  const check = loadDrop(plannedKg, usual ?? 1, usual ?? 1, plan.stepKg);
  if (!check.ok) return check;
  if (seen.kind === "nothing") {
    const keepsFrom = usual === null ? null : hundredths(usual - dropBands.light.from + 0.01);
    return accept({ kind: "before the set", keepsFrom, loadKg: plannedKg });
  }
  if (seen.kind === "by eye") {
    if (seen.word === "ill") return accept({ kind: "no heavy work", slower: null });
    if (seen.word === "slow") return lighter(plannedKg * (1 - plan.usualDrop), null, plan);
    return accept({ kind: "as planned", loadKg: plannedKg, above: seen.word === "fast" });
  }
  if (usual === null) return refuse("usual-speed-missing");
  const sets = seen.sets.filter((set) => set.length > 0);
  const means = sets.map((set) => hundredths(set.reduce((sum, one) => sum + one, 0) / set.length));
  const best = Math.max(...means);
  const drop = loadDrop(plannedKg, best, usual, plan.stepKg);
  if (!drop.ok) return drop;
  const { value } = drop;
  if (value.kind === "as planned") {
    const above = best - usual >= dropBands.light.from - 0.0005;
    return accept({ kind: "as planned", loadKg: plannedKg, above });
  }
  const once = sets.length === 1;
  const uneven = once && Math.max(...sets[0]!) - Math.min(...sets[0]!) > widestSet;
  const clearly = value.slower > dropBands.clear.above + 0.0005;
  const share = clearly ? dropBands.clear.share : dropBands.light.share;
  if (value.kind === "no heavy work" && !uneven) return accept(value);
  const less = lighter(plannedKg * (1 - share), value.slower, plan);
  if (!less.ok || less.value.kind !== "lighter" || !(once && (clearly || uneven))) return less;
  const { loadKg: elseKg, share: elseShare } = less.value;
  return accept({ kind: "repeat the marker", slower: value.slower, elseKg, elseShare });
}

/** The heaviest load that exists at or under the one wanted, always under the plan. */
function lighter(wantedKg: number, slower: number | null, plan: DayPlan): Outcome<DayDecision> {
  const { plannedKg, setsLeft, stepKg, gym } = plan;
  const under = Math.min(wantedKg, plannedKg - 1e-6);
  let loadKg = plannedKg - Math.ceil((plannedKg - under) / stepKg - 1e-9) * stepKg;
  let plates: readonly number[] = [];
  if (gym) {
    const rounded = roundDownToPlates(under, gym.barKg, gym.plates);
    if (!rounded.ok) return rounded;
    loadKg = rounded.value;
    const side = platesASide(loadKg, gym.barKg, gym.plates);
    if (side.ok) plates = side.value;
  }
  if (!(loadKg > 0)) return refuse("step-too-large", { stepKg, loadKg: plannedKg });
  return accept({
    kind: "lighter",
    loadKg,
    share: 1 - loadKg / plannedKg,
    slower,
    setsLeft,
    plates,
  });
}
