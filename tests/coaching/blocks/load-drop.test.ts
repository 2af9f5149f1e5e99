import fc from "fast-check";
import { loadDrop } from "../../../src/coaching/blocks/load-drop";
import { accept, refuse } from "../../../src/outcome";

const loadAt = (plannedKg: number, speed: number, usual: number, stepKg = 2.5) => {
  const drop = loadDrop(plannedKg, speed, usual, stepKg);
  if (!drop.ok) throw new Error(drop.refusal.code);
  return drop.value.kind === "no heavy work" ? null : drop.value.loadKg;
};

test("a marker at 0.86: 0.81 and faster as planned, 0.76 to 0.80 lighter, slower still lighter", () => {
  expect([0.95, 0.86, 0.81].map((speed) => loadAt(85, speed, 0.86))).toEqual([85, 85, 85]);
  expect([0.8, 0.79, 0.76].map((speed) => loadAt(85, speed, 0.86))).toEqual([80, 80, 80]);
  expect([0.75, 0.71].map((speed) => loadAt(85, speed, 0.86))).toEqual([75, 75]);
  expect(loadAt(85, 0.7, 0.86)).toBeNull();
});

test("the real share off is told: from 25 kg one step of 5 is 20 %", () => {
  expect(loadDrop(25, 0.7, 0.78, 5)).toEqual(
    accept({
      kind: "lighter",
      loadKg: 20,
      share: expect.closeTo(0.2, 9),
      slower: expect.closeTo(0.08, 9),
    }),
  );
});

test("figures that cannot be are refused", () => {
  expect(loadDrop(0, 0.8, 0.8, 2.5)).toEqual(refuse("load-impossible", { loadKg: 0 }));
  expect(loadDrop(85, 62, 0.8, 2.5)).toEqual(refuse("speed-impossible", { speed: 62 }));
  expect(loadDrop(85, 0.8, -1, 2.5)).toEqual(refuse("speed-impossible", { speed: -1 }));
  expect(loadDrop(85, 0, 0.8, 2.5)).toEqual(refuse("speed-impossible", { speed: 0 }));
  expect(loadDrop(85, 0.8, 0.8, 0)).toEqual(refuse("step-impossible", { stepKg: 0 }));
  expect(loadDrop(85, 0.8, 0.8, 20.5)).toEqual(refuse("step-impossible", { stepKg: 20.5 }));
  expect(loadDrop(501, 0.8, 0.8, 2.5)).toEqual(refuse("load-impossible", { loadKg: 501 }));
  expect(loadDrop(85, 0.8, 4.1, 2.5)).toEqual(refuse("speed-impossible", { speed: 4.1 }));
  for (const [kg, step] of [
    [500, 2.5],
    [85, 20],
  ] as const)
    expect(loadDrop(kg, 4, 4, step)).toEqual(accept({ kind: "as planned", loadKg: kg }));
  expect(loadDrop(5, 0.7, 0.8, 20)).toEqual(refuse("step-too-large", { stepKg: 20, loadKg: 5 }));
});

test("a drop that would leave nothing is refused, and a share of none takes nothing off", () => {
  expect(loadDrop(2.5, 0.7, 0.78, 2.5)).toEqual(
    refuse("step-too-large", { stepKg: 2.5, loadKg: 2.5 }),
  );
  expect(loadDrop(85, 0.7, 0.82, 2.5, 0)).toEqual(accept({ kind: "as planned", loadKg: 85 }));
});

test("never above the plan, always whole steps under it, never less off for a slower set", () => {
  const hundredths = fc.integer({ min: 20, max: 150 }).map((n) => n / 100);
  const loads = fc.integer({ min: 16, max: 100 }).map((n) => 2.5 * n);
  fc.assert(
    fc.property(loads, hundredths, hundredths, hundredths, (plannedKg, usual, a, b) => {
      const [slow, fast] = [Math.min(a, b), Math.max(a, b)].map(
        (v) => loadAt(plannedKg, v, usual) ?? 0,
      );
      expect(fast!).toBeLessThanOrEqual(plannedKg);
      expect(slow!).toBeLessThanOrEqual(fast!);
      expect(((plannedKg - fast!) / 2.5) % 1).toBeCloseTo(0, 9);
    }),
  );
});
