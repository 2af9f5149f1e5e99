/**
 * The first module of the script. The platform evaluates the whole script for every formula call, so
 * no module runs at load: each is required by the function that needs it, and a formula runs only
 * what it reaches. A catalogue entry's file and export are named for its formula. Its arguments
 * pass through the host's shell first.
 */
export function scriptEntry(catalogue) {
  const formulas = catalogue.map(({ name, parameters }) => {
    const file = `./catalogue/${name.toLowerCase().replaceAll("_", "-")}`;
    return `${name}: [${parameters.length}, () => ${required(file)}.${exportOf(name)}],`;
  });
  return `
const formulas = {
  ${formulas.join("\n  ")}
};

export function compute(name, args) {
  const { formulaArguments } = ${required("./apps-script/formula-arguments")};
  const [most, formula] = formulas[name];
  return formula().compute(formulaArguments(args, name, most));
}

export function serve(name, message) {
  const { menu } = ${required("./apps-script/menu")};
  if (Object.keys(menu).includes(name)) return menu[name]();
  return ${required("./apps-script/main")}.serve(name, message);
}
`;
}

const required = (path) => `require(${JSON.stringify(path)})`;

/** LOAD_DROP is exported as loadDropFunction. */
function exportOf(name) {
  const [first, ...rest] = name.toLowerCase().split("_");
  return `${first}${rest.map((word) => word[0].toUpperCase() + word.slice(1)).join("")}Function`;
}
