/** A custom function as the bundle's own comments describe it. */
export type DeclaredFunction = {
  readonly name: string;
  readonly summary: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly help: string;
    readonly optional: boolean;
  }[];
};

const declaration =
  /\/\*\*((?:(?!\*\/)[\s\S])*?@customfunction(?:(?!\*\/)[\s\S])*?)\*\/\s*function\s+([A-Za-z_]\w*)\s*\(([^)]*)\)/g;

/**
 * Reads the documented declarations of a script, as the online editor does: only what stands in the
 * comment is known, so a bundle that lost its help shows none here either.
 */
export function declaredFunctions(script: string): DeclaredFunction[] {
  return [...script.matchAll(declaration)].map(([, comment = "", name = "", names = ""]) => {
    const lines = comment
      .split("\n")
      .map((line) => line.replace(/^\s*\*\s?/, "").trim())
      .filter((line) => line !== "");
    const help = new Map(
      lines.flatMap((line) => {
        const parameter = /^@param\s+(\w+)\s+(.*)$/.exec(line);
        return parameter ? [[parameter[1]!, parameter[2]!] as const] : [];
      }),
    );
    return {
      name: name.toUpperCase(),
      summary: lines.filter((line) => !line.startsWith("@")).join(" "),
      parameters: names
        .split(",")
        .map((parameter) => parameter.trim())
        .filter((parameter) => parameter !== "")
        .map((parameter) => {
          const text = help.get(parameter) ?? "";
          return { name: parameter, help: text, optional: / May be left out\.$/.test(text) };
        }),
    };
  });
}
