import { intraclass } from "../../../src/coaching/reliability/intraclass";
import { percentTypicalError } from "../../../src/coaching/reliability/typical-error";
import { refuse } from "../../../src/outcome";

test("the very first reading is looked at like any other, and named as the first", () => {
  expect(
    intraclass([
      [Number.NaN, 2],
      [3, 4],
    ]),
  ).toEqual(refuse("value-not-finite", { place: 1 }));
  expect(percentTypicalError([0, 40], [41, 42])).toEqual(
    refuse("value-not-above-zero", { place: 1 }),
  );
});

test("one athlete, or one trial, is too few to tell athletes apart", () => {
  expect(intraclass([[1, 2, 4]])).toEqual(refuse("values-too-few", { found: 1, needed: 2 }));
  expect(intraclass([[1], [2], [4]])).toEqual(refuse("values-too-few", { found: 1, needed: 2 }));
});
