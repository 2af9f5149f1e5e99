import type { FormulaHelp } from "../../../src/words/formula-help";

/** Help of one formula and of a shared parameter in no language at all. */
export const formulaHelp: Readonly<Record<string, FormulaHelp>> = {
  ROW_CHECK: { summary: "Umber tal venna.", parameters: { table: "Vik tal." } },
};

export const parameterHelp: Readonly<Record<string, string>> = { athletes: "Nael sorr." };

export const mayBeLeftOut = "Nem dur.";
