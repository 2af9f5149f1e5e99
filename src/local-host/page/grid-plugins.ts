import { mergeLocales } from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import designWords from "@univerjs/design/locale/en-US";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import docsWords from "@univerjs/docs-ui/locale/en-US";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import sheetsWords from "@univerjs/sheets/locale/en-US";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsConditionalFormattingUIPlugin } from "@univerjs/sheets-conditional-formatting-ui";
import conditionalWords from "@univerjs/sheets-conditional-formatting-ui/locale/en-US";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import validationWords from "@univerjs/sheets-data-validation-ui/locale/en-US";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import formulaListWords from "@univerjs/sheets-formula/locale/en-US";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import formulaWords from "@univerjs/sheets-formula-ui/locale/en-US";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsNoteUIPlugin } from "@univerjs/sheets-note-ui";
import noteWords from "@univerjs/sheets-note-ui/locale/en-US";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import numberWords from "@univerjs/sheets-numfmt-ui/locale/en-US";
import { UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import sheetsPageWords from "@univerjs/sheets-ui/locale/en-US";
import { UniverUIPlugin } from "@univerjs/ui";
import pageWords from "@univerjs/ui/locale/en-US";
import "@univerjs/ui/facade";
import "@univerjs/docs-ui/facade";
import "@univerjs/sheets-ui/facade";
import { localPage } from "../../words/local-page";
import type { GridPlugin } from "../engine/grid-engine";

/** The grid with what a coach needs of it: cells, formulas, formats, highlights, lists, notes, tabs. */
export function gridPlugins(container: HTMLElement): readonly GridPlugin[] {
  return [
    [UniverDocsPlugin, {}],
    [UniverRenderEnginePlugin, {}],
    [UniverUIPlugin, { container, header: true, toolbar: false, headerMenu: false, footer: true }],
    [UniverDocsUIPlugin, {}],
    [UniverFormulaEnginePlugin, {}],
    [UniverSheetsPlugin, {}],
    // The browser zooms the whole page, sidebar included; a second zoom beside the tabs only takes room.
    [
      UniverSheetsUIPlugin,
      { footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: false } },
    ],
    [UniverSheetsNumfmtPlugin, {}],
    [UniverSheetsNumfmtUIPlugin, {}],
    [UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED }],
    [UniverSheetsFormulaUIPlugin, {}],
    [UniverDataValidationPlugin, {}],
    [UniverSheetsDataValidationPlugin, {}],
    [
      UniverSheetsDataValidationUIPlugin,
      { showEditOnDropdown: false, showSearchOnDropdown: false },
    ],
    [UniverSheetsConditionalFormattingPlugin, {}],
    [UniverSheetsConditionalFormattingUIPlugin, {}],
    [UniverSheetsNotePlugin, {}],
    [UniverSheetsNoteUIPlugin, {}],
  ];
}

export const gridWords = mergeLocales(
  designWords,
  docsWords,
  pageWords,
  sheetsWords,
  sheetsPageWords,
  formulaListWords,
  formulaWords,
  numberWords,
  validationWords,
  conditionalWords,
  noteWords,
  // The library ships these without English.
  {
    "sheets-formula": {
      progress: {
        analyzing: localPage.calculating,
        calculating: localPage.calculating,
        "array-analysis": localPage.calculating,
        "array-calculation": localPage.calculating,
        done: localPage.calculated,
      },
    },
  },
);
