import fc from "fast-check";
import { plateChange } from "../../../../src/coaching/next-week/rack/plate-change";
import { type Lift, rackPlan } from "../../../../src/coaching/next-week/rack/rack-plan";

const lift = (athlete: string, loadKg: number, plates: number[], sets = 3, barKg = 20): Lift => ({
  athlete,
  lift: "squat",
  loadKg,
  barKg,
  plates,
  sets,
});
const planned = (...args: Parameters<typeof rackPlan>) => {
  const plan = rackPlan(...args);
  if (!plan.ok) throw new Error(plan.refusal.code);
  return plan.value;
};

test("only what lies outside a difference is moved", () => {
  expect(plateChange([20, 10, 2.5], [20, 10])).toEqual({ takeOff: [2.5], putOn: [] });
  expect(plateChange([20, 10], [20, 15, 1.25])).toEqual({ takeOff: [10], putOn: [15, 1.25] });
  expect(plateChange([], [20])).toEqual({ takeOff: [], putOn: [20] });
});

test("three lifters at one rack: counted by hand", () => {
  // 62.5 = 20+1.25 a side, 80 = 20+10, 85 = 20+10+2.5, on a 20 kg bar. Moves a side:
  // put on 2; off 1.25, on 10: 2; on 2.5: 1. Five a side, ten in all. Nine sets of 3 minutes: 27.
  const plan = planned(
    [
      lift("Tomas Reyerson", 85, [20, 10, 2.5]),
      lift("Oona Petrakell", 62.5, [20, 1.25]),
      lift("Nils Quarrington", 80, [20, 10]),
    ],
    1,
    3,
    60,
  );
  expect(plan.racks[0]!.turns.map(({ athlete }) => athlete)).toEqual([
    "Oona Petrakell",
    "Nils Quarrington",
    "Tomas Reyerson",
  ]);
  expect(plan.moves).toBe(10);
  expect(plan.racks.map(({ moves }) => moves)).toEqual([10]);
  expect(plan.minutes).toBe(27);
});

test("a room that is free too briefly says what it needs; two kinds of bar need two racks", () => {
  const two = [lift("Kofi Anstruther", 115, [20, 20, 5, 2.5]), lift("Wren Castellow", 50, [15])];
  expect(rackPlan(two, 1, 3, 15)).toEqual({
    ok: false,
    refusal: { code: "room-too-short", facts: { minutes: 18, minutesOfRoom: 15 } },
  });
  expect(planned(two, 2, 3, 15).racks).toHaveLength(2);
  const light = lift("Bea Lindqvale", 35, [10], 3, 15);
  expect(rackPlan([...two, light], 1, 3, 60)).toMatchObject({ refusal: { code: "racks-too-few" } });
  expect(rackPlan(two, 0, 3, 60)).toMatchObject({ refusal: { code: "racks-impossible" } });
  expect(planned([], 2, 3, 60)).toEqual({ racks: [], moves: 0, minutes: 0 });
});

test("a squat and a deadlift share no rack, whatever their bars", () => {
  const squat = lift("Kofi Anstruther", 80, [20, 10]);
  const pull = { ...lift("Wren Castellow", 80, [20, 10]), lift: "deadlift" };
  expect(planned([squat, pull], 2, 3, 60).racks.map(({ turns }) => turns.length)).toEqual([1, 1]);
  expect(planned([squat, { ...pull, lift: "squat" }], 2, 3, 60).racks).toHaveLength(1);
  expect(rackPlan([squat, pull], 1, 3, 60)).toMatchObject({
    refusal: { code: "racks-too-few", facts: { bars: 2, racks: 1 } },
  });
});

const side = fc
  .subarray([20, 15, 10, 5, 2.5, 1.25], { minLength: 0 })
  .map((plates) => [...plates].sort((a, b) => b - a));
const lifts = fc
  .array(fc.tuple(side, fc.integer({ min: 1, max: 5 }), fc.constantFrom(15, 20)), {
    minLength: 1,
    maxLength: 7,
  })
  .map((rows) =>
    rows.map(([plates, sets, barKg], i) =>
      lift(`athlete ${i}`, barKg + 2 * plates.reduce((a, b) => a + b, 0), plates, sets, barKg),
    ),
  );

/** Plates moved on both sides when bars are loaded in this order, counted plate by plate. */
const movedBy = (run: readonly Lift[]) => {
  let on: readonly number[] = [];
  let moves = 0;
  for (const { plates } of run) {
    const differs = on.findIndex((plate, at) => plate !== plates[at]);
    const stays = differs < 0 ? on.length : differs;
    moves += on.length - stays + plates.length - stays;
    on = plates;
  }
  return 2 * moves;
};

/** Least moves of all shares there are, and the sets of the fullest rack then: every set of places to cut at. */
const fewestByTrying = (all: readonly Lift[], racks: number, room: number) => {
  const order = [...all].sort(
    (a, b) => a.barKg - b.barKg || a.loadKg - b.loadKg || (a.athlete < b.athlete ? -1 : 1),
  );
  let fewest: readonly [moves: number, sets: number] = [Number.POSITIVE_INFINITY, 0];
  for (let cuts = 0; cuts < 2 ** (order.length - 1); cuts++) {
    const runs: Lift[][] = [[]];
    for (const [at, one] of order.entries()) {
      runs.at(-1)!.push(one);
      if ((cuts >> at) % 2 === 1) runs.push([]);
    }
    const one = new Set(runs.map((run) => new Set(run.map(({ barKg }) => barKg)).size));
    const sets = Math.max(...runs.map((run) => run.reduce((sum, lifter) => sum + lifter.sets, 0)));
    if (one.size > 1 || !one.has(1) || sets > room || runs.length > racks) continue;
    const moves = runs.reduce((sum, run) => sum + movedBy(run), 0);
    if (moves < fewest[0] || (moves === fewest[0] && sets < fewest[1])) fewest = [moves, sets];
  }
  return fewest;
};

test("everyone lifts once, on the right bar, within the room's racks and time, and no cut moves fewer", () => {
  fc.assert(
    fc.property(
      lifts,
      fc.integer({ min: 1, max: 3 }),
      fc.integer({ min: 5, max: 40 }),
      (all, racks, room) => {
        const plan = rackPlan(all, racks, 1, room);
        if (!plan.ok) return;
        const turns = plan.value.racks.flatMap((share) => share.turns);
        expect(turns.map(({ athlete }) => athlete).sort()).toEqual(
          all.map(({ athlete }) => athlete).sort(),
        );
        expect(plan.value.racks.length).toBeLessThanOrEqual(racks);
        expect(plan.value.minutes).toBeLessThanOrEqual(room);
        for (const share of plan.value.racks) {
          let on: readonly number[] = [];
          for (const turn of share.turns) {
            expect(turn.barKg).toBe(share.barKg);
            on = [...on.slice(0, on.length - turn.takeOff.length), ...turn.putOn];
            expect(on).toEqual(turn.plates);
          }
        }
        const moves = plan.value.racks.reduce((sum, share) => sum + share.moves, 0);
        expect(plan.value.moves).toBe(moves);
        expect([moves, plan.value.minutes]).toEqual(fewestByTrying(all, racks, room));
        const more = rackPlan(all, racks + 1, 1, room);
        if (more.ok) expect(more.value.moves).toBeLessThanOrEqual(plan.value.moves);
      },
    ),
  );
});

test("a hundred lifters at four racks are shared in as many steps as their number squared, not more", () => {
  // Trying every share anew took minutes here: past any limit of the sheet's.
  const many = Array.from({ length: 120 }, (_, at) =>
    lift(`athlete ${at}`, 40 + ((at * 7) % 23) * 2.5, [[20], [20, 5], [15, 2.5], [10, 5]][at % 4]!),
  );
  const plan = planned(many, 4, 3, 1200);
  expect(plan.racks.flatMap(({ turns }) => turns)).toHaveLength(120);
  // 360 sets, three a lifter: no four racks do with fewer than 90 each.
  expect(plan.minutes).toBeGreaterThanOrEqual(90 * 3);
});

test("where plates move as little either way, the heavier loads have the rack with fewer lifters", () => {
  const three = ["Bea", "Ilka", "Kofi"].map((athlete, at) => lift(athlete, 60 + at, [20]));
  const { racks } = planned(three, 2, 3, 18);
  expect(racks.map(({ turns }) => turns.map(({ athlete }) => athlete))).toEqual([
    ["Bea", "Ilka"],
    ["Kofi"],
  ]);
});

test("who lifts the same stands in order of the alphabet, in whatever order the rows are", () => {
  const same = ["Wren", "Kofi", "Oona"].map((athlete) => lift(athlete, 60, [20]));
  const turns = (lifts: readonly Lift[]) =>
    planned(lifts, 1, 3, 60).racks[0]!.turns.map(({ athlete }) => athlete);
  expect(turns(same)).toEqual(["Kofi", "Oona", "Wren"]);
  expect(turns([...same].reverse())).toEqual(["Kofi", "Oona", "Wren"]);
});

test("a room too short is told the least it must be free, between one set and all of them", () => {
  // Five of three sets at two racks: three at one of them, nine sets of 3 minutes.
  const five = ["Bea", "Ilka", "Kofi", "Nils", "Oona"].map((athlete, at) =>
    lift(athlete, 60 + at, [20]),
  );
  expect(rackPlan(five, 2, 3, 9)).toMatchObject({ refusal: { facts: { minutes: 27 } } });
});

test("a room free for exactly the sets there are is not too short", () => {
  // Seven sets of 2.1 minutes in 14.7: the quotient is a hair under seven.
  expect(14.7 / 2.1).toBeLessThan(7);
  expect(planned([lift("Bea", 60, [20], 7)], 1, 2.1, 14.7).minutes).toBeCloseTo(14.7, 12);
});

test("one to twenty racks can be planned for; what cannot is told back", () => {
  const one = [lift("Bea", 60, [20])];
  expect(rackPlan(one, 20, 3, 60).ok).toBe(true);
  expect(rackPlan(one, 21, 3, 60)).toMatchObject({
    refusal: { code: "racks-impossible", facts: { racks: 21 } },
  });
  expect(rackPlan([...one, lift("Ilka", 40, [10], 3, 15)], 1, 3, 60)).toMatchObject({
    refusal: { code: "racks-too-few", facts: { bars: 2, racks: 1 } },
  });
});
