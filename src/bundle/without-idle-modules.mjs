/**
 * The bundler gives every module a function that runs it once, also those with nothing to run: their
 * functions are declared already. Such functions and the calls of them are taken out of the bundle,
 * and again until none is left, for a module that only runs idle ones is idle itself.
 */
export function withoutIdleModules(bundle) {
  let text = bundle.replace(moduleName, "$1m() {");
  for (;;) {
    const idle = [...text.matchAll(idleModule)].map(([, name]) => name);
    if (idle.length === 0) return text;
    const calls = new RegExp(`^ *(?:${idle.map(escaped).join("|")})\\(\\);\\n`, "gm");
    const inside = new RegExp(`\\b(?:${idle.map(escaped).join("|")})\\(\\), `, "g");
    text = text.replace(idleModule, "").replace(calls, "").replace(inside, "");
  }
}

/** As the bundler prints it: `var init_x = __esm({ "src/x.ts"() { } });`. The path is not needed. */
const moduleName = /( = __esm\(\{\n *)"[^"\n]*"\(\) \{/g;
const idleModule = /^ *var (init_[\w$]+) = __esm\(\{\n *m\(\) \{\n *\}\n *\}\);\n/gm;

const escaped = (name) => name.replaceAll("$", "\\$");
