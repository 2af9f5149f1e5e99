import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Codes that a file of words has a sentence for, as often as they stand in it: the keys of its objects. */
export const codesIn = (file: string): string[] =>
  [
    ...readFileSync(join(__dirname, "../../src/words", file), "utf8").matchAll(
      /^ {2}"([a-z0-9-]+)": /gm,
    ),
  ].map(([, code]) => code!);
