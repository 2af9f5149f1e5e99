import type { FormulaHelp } from "../words/formula-help";
import type { SheetFunction } from "./sheet-function";

/** Help by the formula's name, and by the name of a parameter that many formulas share. */
export type HelpInWords = {
  readonly formulas: Readonly<Record<string, FormulaHelp>>;
  readonly parameters: Readonly<Record<string, string>>;
};

/**
 * The entries with the help a language has for them: a formula's own wording of a parameter comes
 * before the shared one, and what it lacks stays as the entry has it. Throws, naming it, for a formula
 * or parameter that is not there, so that a misspelt or outdated text cannot go unnoticed.
 */
export function helpInWords(
  entries: readonly SheetFunction[],
  { formulas, parameters: shared }: HelpInWords,
): readonly SheetFunction[] {
  const known = new Map(entries.map((entry) => [entry.name, names(entry)]));
  for (const [name, { parameters = {} }] of Object.entries(formulas)) {
    const own = known.get(name);
    if (!own) throw new Error(`There is help for the formula ${name}, which is not there.`);
    for (const parameter of Object.keys(parameters)) {
      if (!own.has(parameter)) throw new Error(`${name} has no parameter ${parameter}.`);
    }
  }
  for (const parameter of Object.keys(shared)) {
    if (![...known.values()].some((own) => own.has(parameter))) {
      throw new Error(`No formula has a parameter ${parameter}.`);
    }
  }
  return entries.map((entry) => {
    const { summary = entry.summary, parameters: own = {} } = formulas[entry.name] ?? {};
    return {
      ...entry,
      summary,
      parameters: entry.parameters.map((parameter) => ({
        ...parameter,
        help: own[parameter.name] ?? shared[parameter.name] ?? parameter.help,
      })),
    };
  });
}

const names = ({ parameters }: SheetFunction) => new Set(parameters.map(({ name }) => name));
