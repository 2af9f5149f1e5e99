import { standsOut } from "../../../src/coaching/readiness/stands-out";
import { studentLimit } from "../../../src/statistics/limits";

test("a part stands out where one reading in twenty does, on either side", () => {
  // The 97.5 % point of the standard normal, which a Student t with many degrees of freedom comes to (jstat).
  const edge = studentLimit(95, 1e7);
  const out = [edge + 1e-3, -edge - 1e-3, 1.96, -1.96];
  expect(out.map((z) => standsOut({ z }))).toEqual([true, true, true, true]);
  const within = [edge - 1e-3, -edge + 1e-3, 0];
  expect(within.map((z) => standsOut({ z }))).toEqual([false, false, false]);
});
