/** Cut of volume that helped before a race, fraction (Bosquet et al. 2007: 41–60 %, load kept). */
const helpful = { least: 0.41, most: 0.6 };

/**
 * Sets in the week of an A race: the number nearest to the share kept, more sets on a tie. Where that
 * share is itself a cut of 41–60 %, a number whose cut is one too comes first, if there is one (not of
 * 3 sets).
 */
export function raceWeekSets(sets: number, kept: number): number {
  if (kept >= 1) return sets;
  const counts = Array.from({ length: sets }, (_, i) => sets - i);
  const helps = (share: number) =>
    1 - share >= helpful.least - 1e-9 && 1 - share <= helpful.most + 1e-9;
  const inside = helps(kept) ? counts.filter((count) => helps(count / sets)) : [];
  const from = inside.length > 0 ? inside : counts;
  const away = (count: number) => Math.abs(count / sets - kept);
  return from.reduce((best, count) => (away(count) < away(best) - 1e-9 ? count : best));
}
