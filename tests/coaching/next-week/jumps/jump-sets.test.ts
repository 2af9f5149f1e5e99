import fc from "fast-check";
import { blockText } from "../../../../src/coaching/blocks/block";
import { jumpSets } from "../../../../src/coaching/next-week/jumps/jump-sets";
import { inAll } from "../written-squad";

const said = (contacts: number, mostDrops = 20) =>
  Object.values(jumpSets(contacts, mostDrops)).map(blockText).join(", ");

test.each([
  // hops, drop jumps, box jumps; each row adds up to its contacts
  [60, 20, "4×10, 3×5, 1×5"],
  [40, 10, "3×9, 2×4, 1×5"],
  [30, 20, "2×9, 2×3, 2×3"],
  [25, 10, "2×8, 1×3, 2×3"],
  [62, 10, "6×8, 2×4, 2×3"],
  [64, 20, "5×9, 3×5, 1×4"],
  [137, 10, "14×9, 2×4, 1×3"],
  [147, 20, "14×9, 6×3, 1×3"],
  [20, 10, "1×10, 1×4, 2×3"],
  [6, 20, "0×0, 0×0, 2×3"],
  [1, 20, "0×0, 0×0, 1×1"],
  [0, 20, "0×0, 0×0, 0×0"],
])("%i contacts with at most %i drop jumps: %s", (contacts, mostDrops, sets) => {
  expect(said(contacts, mostDrops)).toBe(sets);
});

test("lines and sum say the same of every count, and sets are never longer than a set is", () => {
  fc.assert(
    fc.property(fc.nat(200), fc.constantFrom(10, 20), (contacts, mostDrops) => {
      const { hops, dropJumps, boxJumps } = jumpSets(contacts, mostDrops);
      expect(inAll(hops) + inAll(dropJumps) + inAll(boxJumps)).toBe(contacts);
      expect(inAll(dropJumps)).toBeLessThanOrEqual(mostDrops);
      expect(inAll(boxJumps)).toBeLessThanOrEqual(6);
      expect(hops.reps).toBeLessThanOrEqual(10);
      expect(Math.max(dropJumps.reps, boxJumps.reps)).toBeLessThanOrEqual(5);
    }),
  );
});

test("contacts a coach writes are in sets of at least three jumps and four hops", () => {
  for (let contacts = 20; contacts <= 200; contacts++) {
    for (const mostDrops of [10, 20]) {
      const { hops, dropJumps, boxJumps } = jumpSets(contacts, mostDrops);
      for (const { reps } of [dropJumps, boxJumps]) expect(reps).toBeGreaterThanOrEqual(3);
      expect(hops.reps).toBeGreaterThanOrEqual(4);
    }
  }
});
