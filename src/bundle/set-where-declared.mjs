/**
 * The bundler sets a module's constants when the module is first run. A number, a word or a short
 * function needs nothing to be run before it: it is set where it is declared, and a module with nothing
 * else to do is idle.
 */
export const setWhereDeclared = (bundle) =>
  bundle.replace(module, (whole, names, start, body, end) => {
    const set = new Map();
    const rest = body.replace(ownLine, (line, name, value) => {
      if (!needsNothing(value)) return line;
      set.set(name, value);
      return "";
    });
    if (set.size === 0) return whole;
    const others = names.split(", ").filter((name) => name !== "" && !set.has(name));
    const own = [...set].map(([name, value]) => `${name} = ${value}`).join(", ");
    return `  var ${own};\n  var ${others.map((name) => `${name}, `).join("")}${start}${rest}${end}`;
  });

/** As the bundler prints it: `var a, b, init_x = __esm({ "src/x.ts"() { a = 0.5; b = f(a); } });`, one to a line. */
const module =
  /^ {2}var ((?:[\w$]+, )*)(init_[\w$]+ = __esm\(\{\n {4}"[^"\n]*"\(\) \{\n)((?: {5}.*\n|\n)*)( {4}\}\n {2}\}\);\n)/gm;
/** A whole statement of the module itself, not of a function in it. */
const ownLine = /^ {6}([\w$]+) = (.*);\n/gm;
const plain = /^(?:-?[\d.]+(?:e[+-]?\d+)?|"[^"\\]*")$/;
/** Of one expression; one that goes on over lines ends with none of them. */
const shortFunction = /^(?:\([^()]*\)|[\w$]+) => (?!\{)/;

const needsNothing = (value) =>
  plain.test(value) || (shortFunction.test(value) && value.split("`").length % 2 === 1);
