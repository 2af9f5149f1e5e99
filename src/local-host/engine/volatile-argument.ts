import { localFormulas } from "../../words/local-formulas";

/** Functions whose value changes by itself. */
const volatile = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY"]);

/**
 * The function that changes by itself and stands inside a custom function's brackets, or null.
 * Quoted text and quoted tab names are passed over.
 */
function volatileArgument(formula: string, custom: ReadonlySet<string>): string | null {
  const inside: string[] = [];
  const parts = /"(?:[^"]|"")*"|'(?:[^']|'')*'|([A-Za-z_][\w.]*)?\s*\(|\)/g;
  for (const [part, word = ""] of formula.matchAll(parts)) {
    if (part === ")") inside.pop();
    else if (part.endsWith("(")) {
      const name = word.toUpperCase();
      if (volatile.has(name) && inside.some((outer) => custom.has(outer))) return name;
      inside.push(name);
    }
  }
  return null;
}

/** Throws the sentence that stands for the online sheet's endless loading. */
export function refuseVolatile(formula: string, custom: ReadonlySet<string>): void {
  const name = volatileArgument(formula, custom);
  if (name === null) return;
  throw new Error(localFormulas.volatile(name));
}
