import fc from "fast-check";
import { stackHeight } from "../../../../src/coaching/jumps/stack-height";
import { jumpPlan } from "../../../../src/coaching/next-week/jumps/jump-plan";
import { inAll, plates, state } from "../written-squad";

const stack = [15, 15, 15, 15, 15, 5];
const plan = (over: Partial<Parameters<typeof jumpPlan>[0]> = {}) =>
  jumpPlan({
    experience: "trained",
    noJumps: false,
    eased: false,
    state: state("Tomas Reyerson", { lastStackKg: stack, jumpWord: "holding" }),
    plates,
    ...over,
  });

test("trained 60 contacts, novices 40, half of it when eased, none without jumps", () => {
  expect(plan().contacts).toBe(60);
  expect(plan({ experience: "novice" }).contacts).toBe(40);
  expect(plan({ eased: true }).contacts).toBe(30);
  expect(plan({ noJumps: true })).toMatchObject({ contacts: 0, stackKg: [], stackCm: null });
});

test("60 contacts: 40 hops, 15 drop jumps, 5 box jumps, in whole sets", () => {
  expect(plan()).toMatchObject({
    hops: { sets: 4, reps: 10 },
    dropJumps: { sets: 3, reps: 5 },
    boxJumps: { sets: 1, reps: 5 },
  });
});

test("the last stack cleared; one small step more while rising, and only one the gym has", () => {
  // Five of 15 kg and one of 5: 5 × 3.6 + 2.2 cm.
  expect(plan()).toMatchObject({ stackKg: stack, stackCm: 20.2 });
  const rising = state("Wren Castellow", { lastStackKg: stack, jumpWord: "rising" });
  expect(plan({ state: rising })).toMatchObject({
    stackKg: [15, 15, 15, 15, 15, 10],
    stackCm: 20.9,
  });
  const noTens = plates.map((one) => (one.massKg === 10 ? { ...one, owned: 0 } : one));
  expect(plan({ state: rising, plates: noTens }).stackKg).toEqual(Array(6).fill(15));
  expect(plan({ state: rising, eased: true }).stackKg).toEqual(stack);
});

test("heights kept without plates stay as heights", () => {
  const heights = state("Ilka Brandmoor", { lastJumpCm: 42.5, jumpWord: "rising" });
  expect(plan({ state: heights })).toMatchObject({ stackKg: [], stackCm: 42.5 });
});

test("contacts always add up, drop jumps are 20 at most and 10 for novices, stacks can be built", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("novice" as const, "trained" as const, null),
      fc.nat(140),
      fc.boolean(),
      (experience, contacts, eased) => {
        const found = plan({ experience, eased, wished: { contacts } });
        const [hops, drops, box] = [found.hops, found.dropJumps, found.boxJumps].map(inAll);
        expect(hops! + drops! + box!).toBe(contacts);
        expect(drops).toBeLessThanOrEqual(experience === "novice" ? 10 : 20);
        expect(stackHeight(found.stackKg, plates).ok).toBe(true);
      },
    ),
  );
});
