/**
 * The functions the spreadsheet must see declared at the top of the script: one documented wrapper
 * for each custom function, one plain wrapper for each function the menu or the sidebar calls. They
 * are written as text after the bundle, where no bundler can strip their comments.
 */
export function declarations(catalogue, serverFunctions, mayBeLeftOut) {
  return [
    ...catalogue.map((entry) => customFunction(entry, mayBeLeftOut)),
    ...serverFunctions.map(serverFunction),
  ].join("\n");
}

function customFunction({ name, summary, parameters, examples }, mayBeLeftOut) {
  const names = parameters.map((parameter) => parameter.name);
  const lines = [
    summary,
    ...parameters.map(
      ({ name: parameter, help, optional }) =>
        `@param ${parameter} ${help}${optional ? ` ${mayBeLeftOut}` : ""}`,
    ),
    ...examples.slice(0, 1).map(({ formula }) => `@example ${formula}`),
    "@customfunction",
  ];
  return `/**\n${lines.map((line) => ` * ${safe(line)}\n`).join("")} */\nfunction ${name}(${names}){return core.compute("${name}",arguments)}`;
}

function serverFunction({ name, summary }) {
  return `/** ${safe(summary)} */\nfunction ${name}(m){return core.serve("${name}",m)}`;
}

/** A comment's end inside the help would end the comment. */
function safe(text) {
  return text.replace(/\*\//g, "* /").replace(/\s*\n\s*/g, " ");
}
