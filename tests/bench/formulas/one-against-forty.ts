import { deserialize, serialize } from "node:v8";
import { catalogue } from "../../../src/catalogue";
import { lift, setRows } from "./set-rows";

/** One formula for forty athletes beside a formula for each: every call is handed all rows again. */
export function oneAgainstForty(count: number): string {
  const { cells, athletes, asOf } = setRows(count);
  const forty = athletes.slice(0, 40);
  const formula = catalogue.find(({ name }) => name === "SET_TO_SET");
  // Arguments cross from the spreadsheet to the script as copies.
  const called = (names: unknown) => {
    const started = performance.now();
    const passed: unknown = deserialize(serialize(cells));
    const handed = performance.now() - started;
    formula?.compute([names, passed, lift, asOf]);
    return { handed, all: performance.now() - started };
  };
  called(forty[0]);
  const one = called(forty.map((name) => [name]));
  const each = forty.map((name) => called(name));
  const all = each.reduce((sum, call) => sum + call.all, 0);
  const handed = each.reduce((sum, call) => sum + call.handed, 0);
  return `One formula for ${forty.length} athletes over ${count} rows ${one.all.toFixed(0)} ms, of it handing over the rows ${one.handed.toFixed(0)}; ${forty.length} formulas ${all.toFixed(0)} ms, of it handing over ${handed.toFixed(0)}: ${(all / one.all).toFixed(1)} ×`;
}
