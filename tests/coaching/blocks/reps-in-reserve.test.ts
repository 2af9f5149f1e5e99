import { repsInReserve } from "../../../src/coaching/blocks/reps-in-reserve";

test("by the handbooks' chart five repetitions are the most at 87 %: three leave two", () => {
  expect(repsInReserve(87, 3, 100)).toEqual({ ok: true, value: 2 });
});

test("nothing, half of nothing and more than any bar are no loads", () => {
  for (const loadKg of [0, 5e-324, 0.4, 501, Number.NaN])
    expect(repsInReserve(loadKg, 3, 100)).toMatchObject({
      refusal: { code: "load-impossible" },
    });
  expect(repsInReserve(0.5, 3, 100)).toMatchObject({ ok: true });
});
