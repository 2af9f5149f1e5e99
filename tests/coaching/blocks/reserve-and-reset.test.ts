import { rotation } from "../../../src/coaching/blocks/block";
import { ladder } from "../../../src/coaching/blocks/ladder";
import { repsInReserve } from "../../../src/coaching/blocks/reps-in-reserve";
import { stepAfter } from "../../../src/coaching/blocks/step-after";
import { accept, refuse } from "../../../src/outcome";

test("loads, repetitions and strengths that cannot be leave no reserve to tell", () => {
  for (const strengthKg of [0, -5, 500.5, Number.NaN])
    expect(repsInReserve(85, 5, strengthKg)).toEqual(refuse("strength-impossible", { strengthKg }));
  for (const reps of [0, 31, 2.5, -1])
    expect(repsInReserve(85, reps, 110)).toEqual(refuse("reps-impossible", { reps }));
  for (const loadKg of [0.4, 500.5, Number.NaN])
    expect(repsInReserve(loadKg, 5, 110)).toEqual(refuse("load-impossible", { loadKg }));
});

test("the bounds themselves are figures", () => {
  // At the best single itself one repetition is the chart's limit: 29 too many of 30.
  expect(repsInReserve(500, 30, 500)).toEqual(accept(-29));
  expect(repsInReserve(500, 1, 500)).toEqual(accept(0));
});

test("a ladder says what gave way: nothing, its steps, or its start", () => {
  const lowered = (loadKg: number, guardKg: number | null) =>
    ladder({ block: rotation[0]!, loadKg, guardKg, stepKg: 2.5, largestStep: 0.1 }).lowered;
  // From 70 kg three steps lead to 77.5. Three repetitions and two in reserve are 87 % of the best.
  expect([lowered(70, null), lowered(70, 100)]).toEqual([null, null]);
  // Of 88 kg that is 76.6: one step fewer. 5×5 itself needs 83 %, 73 kg.
  expect(lowered(70, 88)).toBe("steps");
  // Of 80 kg 83 % is 66.4: the start comes down.
  expect(lowered(70, 80)).toBe("start");
});

test("after the last block the rotation begins anew, or stays where no load keeps a reserve", () => {
  const last = { block: rotation[3]!, loadKg: 80, stepKg: 2.5, largestStep: 0.05, wanted: 0.025 };
  // Three steps of 2.5 kg lead from 75 to 82.5: one step above where it was.
  expect(stepAfter({ ...last, guardKg: null })).toMatchObject({
    block: rotation[0],
    loadKg: 75,
  });
  expect(stepAfter({ ...last, guardKg: 2 })).toEqual({ block: rotation[3], loadKg: 80 });
});
