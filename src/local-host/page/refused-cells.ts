import { SheetsSelectionsService } from "@univerjs/sheets";
import { CellAlertManagerService, CellAlertType, HoverManagerService } from "@univerjs/sheets-ui";
import { localPage } from "../../words/local-page";
import { cellName } from "../a1";
import type { Host } from "../host";
import type { MessageStrip } from "./message-strip";

/** The library's own alert for a formula's error, which says less than the thrown sentence. */
const alertKey = "SHEET_FORMULA_ALERT";
/** What a cell shows that has a sentence: a formula of ours that threw, a formula in a circle. */
const refused: ReadonlySet<unknown> = new Set(["#ERROR!", "#REF!"]);
/** The library shows its alert first; ours replaces it. */
const afterLibraryMs = 160;

/** Shows a refused formula's sentence: in the strip for the selected cell, beside the cell on hover. */
export function refusedCells(host: Host, { put }: MessageStrip): void {
  const { book, injector } = host.engine;
  const sentenceAt = (tabId: string, row: number, column: number) => {
    const sheet = book.getSheetBySheetId(tabId);
    const shown = sheet?.getSheet().getCell(row, column)?.v;
    return refused.has(shown) ? host.sentenceAt(tabId, row, column) : undefined;
  };
  const selections = injector.get(SheetsSelectionsService);
  const showSelected = () => {
    const range = selections.getCurrentLastSelection()?.range;
    if (!range) return;
    // While another tab comes up this is still the cell of the one left, perhaps past the new one's end.
    const {
      sheetId = book.getActiveSheet().getSheetId(),
      startRow: row,
      startColumn: column,
    } = range;
    const sentence = sentenceAt(sheetId, row, column);
    const text = sentence && localPage.refusedAt(cellName(row, column), sentence);
    put("cell", text ? { text, error: true } : null);
  };
  // The library's own event is not given in the first seconds after opening.
  selections.selectionChanged$.subscribe(showSelected);
  host.engine.formula.calculationEnd(() => setTimeout(showSelected));

  const alerts = injector.get(CellAlertManagerService);
  let timer: ReturnType<typeof setTimeout> | undefined;
  injector.get(HoverManagerService).currentCell$.subscribe((cell) => {
    clearTimeout(timer);
    if (!cell) return;
    const { location } = cell;
    const message = sentenceAt(location.subUnitId, location.row, location.col);
    if (message === undefined) return;
    timer = setTimeout(() => {
      alerts.removeAlert(alertKey);
      alerts.showAlert({
        type: CellAlertType.ERROR,
        title: cellName(location.row, location.col),
        message,
        location,
        width: 280,
        height: 96,
        key: alertKey,
      });
    }, afterLibraryMs);
  });
}
