import { liftSets } from "../../../src/coaching/series/lift-sets";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { liftingSet } from "./invented-season";

const kinds = ["warm-up", "marker", "work", "work"] as const;
const sets = [10, 12, 15].flatMap((day) => kinds.map((kind) => liftingSet({ day, kind })));
const own = squadIndex({ sets }, 20).of("Ilka Brandmoor")!;
const [lift] = [...own.lifts.keys()];

test("a lift's sets are its marker and work sets, in order of day", () => {
  const { sets: kept, length } = liftSets(own, lift!);
  expect(kept.map(({ day, kind }) => [day, kind])).toEqual(
    [10, 12, 15].flatMap((day) => [
      [day, "marker"],
      [day, "work"],
      [day, "work"],
    ]),
  );
  expect(length).toBe(9);
});

test("those from a day on are the last of all, and lead their days as they do among all", () => {
  const all = liftSets(own, lift!).speedSets();
  expect(liftSets(own, lift!).fromDay(12)).toEqual(all.slice(3));
  // A half-life reaches to a part of a day.
  expect(liftSets(own, lift!).fromDay(12.4)).toEqual(all.slice(6));
  expect(all.slice(6).map(({ leads }) => leads)).toEqual(["marker", "work", null]);
  expect(liftSets(own, lift!).fromDay(16)).toEqual([]);
  expect(liftSets(own, lift!).speedSets(3, 6)).toEqual(all.slice(3, 6));
});

test("all of them say the same however often they are asked for, and are kept from the second time on", () => {
  const fresh = liftSets(squadIndex({ sets }, 20).of("Ilka Brandmoor")!, lift!);
  const [first, second, third] = [fresh.speedSets(), fresh.speedSets(), fresh.speedSets()];
  expect(second).toEqual(first);
  expect(second).not.toBe(first);
  expect(third).toBe(second);
  expect(fresh.speedSets(3, 6)).toEqual(first.slice(3, 6));
});

test("a lift the athlete never did has no sets", () => {
  expect(liftSets(own, "no such lift").speedSets()).toEqual([]);
  expect(liftSets(own, "no such lift").fromDay(0)).toEqual([]);
});
