/**
 * Earliest and latest onset between which the central 80 % of the evidence lies.
 *
 * @param byOnset what each onset adds to the evidence, by session
 * @returns two places; null when there is no evidence
 */
export function onsetRange(byOnset: Float64Array): readonly [number, number] | null {
  let total = 0;
  for (const weight of byOnset) total += weight;
  if (!(total > 0)) return null;
  let sum = 0;
  let earliest = -1;
  // All together they are the total itself, added up in the same order: the end is always found.
  for (let t = 0; ; t++) {
    sum += byOnset[t]!;
    if (earliest < 0 && sum >= 0.1 * total) earliest = t;
    if (sum >= 0.9 * total) return [earliest, t];
  }
}
