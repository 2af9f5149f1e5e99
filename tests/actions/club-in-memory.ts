import type { Done } from "../../src/actions/messages";
import { heldInMemory } from "../faults/held-in-memory";
import type { Club, HeldWorkbook, Typed } from "./held-workbook";
import { memoryWorkbook } from "./memory-workbook";
import { sampleClub } from "./sample-club";
import { cellTexts } from "./what-stands";

/** The platform reads a typed day, time or number as one, and text as text behind an apostrophe. */
function read(cell: Typed): unknown {
  if (typeof cell === "object") return cell.value;
  if (/^-?\d+(\.\d+)?$/.test(String(cell))) return Number(cell);
  if (String(cell).startsWith("'")) return String(cell).slice(1);
  const day = /^(\d{4})-(\d\d)-(\d\d)$/.exec(String(cell))?.slice(1).map(Number);
  if (day) return new Date(day[0]!, day[1]! - 1, day[2]);
  const time = /^(\d\d):(\d\d)$/.exec(String(cell))?.slice(1).map(Number);
  return time ? new Date(1899, 11, 30, time[0], time[1]) : cell;
}

/** A club in memory; without one, the sample. */
export async function clubInMemory(club?: Club): Promise<HeldWorkbook> {
  const book = club ? memoryWorkbook({}) : sampleClub();
  const held = heldInMemory(book);
  const type = (tab: string, row: number, column: number, cell: Typed) =>
    book.type(tab, row, column, read(cell), typeof cell === "object" ? cell.formula : "");
  const tabs = () =>
    book.tabs().map(({ id, name }) => ({
      name,
      id,
      values: book.values(id),
      formulas: book.formulas(id),
      highlights: book.marks(name),
    }));
  for (const [name, rows] of Object.entries(club?.tabs ?? {})) {
    book.insertTab(name, book.tabs().length);
    for (const [i, row] of rows.entries()) {
      for (const [j, cell] of row.entries()) type(name, i + 1, j + 1, cell);
    }
  }
  for (const [name, mark] of Object.entries(club?.marks ?? {})) book.coachMark(name, mark);
  return {
    ...held,
    ask: (name, message) => held.ask(name, message) as Done,
    standing: (tab) => cellTexts(tabs().find(({ name }) => name === tab)!),
    tabs,
    kept: book.recallAll,
    type,
    reopen: async () => {},
    close: () => {},
  };
}
