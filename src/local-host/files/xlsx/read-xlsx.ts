import { zipSync } from "fflate";
import { accept, type Outcome, refuse } from "../../../outcome";
import type { WorkbookData } from "../../workbook-data";
import { type FileNote, fileNote } from "../file-note";
import { asksTooMuch } from "./asks-too-much";
import { bookToData } from "./book-to-data";
import { type Book, newBook } from "./library";
import { setAside } from "./set-aside";
import { whatWouldBeLost } from "./what-would-be-lost";
import { partText, sheetPaths } from "./xml-text";
import { type Parts, zipParts } from "./zip-parts";

export type ReadXlsx = {
  readonly workbook: WorkbookData;
  readonly notes: readonly FileNote[];
  /** What a save back into this file would lose, in words. */
  readonly lost: readonly string[];
};

/**
 * An .xlsx file as plain data: formulas with their calculated values, formats, looks, conditional
 * formats by formula, lists of values, frozen panes, widths, notes, names.
 *
 * @returns refuses `not-xlsx` and what `zipParts` and `bookToData` refuse
 */
export async function readXlsx(name: string, bytes: Uint8Array): Promise<Outcome<ReadXlsx>> {
  const parts = zipParts(bytes);
  if (!parts.ok) return parts;
  const refused = asksTooMuch(parts.value);
  if (refused) return refused;
  const { aside, rest } = setAside(parts.value);
  const book = await bookOf(rest);
  if (!book) return refuse("not-xlsx");
  const workbook = bookToData(name, book, aside);
  if (!workbook.ok) return workbook;
  const lost = whatWouldBeLost(parts.value);
  const notes = lost.length > 0 ? [fileNote("cannot-save-back", { what: lost.join(", ") })] : [];
  return accept({ workbook: workbook.value, notes, lost });
}

/** The library's book of a file's parts; null when it cannot be read whole. */
export async function bookOf(parts: Parts): Promise<Book | null> {
  const paths = sheetPaths(parts);
  const readable = [...paths.values()].every((path) => {
    const text = partText(parts, path);
    // The library reads neither prefixed elements nor dates written as text.
    return /<(worksheet|chartsheet)\b/.test(text) && !/<c\b[^<>]*\st="d"/.test(text);
  });
  const whole = [...parts.keys()].every(
    (path) => !/\.xml$/.test(path) || isWhole(partText(parts, path)),
  );
  if (!readable || !whole || paths.size === 0) return null;
  try {
    const book = await newBook();
    // Unpacked already, within bounds: packed again without pressing, so that it cannot swell.
    const packed = zipSync(Object.fromEntries(parts), { level: 0 });
    await book.xlsx.load(
      packed.buffer.slice(packed.byteOffset, packed.byteOffset + packed.length) as ArrayBuffer,
    );
    return book.worksheets.length > 0 ? book : null;
  } catch {
    return null;
  }
}

/** A part that was cut short would be read as far as it goes, without a word. */
function isWhole(text: string): boolean {
  const root = /<([A-Za-z][\w:.-]*)/.exec(text)?.[1];
  const end = text.trimEnd();
  return root !== undefined && (end.endsWith(`</${root}>`) || end.endsWith("/>"));
}
