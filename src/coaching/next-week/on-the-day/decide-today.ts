import { accept, type Outcome, refuse } from "../../../outcome";
import { hundredths, speedHair } from "../../bar-speed/hundredths";
import { dropBands, loadDrop, refusedPlan } from "../../blocks/load-drop";
import { roundDownToPlates } from "../../blocks/plate-loading";
import type { ByEye, DayDecision, DayPlan, LeftOfPlan, SeenToday } from "./day-decision";
import { lighterSets } from "./lighter-sets";
import { isUneven, speedOfSet } from "./set-speed";

/**
 * What to lift, from the marker or first set. Two things are asked of it: whether it passed a band of
 * `loadDrop`, and whether it fell out of the athlete's own interval of usual speeds. Both: the band's
 * load at once. Neither: as planned. One alone is a doubt, and so is a set whose repetitions differ
 * widely, judged by its middle one where that is slower than the mean, for one repetition misread fast
 * would hide a slow day: the marker is repeated once, the better of the two decides, and what is said
 * twice counts, a band passed as that band, an interval left as the lightest. Nothing is repeated where
 * the plan stands either way. Without an interval the bands judge alone, and only what would take the
 * whole share off is repeated. Faster than usual adds nothing. Never above the plan.
 *
 * @returns Refuses as `loadDrop`, `usual-speed-missing` and `sets-left-impossible`.
 */
export function decideToday(seen: SeenToday, plan: DayPlan): Outcome<DayDecision> {
  const { plannedKg, setsLeft, usualSpeed } = plan;
  if (!(Number.isInteger(setsLeft) && setsLeft >= 0 && setsLeft <= 20)) {
    return refuse("sets-left-impossible", { setsLeft });
  }
  const usual = usualSpeed === null ? null : hundredths(usualSpeed);
  // An interval that does not hold the usual speed is none.
  const lowest = plan.lowSpeed == null ? null : hundredths(plan.lowSpeed);
  const low =
    usual !== null && lowest !== null && lowest <= usual
      ? Math.min(lowest, hundredths(usual - 0.01))
      : null;
  const refused = refusedPlan(plannedKg, usual === null ? [] : [usual], plan.stepKg);
  if (refused) return refused;
  if (seen.kind === "nothing") {
    const keepsFrom = usual === null ? null : slowestKept(usual, plan);
    return accept({ kind: "before the set", keepsFrom, ...planned(plan) });
  }
  if (seen.kind === "by eye") return byEye(seen.word, plan);
  if (usual === null) return refuse("usual-speed-missing");
  return bySpeed(
    seen.sets.filter((set) => set.length > 0),
    { usual, low },
    plan,
  );
}

function byEye(word: ByEye, plan: DayPlan): Outcome<DayDecision> {
  if (word === "ill") return accept({ kind: "no heavy work", slower: null });
  if (word === "slow" && plan.usualDrop > 0) {
    return lighterSets(plan.plannedKg * (1 - plan.usualDrop), null, plan);
  }
  return asPlanned(plan, word === "fast");
}

/** The usual speed and the low end of the usual ones, m/s; null without an interval. */
type Usual = { readonly usual: number; readonly low: number | null };

function bySpeed(
  sets: readonly (readonly number[])[],
  { usual, low }: Usual,
  plan: DayPlan,
): Outcome<DayDecision> {
  const best = Math.max(...sets.map(speedOfSet));
  const drop = loadDrop(plan.plannedKg, best, usual, plan.stepKg, 0);
  if (!drop.ok) return drop;
  const slower = usual - best;
  const passed = slower >= dropBands.light.from - speedHair;
  const unusual = low === null ? null : best < low + speedHair;
  if (!passed && unusual !== true) {
    const above = asPlanned(plan, -slower >= dropBands.light.from - speedHair);
    return above.ok && isFarOff(-slower) ? accept({ ...above.value, doubtful: -slower }) : above;
  }
  const decided = bySlowness(slower, plan);
  const uneven = isUneven(sets[0]!);
  const wholeShare = isClear(slower) && !isFarOff(slower);
  const doubt = unusual === null ? wholeShare : unusual !== passed;
  if (!decided.ok || sets.length > 1 || !(uneven || doubt)) return decided;
  const { kind } = decided.value;
  if (kind === "as planned" || kind === "nothing lighter") return decided;
  return accept({ kind: "repeat the marker", slower, ifSame: decided.value });
}

const isClear = (slower: number) => slower > dropBands.clear.above + speedHair;
/** So far from usual, to either side, that it is no ordinary day. */
const isFarOff = (slower: number) => slower > dropBands.none.above + speedHair;

/** What a marker so much slower leads to once it is believed. */
function bySlowness(slower: number, plan: DayPlan): Outcome<LeftOfPlan> {
  const { plannedKg, usualDrop } = plan;
  if (isFarOff(slower)) return accept({ kind: "no heavy work", slower });
  if (usualDrop <= 0) return asPlanned(plan, false);
  const share = isClear(slower) ? usualDrop : usualDrop / 2;
  return lighterSets(plannedKg * (1 - share), slower, plan);
}

/** The slowest speed, to a hundredth under the usual one, that leaves the load as it is at once. */
function slowestKept(usual: number, plan: DayPlan): number {
  for (let kept = usual; ; kept = hundredths(kept - 0.01)) {
    const next = decideToday({ kind: "speeds", sets: [[hundredths(kept - 0.01)]] }, plan);
    if (!next.ok || !("loadKg" in next.value) || next.value.loadKg < plan.plannedKg) return kept;
  }
}

const asPlanned = (plan: DayPlan, above: boolean): Outcome<LeftOfPlan> =>
  accept({ kind: "as planned", ...planned(plan), above });

function planned({ plannedKg, gym }: DayPlan) {
  const made = gym?.plates.length ? roundDownToPlates(plannedKg, gym.barKg, gym.plates) : null;
  const builtKg = made?.ok && made.value < plannedKg - 1e-6 ? made.value : null;
  return { loadKg: plannedKg, builtKg };
}
