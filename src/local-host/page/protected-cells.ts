import { localPage } from "../../words/local-page";
import { cellName } from "../a1";
import type { Host } from "../host";
import type { MessageStrip } from "./message-strip";

/** Typing into a cell that a script asked to be left alone is let through and said, as online. */
export function protectedCells(host: Host, { passing }: MessageStrip): void {
  const { api } = host.engine;
  api.addEvent(api.Event.SheetEditEnded, ({ worksheet, row, column, isConfirm }) => {
    if (!isConfirm) return;
    const reason = host.tab(worksheet.getSheetName()).inside.protectedAt(row, column);
    if (reason !== null)
      passing("protected", localPage.protectedCell(cellName(row, column), reason));
  });
}
