/**
 * Plates are moved on both sides, from a bar that stands empty. Plates of one mass that stay are not
 * touched: heavier plates lie inside, so a plate can stay only while all inside it stay.
 */
export function plateChange(
  from: readonly number[],
  to: readonly number[],
): { readonly takeOff: readonly number[]; readonly putOn: readonly number[] } {
  let same = 0;
  while (same < from.length && same < to.length && from[same] === to[same]) same++;
  return { takeOff: from.slice(same), putOn: to.slice(same) };
}
