import type { HoldMeasure } from "../../../src/coaching/hold/season-hold";
import { valueChange } from "../../../src/coaching/hold/value-change";

const measure = (given: Partial<HoldMeasure>): HoldMeasure => ({
  kind: "bar speed",
  of: "back squat",
  baselineRows: 6,
  rowsAfter: 4,
  rowsSince: 4,
  change: -8,
  changeError: 2,
  wobble: 3,
  baselineValue: 0.63,
  nowValue: 0.58,
  ...given,
});

test("a contact that lengthened from 190 to 217 ms is 14 % above baseline, though a loss", () => {
  const contact = measure({
    kind: "contact time",
    change: -13,
    baselineValue: 0.19,
    nowValue: 0.2166,
  });
  expect(valueChange(contact)).toBeCloseTo(0.14, 3);
});

test("a bar speed 8 % down is −8 %, and no session since the baseline is no change", () => {
  expect(valueChange(measure({}))).toBe(-0.08);
  expect(valueChange(measure({ change: null, nowValue: null }))).toBeNull();
});
