import type { Workbook } from "./workbook";

/** The platform keeps 9 kB a value, and a letter may take three bytes. */
const partLength = 2500;
/** Another coach may be writing between two of our reads: the text is then whole a moment later. */
const readings = 3;

/** What came back of a text: nothing was remembered, the text, or a head or parts that do not fit. */
export type Recalled =
  | { readonly is: "nothing" }
  | { readonly is: "text"; readonly text: string }
  | { readonly is: "damaged" };

/**
 * Remembers a text of any length in parts. The head is written last and names its own parts, so that
 * an interruption leaves the old text or the new one, never a mixture.
 */
export function rememberLong(workbook: Workbook, key: string, text: string): void {
  const before = headOf(workbook.recall(key));
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

/** The remembered text. Damaged is said, never thrown and never taken for nothing. */
export function recallLong(workbook: Workbook, key: string): Recalled {
  for (let reading = 0; reading < readings; reading++) {
    const found = workbook.recall(key);
    if (found === null) return { is: "nothing" };
    const head = headOf(found);
    const text = head === null ? null : textOf(workbook, key, head);
    if (text !== null) return { is: "text", text };
  }
  return { is: "damaged" };
}

/** Forgets a text and its parts; of a damaged head, the parts that follow one another. */
export function forgetLong(workbook: Workbook, key: string): void {
  for (const turn of [1, 2]) {
    for (let part = 0; workbook.recall(`${key}.${turn}.${part}`) !== null; part++) {
      workbook.forget(`${key}.${turn}.${part}`);
    }
  }
  workbook.forget(key);
}

type Head = { readonly turn: number; readonly parts: number; readonly length: number | null };

function headOf(found: string | null): Head | null {
  // A head of an earlier version does not say the length.
  const head = /^([12]) (\d{1,5})(?: (\d+)|)$/.exec(found ?? "");
  if (!head) return null;
  const [, turn, parts, length] = head;
  return {
    turn: Number(turn),
    parts: Number(parts),
    length: length === undefined ? null : Number(length),
  };
}

/** The parts together; null when one is gone or their length is not the one the head says. */
function textOf(workbook: Workbook, key: string, { turn, parts, length }: Head): string | null {
  let text = "";
  for (let part = 0; part < parts; part++) {
    const found = workbook.recall(`${key}.${turn}.${part}`);
    if (found === null) return null;
    text += found;
  }
  return length === null || text.length === length ? text : null;
}
