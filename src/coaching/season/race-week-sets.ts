/** Cut of volume that helped before a race, fraction (Bosquet et al. 2007: 41–60 %, load kept). */
const helpful = { least: 0.41, most: 0.6 };

/**
 * Sets in the week of an A race: the number whose cut lies in 41–60 % and nearest to the share kept;
 * where no whole number does (3 sets), the nearest, more sets on a tie.
 */
export function raceWeekSets(sets: number, kept: number): number {
  if (kept >= 1) return sets;
  const counts = Array.from({ length: sets }, (_, i) => sets - i);
  const inside = counts.filter((count) => {
    const cut = 1 - count / sets;
    return cut >= helpful.least - 1e-9 && cut <= helpful.most + 1e-9;
  });
  const from = inside.length > 0 ? inside : counts;
  const away = (count: number) => Math.abs(count / sets - kept);
  return from.reduce((best, count) => (away(count) < away(best) - 1e-9 ? count : best));
}
