import * as z from "zod/mini";
import { kept } from "../answers/kept";

const stored = z.record(z.string(), z.record(z.string(), z.array(z.string())));

/**
 * Texts that came from us, by line and column: what is there now and, while a writing is under way,
 * what was there before. A cell that holds anything else is the coach's.
 */
export type WrittenBefore = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/** What may stand in a cell from us; a line written before its column was there left it blank. */
export function earlierTexts(
  before: WrittenBefore,
  name: string,
  column: string,
): readonly string[] {
  const line = before[name];
  return line ? (line[column] ?? [""]) : [];
}

/**
 * What was written before; nothing after a copy of the workbook, where all cells count as the coach's,
 * as they do while it is damaged.
 */
export const writtenKept = kept<WrittenBefore>("next week", stored, {});
