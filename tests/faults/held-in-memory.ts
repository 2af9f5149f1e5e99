import { serveRequest } from "../../src/actions/requests";
import type { MemoryWorkbook } from "../actions/memory-workbook";
import type { Held } from "./writing-actions";

/** A workbook in memory as the scenarios hold one. */
export const heldInMemory = (book: MemoryWorkbook): Held => ({
  ask: (name, message) => serveRequest(book, name, message),
  type: book.type,
  tabId: (name) => book.tabNamed(name).id,
  damage: (key) => book.remember({ [key]: "3 parts" }),
});
