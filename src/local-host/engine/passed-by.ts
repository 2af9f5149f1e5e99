import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

type FormulasOfTab = Record<number, Record<number, object>>;

/** What the library keeps to itself here: formulas of a tab that copied ones are told from. */
type Inside = {
  _getSheetFormulaIdMap: (workbookId: string, tabId: string) => Record<string, unknown>;
};

/**
 * With every edit the grid library looks through all cells of all tabs for formulas, several times
 * over; half a million cells take it a quarter of a second. A tab without a formula is passed by.
 *
 * @param isPlain whether no cell of a tab holds a formula
 */
export function passPlainTabsBy(injector: Injector, isPlain: (tabId: string) => boolean): void {
  const model = injector.get(FormulaDataModel);
  const workbooks = injector.get(IUniverInstanceService);
  model.getFormulaData = () => {
    const formulas: Record<string, Record<string, FormulasOfTab>> = {};
    for (const book of workbooks.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)) {
      const id = book.getUnitId();
      const ofBook: Record<string, FormulasOfTab> = {};
      for (const tab of book.getSheets()) {
        const tabId = tab.getSheetId();
        ofBook[tabId] = isPlain(tabId)
          ? {}
          : (model.getSheetFormulaData(id, tabId) as FormulasOfTab);
      }
      formulas[id] = ofBook;
    }
    return formulas as ReturnType<FormulaDataModel["getFormulaData"]>;
  };
  const inside = model as unknown as Inside;
  const formulaIds = inside._getSheetFormulaIdMap.bind(model);
  inside._getSheetFormulaIdMap = (workbookId, tabId) =>
    isPlain(tabId) ? {} : formulaIds(workbookId, tabId);
}
