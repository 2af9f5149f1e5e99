import { withCommas } from "../../src/local-host/page/with-commas";

test.each([
  ["=LOAD_DROP(80;0,6;0,7;2,5)", "=LOAD_DROP(80,0.6,0.7,2.5)"],
  ['=VELOCITY_LOSS("0,70; 0,60")', '=VELOCITY_LOSS("0,70; 0,60")'],
  ["=IF(A1=\"a;b\";1,5;'My; sets'!B2)", "=IF(A1=\"a;b\",1.5,'My; sets'!B2)"],
  ["=SUM(A1,2)", "=SUM(A1,2)"],
  ["=SUM({1;2})", "=SUM({1;2})"],
  ["=A1+B1", "=A1+B1"],
])("the formula %s typed is %s", (typed, formula) => {
  expect(withCommas(typed)).toBe(formula);
});
