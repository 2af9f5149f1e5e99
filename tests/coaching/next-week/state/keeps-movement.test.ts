import { keepsMovement } from "../../../../src/coaching/next-week/state/keeps-movement";

test("a squad keeps how sets moved once one set says so, well or not", () => {
  const kept = (...movedWell: (boolean | null)[]) =>
    keepsMovement(
      movedWell.map((one) => ({ movedWell: one })) as unknown as Parameters<
        typeof keepsMovement
      >[0],
    );
  expect([kept(null, true), kept(false, null), kept(null, null), kept()]).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
