import { readFileSync } from "node:fs";
import { parseSync } from "@swc/core";

/** Properties of a catalogue entry that only its declaration, the README and the tests read. */
const helpOnly = new Set(["summary", "parameters", "results", "examples"]);

/**
 * Leaves help and examples out of the catalogue's entries: the script computes, its declarations
 * carry the help already, and every formula call parses every byte.
 */
export const withoutHelp = {
  name: "without-help",
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/]catalogue[\\/][a-z-]+\.ts$/ }, ({ path }) => ({
      contents: cut(readFileSync(path, "utf8")),
      loader: "ts",
    }));
  },
};

/** The source of a module without those properties of the objects it exports. */
export function cut(source) {
  const bytes = Buffer.from(source);
  const module = parseSync(source, { syntax: "typescript", target: "es2022" });
  // Places are counted in bytes from wherever the parser's last file ended.
  const first = module.span.start - leading(source);
  const pieces = module.body
    .filter(({ type }) => type === "ExportDeclaration")
    .flatMap(({ declaration }) => declaration.declarations ?? [])
    .filter(({ init }) => init?.type === "ObjectExpression")
    .flatMap(({ init }) => init.properties)
    .filter(({ key }) => key && helpOnly.has(key.value))
    .map(({ key, value }) => [key.span.start - first, endOf(value) - first]);
  let at = 0;
  const kept = [];
  for (const [from, to] of pieces) {
    kept.push(bytes.subarray(at, from));
    // The comma after a property goes with it.
    at = bytes[to] === 0x2c ? to + 1 : to;
  }
  return Buffer.concat([...kept, bytes.subarray(at)]).toString();
}

const endOf = (value) => value.span.end;

/** Bytes before the first statement: comments and blanks are no part of the module's span. */
function leading(source) {
  const text = /^(?:\s+|\/\/[^\n]*|\/\*[\s\S]*?\*\/)*/.exec(source)[0];
  return Buffer.byteLength(text);
}
