import { readFileSync } from "node:fs";
import known from "./known-survivors.json";

/** Told by what stands there, so it must stand once; words that are types are no code. */
const standsOf = (file: string, stands: string) => {
  const source = readFileSync(file, "utf8").replace(/\s+/g, " ").replaceAll('_: "squad"', "");
  return source.split(stands).length - 1;
};

test.each(known)("$stands of $file still stands there once, and has a reason", (one) => {
  expect(standsOf(one.file, one.stands)).toBe(1);
  expect(one.fault).not.toBe(one.stands);
  expect(one.reason).toMatch(/\w{3}/);
});
