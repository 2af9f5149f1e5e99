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
  workbook.remember(key, `${turn} ${parts}`);
  for (let part = 0; part < (before?.parts ?? 0); part++) {
    workbook.forget(`${key}.${before?.turn}.${part}`);
  }
}

/** The remembered text; null when there is none, or when a part of it is gone. */
export function recallLong(workbook: Workbook, key: string): string | null {
  const head = headOf(workbook, key);
  if (head === null) return null;
  let text = "";
  for (let part = 0; part < head.parts; part++) {
    const piece = workbook.recall(`${key}.${head.turn}.${part}`);
    if (piece === null) return null;
    text += piece;
  }
  return text;
}

function headOf(workbook: Workbook, key: string): { turn: number; parts: number } | null {
  const head = /^([12]) (\d+)$/.exec(workbook.recall(key) ?? "");
  return head ? { turn: Number(head[1]), parts: Number(head[2]) } : null;
}
