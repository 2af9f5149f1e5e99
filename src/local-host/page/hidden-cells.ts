import { SheetsSelectionsService } from "@univerjs/sheets";
import { localPage } from "../../words/local-page";
import { cellName } from "../a1";
import type { Host } from "../host";
import type { MessageStrip } from "./message-strip";

/** Says where the selected cell is when its row or column is hidden: "Go to" would seem to do nothing. */
export function hiddenCells(host: Host, { put }: MessageStrip): void {
  const { book, injector } = host.engine;
  const selections = injector.get(SheetsSelectionsService);
  selections.selectionChanged$.subscribe(() => {
    const range = selections.getCurrentLastSelection()?.range;
    const tab = book.getSheetBySheetId(range?.sheetId ?? book.getActiveSheet().getSheetId());
    if (!range || !tab) return;
    const { startRow: row, startColumn: column, endRow, endColumn } = range;
    const one = row === endRow && column === endColumn;
    const grid = tab.getSheet();
    const hidden = !grid.getRowVisible(row) || !grid.getColVisible(column);
    put("hidden", one && hidden ? { text: localPage.hiddenCell(cellName(row, column)) } : null);
  });
}
