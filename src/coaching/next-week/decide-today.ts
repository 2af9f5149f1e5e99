import { accept, type Outcome, refuse } from "../../outcome";
import { dropBands, loadDrop } from "../blocks/load-drop";
import { platesASide, roundDownToPlates } from "../blocks/plate-loading";
import type { DayDecision, DayPlan, RepeatLeadsTo, SeenToday } from "./day-decision";

/**
 * Repetitions of one set that differ by more say rather that one was misread or half done: a set
 * that would change the load is then repeated once (common practice, no source).
 */
const widestSet = 0.15;
/** Wobble of one set within a day, m/s: what a band must be passed by to count alone (our simulations). */
const setNoise = 0.02;
const hair = 0.0005;

/** Speeds are written to a hundredth; means are rounded to it, so that paper and phone agree. */
const hundredths = (speed: number) => Math.round(speed * 100 + 1e-9) / 100;
const hundredthsUp = (speed: number) => Math.ceil(speed * 100 - 0.05) / 100;

/**
 * What to lift, from the marker or first set. Two things are asked of it: whether it passed a band of
 * `loadDrop`, and whether it fell out of the athlete's own interval of usual speeds. Both: the band's
 * load at once. Neither: as planned. One alone is a doubt, and so is a set whose repetitions differ
 * widely, judged by its middle one where that is slower than the mean, for one repetition misread fast
 * would hide a slow day: the marker is repeated once, and the better of the two decides. Then a steady athlete out of
 * the interval takes the lightest band, and one inside a wide interval keeps the plan unless the band
 * is passed by more than the wobble of a set. Without an interval the bands judge alone, and only what
 * would take the whole share off is repeated. Faster than usual adds nothing. Never above the plan.
 *
 * @returns Refuses as `loadDrop`, `usual-speed-missing` and `sets-left-impossible`.
 */
export function decideToday(seen: SeenToday, plan: DayPlan): Outcome<DayDecision> {
  const { plannedKg, setsLeft, usualSpeed, usualDrop } = plan;
  if (!(Number.isInteger(setsLeft) && setsLeft >= 0 && setsLeft <= 20)) {
    return refuse("sets-left-impossible", { setsLeft });
  }
  const usual = usualSpeed === null ? null : hundredths(usualSpeed);
  // An interval that does not hold the usual speed is none.
  const lowest = plan.lowSpeed ?? null;
  const low = usual !== null && lowest !== null && lowest <= usual ? lowest : null;
  const check = loadDrop(plannedKg, usual ?? 1, usual ?? 1, plan.stepKg);
  if (!check.ok) return check;
  if (seen.kind === "nothing") {
    const keepsFrom =
      usual === null
        ? null
        : Math.max(hundredths(usual - dropBands.light.from + 0.01), hundredthsUp(low ?? 0));
    return accept({ kind: "before the set", keepsFrom, loadKg: plannedKg });
  }
  if (seen.kind === "by eye") {
    if (seen.word === "ill") return accept({ kind: "no heavy work", slower: null });
    if (seen.word === "slow" && usualDrop > 0) {
      return lighter(plannedKg * (1 - usualDrop), null, plan);
    }
    return accept({ kind: "as planned", loadKg: plannedKg, above: seen.word === "fast" });
  }
  if (usual === null) return refuse("usual-speed-missing");
  const sets = seen.sets.filter((set) => set.length > 0);
  const best = Math.max(...sets.map(speedOfSet));
  const drop = loadDrop(plannedKg, best, usual, plan.stepKg, 0);
  if (!drop.ok) return drop;
  const slower = usual - best;
  const once = sets.length === 1;
  const unusual = low === null ? null : best < low - hair;
  const passed = slower >= dropBands.light.from - hair;
  if (!passed && unusual !== true) {
    return accept({
      kind: "as planned",
      loadKg: plannedKg,
      above: -slower >= dropBands.light.from - hair,
    });
  }
  const clearly = slower > dropBands.clear.above + hair;
  const none = slower > dropBands.none.above + hair;
  const stays: Outcome<DayDecision> =
    unusual === false && slower < dropBands.light.from + setNoise - hair
      ? accept({ kind: "as planned", loadKg: plannedKg, above: false })
      : none
        ? accept({ kind: "no heavy work", slower })
        : usualDrop <= 0
          ? accept({ kind: "as planned", loadKg: plannedKg, above: false })
          : lighter(plannedKg * (1 - (clearly ? usualDrop : usualDrop / 2)), slower, plan);
  const uneven = once && isUneven(sets[0]!);
  const doubt = unusual === null ? clearly && !none : unusual !== passed;
  if (!stays.ok || !once || !(uneven || doubt)) return stays;
  return accept({ kind: "repeat the marker", slower, ifSame: elseOf(stays.value) });
}

const isUneven = (set: readonly number[]) => Math.max(...set) - Math.min(...set) > widestSet + hair;

/** The mean, of an uneven set no faster than its middle repetition, the slower of two. */
function speedOfSet(set: readonly number[]): number {
  const mean = hundredths(set.reduce((sum, one) => sum + one, 0) / set.length);
  if (!isUneven(set)) return mean;
  const middle = [...set].sort((a, b) => a - b)[Math.floor((set.length - 1) / 2)]!;
  return Math.min(mean, hundredths(middle));
}

/** What the repeated marker leads to when it says the same. */
function elseOf(decision: DayDecision): RepeatLeadsTo {
  if (decision.kind === "lighter") {
    return { kind: "lighter", loadKg: decision.loadKg, share: decision.share };
  }
  return decision.kind === "as planned"
    ? { kind: "as planned", loadKg: decision.loadKg }
    : { kind: "no heavy work" };
}

/**
 * The heaviest load that exists at or under the one wanted, always under the plan; the bar alone is the
 * lightest there is, and as planned where it is the plan.
 */
function lighter(wantedKg: number, slower: number | null, plan: DayPlan): Outcome<DayDecision> {
  const { plannedKg, setsLeft, stepKg, gym } = plan;
  const under = Math.min(wantedKg, plannedKg - 1e-6);
  let loadKg = plannedKg - Math.ceil((plannedKg - under) / stepKg - 1e-9) * stepKg;
  let plates: readonly number[] = [];
  if (gym) {
    const { barKg } = gym;
    if (gym.plates.length > 0) {
      const rounded = roundDownToPlates(under, barKg, gym.plates);
      loadKg = rounded.ok ? rounded.value : 0;
    }
    loadKg = Math.max(loadKg, barKg);
    if (loadKg >= plannedKg) {
      return accept({ kind: "as planned", loadKg: plannedKg, above: false });
    }
    const side = platesASide(loadKg, barKg, gym.plates);
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
