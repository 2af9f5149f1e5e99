import { createContext, runInContext } from "node:vm";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { followRules } from "./engine/follow-rules";
import { type Evaluated, evaluated } from "./evaluated";
import { createHost, type Host, type HostGiven } from "./host";

/** The local workbook without a page, for the terminal and for tests. */
export type OpenHost = Host & {
  /** Calculates one formula against the workbook, in a tab of its own that goes away again. */
  readonly evaluate: (formula: string) => Promise<Evaluated>;
};

/**
 * Opens a workbook with the add-on's script beside it, in a realm of the script's own: formulas
 * calculated, menu made.
 *
 * @throws Error when a first calculation does not end within two minutes
 */
export async function openHost(
  given: Pick<HostGiven, "workbook" | "bundleSource" | "files" | "hooks">,
): Promise<OpenHost> {
  const host = createHost({
    ...given,
    locales: {},
    plugins: [
      [UniverFormulaEnginePlugin, {}],
      [UniverSheetsPlugin, {}],
      [UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED }],
      [UniverSheetsNumfmtPlugin, {}],
      [UniverDataValidationPlugin, {}],
      [UniverSheetsDataValidationPlugin, {}],
      [UniverSheetsConditionalFormattingPlugin, {}],
      [UniverSheetsNotePlugin, {}],
    ],
    realm: (globals, source) => {
      const context = createContext({ ...globals });
      runInContext(source, context, { filename: "code.js" });
      return context;
    },
  });
  followRules(host.engine);
  try {
    host.open();
    await host.settled();
  } catch (error) {
    host.dispose();
    throw error;
  }
  return { ...host, evaluate: (formula) => evaluated(host, formula) };
}
