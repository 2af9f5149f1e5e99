/** How large a step of the ladder is. */
export type StepSize = {
  /** Smallest change of load on the bar, kg. */
  readonly stepKg: number;
  /** Most a step may add, fraction of the load. */
  readonly largestStep: number;
  /** Rise asked for, fraction of the load, 0–0.1; 0 keeps the load, left out asks for one plate step. */
  readonly wanted?: number;
};

/**
 * What one step adds, kg: whole plate steps, no more than the rise asked for but at least one of
 * them, and none where even that would be more than the largest step (from 25 kg, 2.5 kg is 10 %).
 */
export function stepUpKg(loadKg: number, { stepKg, largestStep, wanted }: StepSize): number {
  if (wanted === 0 || !(loadKg > 0)) return 0;
  const whole = (share: number) => Math.floor((share * loadKg) / stepKg + 1e-9);
  const steps = wanted === undefined ? 1 : Math.max(1, whole(wanted));
  return Math.min(steps, whole(largestStep)) * stepKg;
}
