import { WrapStrategy } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { AutoHeightController } from "@univerjs/sheets-ui";
import type { Host } from "../host";

/** Rows measured after one change: more would keep the page from answering. */
const mostRows = 1000;

type Written = {
  readonly subUnitId?: string;
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, unknown>> | null>>;
};

/**
 * Keeps every row of wrapped cells as high as its text. The grid library measures what is typed, but
 * neither a formula's answer nor a large writing. Rows whose height was set by hand stay.
 */
export function rowsThatFit({ engine }: Host): void {
  const { api, book, injector } = engine;
  const waiting = new Map<string, Set<number>>();
  const wraps = (tabId: string, row: number, column: number) => {
    const sheet = book.getSheetBySheetId(tabId)?.getSheet();
    return sheet?.getComposedCellStyle(row, column).tb === WrapStrategy.WRAP;
  };
  const measure = () => {
    for (const [tabId, rows] of waiting) {
      waiting.delete(tabId);
      const ranges = [...rows].slice(0, mostRows).map((row) => ({
        startRow: row,
        endRow: row,
        startColumn: 0,
        endColumn: 0,
      }));
      const { redos } = injector
        .get(AutoHeightController)
        .getUndoRedoParamsOfAutoHeight(ranges, tabId);
      // Only shown so: measured heights are no change of the coach's, and nothing to undo.
      for (const { id, params } of redos) api.syncExecuteCommand(id, params, { onlyLocal: true });
    }
  };
  api.addEvent(api.Event.CommandExecuted, ({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { subUnitId: tabId, cellValue } = params as Written;
    if (tabId === undefined || cellValue === undefined) return;
    const rows = Object.entries(cellValue).flatMap(([row, cells]) =>
      Object.keys(cells ?? {}).some((column) => wraps(tabId, Number(row), Number(column)))
        ? [Number(row)]
        : [],
    );
    if (rows.length === 0) return;
    if (waiting.size === 0) setTimeout(measure);
    waiting.set(tabId, new Set([...(waiting.get(tabId) ?? []), ...rows]));
  });
}
