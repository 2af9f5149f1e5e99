import { plannedLoads } from "../../../../src/coaching/next-week/present-step/planned-loads";
import type {
  AskedLess,
  LiftedDay,
} from "../../../../src/coaching/next-week/present-step/reason-under-plan";
import { gapped } from "../../blocks/gapped";
import { day } from "../written-squad";

type Lifted = Pick<LiftedDay, "loadKg"> &
  Partial<LiftedDay> & { readonly iso: string; readonly asked?: AskedLess };
/** Sessions of an athlete who comes once a week; the card of a slow one began from 85 kg. */
const plans = (...lifted: readonly Lifted[]) => {
  const sessions = lifted.map(({ iso, asked = null, loadKg, ...over }) => ({
    ...{ day: day(iso), asked, loadKg, lastKg: loadKg, reps: 5, sets: 3 },
    ...{ missed: false, timed: true, movedWell: true, reserve: null },
    ...over,
  }));
  return plannedLoads(gapped(sessions), 1, { lessOn: ({ asked }) => asked, plannedFor: () => 85 });
};
const stands = (...lifted: readonly Lifted[]) =>
  plans(...lifted).map(({ loadKg, less }) => [loadKg, less]);

test("a slow day on which the plan was lifted all the same asked for nothing less", () => {
  const [, same] = plans(
    { iso: "2026-05-05", loadKg: 85 },
    { iso: "2026-05-12", loadKg: 85, asked: "slow" },
  );
  expect(same).toEqual({ loadKg: 85, liftedKg: 85, less: null, droppedFromKg: null });
});

test("nobody is asked why the plan itself was lifted", () => {
  const [, same] = plans({ iso: "2026-05-05", loadKg: 85 }, { iso: "2026-05-12", loadKg: 85 });
  expect(same!.droppedFromKg).toBeNull();
});

test("on a slow day of the same block the plan is the load from before it, whatever its card took off", () => {
  expect(
    stands({ iso: "2026-05-05", loadKg: 90 }, { iso: "2026-05-12", loadKg: 75, asked: "slow" }),
  ).toEqual([
    [90, null],
    [90, "slow"],
  ]);
});

test("a new rotation that begins lighter on a usual day stands at what was lifted, more within the week or not", () => {
  expect(
    stands(
      { iso: "2026-05-05", loadKg: 90, reps: 3 },
      { iso: "2026-05-12", loadKg: 80 },
      { iso: "2026-05-15", loadKg: 82.5 },
    ),
  ).toEqual([
    [90, null],
    [80, null],
    [82.5, null],
  ]);
});

test("begun on a slow day it stands for what is lifted within the week, later on for what its card began from", () => {
  const begun = (again: string) =>
    stands(
      { iso: "2026-05-05", loadKg: 90, reps: 3 },
      { iso: "2026-05-12", loadKg: 80, asked: "slow" },
      { iso: again, loadKg: 82.5 },
    )[1];
  expect([begun("2026-05-19"), begun("2026-05-20")]).toEqual([
    [82.5, "slow"],
    [85, "slow"],
  ]);
});
