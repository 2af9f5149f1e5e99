/** What another language says of one formula; whatever is left out stays as the catalogue has it. */
export type FormulaHelp = {
  /** One sentence. */
  readonly summary?: string;
  /** By the parameter's name, which stays as it is in every language. */
  readonly parameters?: Readonly<Record<string, string>>;
};

/**
 * Help of the formulas in another language, by the formula's name. The British English stands in the
 * catalogue beside what each formula does, so nothing is repeated here. Read by the build only.
 */
export const formulaHelp: Readonly<Record<string, FormulaHelp>> = {};

/** Help of parameters that many formulas share, by name: said once for all of them. */
export const parameterHelp: Readonly<Record<string, string>> = {};

/** Said after the help of a parameter that need not be given. */
export const mayBeLeftOut = "May be left out.";
