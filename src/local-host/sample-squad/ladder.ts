import type { Member } from "./club";
import { dayOf, weekOf } from "./season-days";
import { formOn } from "./stories";

export type Block = { readonly sets: number; readonly reps: number; readonly loadKg: number };

const fiveByFive = { sets: 5, reps: 5, step: 0 };
const threeByFive = { sets: 3, reps: 5, step: 1 };
const fiveByThree = { sets: 5, reps: 3, step: 2 };
const threeByThree = { sets: 3, reps: 3, step: 3 };

/** The block of each week: a quick first round, then the first step held for a week. */
const weeks = [
  [fiveByFive, threeByFive, fiveByThree, threeByThree],
  [fiveByFive, fiveByFive, threeByFive, fiveByThree, threeByThree],
  [fiveByFive, fiveByFive, threeByFive, fiveByThree, threeByThree],
].flatMap((round, index) => round.map((block) => ({ ...block, round: index })));

const firstShare = 0.75;
const stepShare = 0.03;

/** Sets, repetitions and load on a day: from 75 % of best, small steps, to whole steps of 2.5 kg. */
export function blockOn(member: Member, day: number): Block {
  const { athlete, bestKg, experience, group } = member;
  // Wren's knees came in on 14 May, so that week's step was repeated.
  const behind = athlete === "Wren Castellow" && day > dayOf("2026-05-14") ? 1 : 0;
  const comingBack = restart(athlete, day) < 1;
  const regular = weeks[weekOf(day) - 1 - behind] ?? { ...fiveByFive, round: 0 };
  // A restart begins on the ladder's first step, with fewer sets.
  const planned = comingBack ? { ...threeByFive, step: 0, round: 1 } : regular;
  // A novice's next round starts from what the novice can do by then; the others come back to theirs.
  const roundStart = dayOf(
    ["2026-04-06", "2026-05-04", "2026-06-08"][planned.round] ?? "2026-04-06",
  );
  const best = experience === "novice" ? bestKg * (1 + formOn(member, roundStart).squat) : bestKg;
  const held = athlete === "Tomas Reyerson" && day >= dayOf("2026-06-08");
  const share = (firstShare + stepShare * (held ? 0 : planned.step)) * restart(athlete, day);
  const sets = athlete === "Dario Quell" && restart(athlete, day) < 0.85 ? 2 : planned.sets;
  // Before the A race of 23 May about half the sets, at the same load.
  const raceWeek = group === "road" && weekOf(day) === 7 && athlete !== "Dario Quell";
  return {
    sets: raceWeek ? Math.ceil(planned.sets / 2) : sets,
    reps: planned.reps,
    loadKg: toStep(best * share, 2.5),
  };
}

/** The marker's load stays the same all season, about 60 % of best. */
export function markerLoad({ bestKg }: Member): number {
  return toStep(bestKg * 0.6, 2.5);
}

/** After the fever: 20 % less and half the sets, then back in grades. */
function restart(athlete: string, day: number): number {
  if (athlete !== "Dario Quell" || day < dayOf("2026-06-02")) return 1;
  if (day < dayOf("2026-06-09")) return 0.8;
  if (day < dayOf("2026-06-16")) return 0.9;
  return day < dayOf("2026-06-23") ? 0.95 : 1;
}

export function toStep(value: number, step: number): number {
  return Math.round(value / step) * step;
}
