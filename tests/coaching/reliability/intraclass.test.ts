import { intraclass } from "../../../src/coaching/reliability/intraclass";
import { refuse } from "../../../src/outcome";

test("the very first reading is looked at like any other, and named as the first", () => {
  expect(
    intraclass([
      [Number.NaN, 2],
      [3, 4],
    ]),
  ).toEqual(refuse("value-not-finite", { place: 1 }));
});

test("one athlete, or one trial, is too few to tell athletes apart", () => {
  expect(intraclass([[1, 2, 4]])).toEqual(refuse("trials-too-few", { athletes: 1, trials: 3 }));
  expect(intraclass([[1], [2], [4]])).toEqual(refuse("trials-too-few", { athletes: 3, trials: 1 }));
});
