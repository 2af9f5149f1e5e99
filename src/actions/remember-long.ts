import { recallWords } from "../words/remembered";
import type { Workbook } from "./workbook";

/** The platform keeps 9 kB a value, and a letter may take three bytes. */
const partLength = 2500;

/**
 * Remembers a text of any length in parts. The head is written last and names its own parts, so that
 * an interruption leaves the old text or the new one, never a mixture.
 */
export function rememberLong(workbook: Workbook, key: string, text: string): void {
  const before = headOf(workbook, key);
  const turn = before?.turn === 1 ? 2 : 1;
  const parts = Math.ceil(text.length / partLength);
  for (let part = 0; part < parts; part++) {
    workbook.remember(
      `${key}.${turn}.${part}`,
      text.slice(part * partLength, (part + 1) * partLength),
    );
  }
  workbook.remember(key, `${turn} ${parts} ${text.length}`);
  for (let part = 0; part < (before?.parts ?? 0); part++) {
    workbook.forget(`${key}.${before?.turn}.${part}`);
  }
}

/**
 * The remembered text; null when there is none. Throws a sentence when it came in part: taken for
 * nothing, it would be written over, and what the coach answered would be lost.
 */
export function recallLong(workbook: Workbook, key: string): string | null {
  const head = headOf(workbook, key);
  if (head === null) return null;
  let text = "";
  for (let part = 0; part < head.parts; part++) {
    text += workbook.recall(`${key}.${head.turn}.${part}`) ?? "";
  }
  if (head.length !== null && text.length !== head.length) throw new Error(recallWords.inPart);
  return text;
}

type Head = { readonly turn: number; readonly parts: number; readonly length: number | null };

function headOf(workbook: Workbook, key: string): Head | null {
  const found = workbook.recall(key);
  if (found === null) return null;
  // A head of an earlier version does not say the length.
  const head = /^([12]) (\d+)(?: (\d+)|)$/.exec(found);
  if (!head) throw new Error(recallWords.inPart);
  const [, turn, parts, length] = head;
  return {
    turn: Number(turn),
    parts: Number(parts),
    length: length === undefined ? null : Number(length),
  };
}
