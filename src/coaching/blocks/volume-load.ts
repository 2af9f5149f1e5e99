/** Sets of equal load: how many, of how many repetitions, at what load in kg. */
export type LoadedSets = {
  readonly sets: number;
  readonly reps: number;
  readonly loadKg: number;
};

/**
 * Volume load of a session, kg: the sum of sets × repetitions × load. Shown as context; no load is
 * planned by it.
 */
export function volumeLoad(session: readonly LoadedSets[]): number {
  return session.reduce((sum, { sets, reps, loadKg }) => sum + sets * reps * loadKg, 0);
}
