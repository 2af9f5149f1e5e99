import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";

/**
 * The grid library remembers formulas and ranges under a 32-bit hash of their names once these are
 * longer than 64 characters, and never compares: of some ten thousand, two may share a hash, and one
 * formula is then given the other's answer. All its memories are of one class; its keys become the
 * names themselves.
 */
export function keepExactKeys(): void {
  const memory = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as { _hash: unknown };
  if (typeof memory._hash !== "function") throw new Error("The grid library's memory has changed.");
  memory._hash = (text: string) => text;
}
