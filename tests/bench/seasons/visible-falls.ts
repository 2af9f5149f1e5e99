import { chance } from "./chance";
import { foundWithin, type Watched } from "./flags";
import { productSays } from "./product";
import { all, calm, type Share, simulateSquad } from "./squad";
import type { World } from "./world";

/** Sessions in which the loss that would show should have been noticed. */
export const noticedWithin = 6;
/** Sessions after the baseline before a loss that would show is named. */
const leastAfter = 2;

/** One calm season, what it was told would show, and whether just that was then found. */
export type VisibleFall = { readonly percent: number; readonly watched: Watched };

/**
 * What "the loss that would show" means: each calm season is asked for it after a session drawn evenly,
 * and is then lived again, every error the same, with just that fall from the next session on.
 */
export function visibleFalls(world: World, squads: number, seed: number): readonly VisibleFall[] {
  const falls: VisibleFall[] = [];
  for (let squad = 0; squad < squads; squad++) {
    const before = simulateSquad(world, [calm(world.athletes)], seed + squad);
    const said = productSays(before, false);
    const random = chance(seed - 1 - squad);
    const told = before.athletes.map(({ sessions }, a) => {
      const earliest = world.baselineSessions + leastAfter - 1;
      const at = random.whole(earliest, Math.max(earliest, sessions.length - noticedWithin - 1));
      return { at, percent: said[a]![at]?.visibleFall ?? null };
    });
    const mix = told.map(
      ({ at, percent }): Share => ({
        count: 1,
        truth: () => ({ kind: "step", size: -(percent ?? 0), onset: at + 1, measures: all }),
      }),
    );
    const after = simulateSquad(world, mix, seed + squad);
    const words = productSays(after, false);
    after.athletes.forEach((athlete, a) => {
      const { percent } = told[a]!;
      if (percent === null) return;
      const watched = { athlete, falls: words[a]!.map(({ word }) => word === "slipping") };
      falls.push({ percent, watched });
    });
  }
  return falls;
}

/** Share of those falls found in time. */
export function noticed(falls: readonly VisibleFall[]): number {
  return foundWithin(
    falls.map(({ watched }) => watched),
    noticedWithin,
  );
}
