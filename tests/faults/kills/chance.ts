/** Numbers from 0 to 1 by a seed, so that a run can be repeated (linear congruence, Numerical Recipes). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}
