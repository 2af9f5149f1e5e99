import { readFileSync } from "node:fs";
import known from "./known-survivors.json";

type Known = (typeof known)[number] & { readonly within?: string };

const times = (text: string, part: string) => text.split(part).length - 1;
/** Words that are types are no code. */
const sourceOf = (file: string) => readFileSync(file, "utf8").replaceAll('_: "squad"', "");

/** Told by what stands there, so it must stand once: in its file, or within a part of one line of it. */
const standsOf = ({ file, stands, within }: Known) => {
  const source = sourceOf(file);
  return within === undefined
    ? times(source.replace(/\s+/g, " "), stands)
    : times(source, within) * times(within, stands);
};

test.each(known as Known[])("$stands of $file still stands there once, and has a reason", (one) => {
  expect(standsOf(one)).toBe(1);
  expect(one.fault).not.toBe(one.stands);
  expect(one.reason).toMatch(/\w{3}/);
});
