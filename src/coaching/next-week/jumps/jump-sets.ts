import type { Block } from "../../blocks/block";

/** A session's jumps in equal sets. */
export type JumpSets = {
  readonly hops: Block;
  readonly dropJumps: Block;
  readonly boxJumps: Block;
};

/** Repetitions a set: about ten hops; of jumps three to five (common practice, no source). */
const hopsASet = 10;
const jumpsASet = { least: 3, most: 5 } as const;
/** Full attempts at the box: few, with full rest (common practice, no source). */
const usualBoxJumps = 6;

/**
 * Ground contacts in equal sets that add up to them exactly, so that the card's lines and their sum
 * say the same: about six at the box, about a quarter of the rest from a drop, hops for what is left.
 * Of all choices nearby the one is taken whose counts and sets are nearest to those (six at the box or
 * fewer are always sets of three to five, or one set): 60 contacts are
 * 4×10 hops, 3×5 drop jumps and 1×5 at the box.
 *
 * @param contacts whole number, 0 or more
 * @param mostDrops drop jumps at most
 */
export function jumpSets(contacts: number, mostDrops: number): JumpSets {
  const box = Math.min(usualBoxJumps, contacts);
  const drops = Math.min(mostDrops, Math.floor((contacts - box) / 4));
  let best = { cost: Number.POSITIVE_INFINITY, boxes: box, dropped: drops };
  // Where there are too few to take any away the first choice costs nothing, and stands.
  for (let boxes = box; boxes >= box - 3; boxes--) {
    const most = Math.min(mostDrops, drops + 3);
    for (let dropped = Math.max(0, drops - 3); dropped <= most; dropped++) {
      const cost =
        box -
        boxes +
        Math.abs(dropped - drops) +
        4 * unevenness(dropped, jumpsASet.most, jumpsASet.least) +
        unevenness(contacts - boxes - dropped, hopsASet, hopsASet);
      if (cost < best.cost) best = { cost, boxes, dropped };
    }
  }
  return {
    hops: equalSets(contacts - best.boxes - best.dropped, hopsASet),
    dropJumps: equalSets(best.dropped, jumpsASet.most),
    boxJumps: equalSets(best.boxes, jumpsASet.most),
  };
}

/** The fewest equal sets of no more than so many: 18 hops are 2×9, 6 jumps 2×3. */
function equalSets(count: number, most: number): Block {
  if (count <= 0) return { sets: 0, reps: 0 };
  let sets = Math.ceil(count / most);
  while (count % sets !== 0) sets++;
  return { sets, reps: count / sets };
}

/** How far the sets of a count fall short of so many repetitions; one set is as it is. */
function unevenness(count: number, most: number, wished: number): number {
  const { sets, reps } = equalSets(count, most);
  return sets < 2 ? 0 : Math.max(0, wished - reps);
}
