import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

interface Known {
  readonly file: string;
  readonly stands: string;
  readonly fault: string;
  readonly reason: string;
  readonly within?: string;
}

const folder = join(__dirname, "known-survivors");
const known: Known[] = readdirSync(folder).flatMap((list) =>
  JSON.parse(readFileSync(join(folder, list), "utf8")),
);

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

test.each(known)("$stands of $file still stands there once, and has a reason", (one) => {
  expect(standsOf(one)).toBe(1);
  expect(one.fault).not.toBe(one.stands);
  expect(one.reason).toMatch(/\w{3}/);
});

test.each(readdirSync(folder))("%s tells of the sources its name says", (list) => {
  const told: Known[] = JSON.parse(readFileSync(join(folder, list), "utf8"));
  const named = ({ file }: Known) => `${file.split("/").slice(1, -1).join("-")}.json`;
  expect(told.map(named)).toEqual(told.map(() => list));
});
