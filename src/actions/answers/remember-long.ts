import type { Workbook } from "../workbook";

/** The platform keeps 9 kB a value, and a letter may take three bytes. */
const partLength = 2500;
/** Another coach may be writing while all is read: the text is then whole a moment later. */
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
  const count = Math.ceil(text.length / partLength);
  const parts: Record<string, string> = {};
  for (let part = 0; part < count; part++) {
    parts[`${key}.${turn}.${part}`] = text.slice(part * partLength, (part + 1) * partLength);
  }
  workbook.remember(parts);
  workbook.remember({ [key]: `${turn} ${count} ${text.length}` });
  if (before) workbook.forget(partsOf(key, before));
}

/** The remembered text. Damaged is said, never thrown and never taken for nothing. */
export function recallLong(workbook: Workbook, key: string): Recalled {
  for (let reading = 0; reading < readings; reading++) {
    const all = workbook.recallAll();
    const found = all[key];
    if (!found) return { is: "nothing" };
    const head = headOf(found);
    const text = head === null ? null : textOf(all, key, head);
    if (text !== null) return { is: "text", text };
  }
  return { is: "damaged" };
}

/** Forgets a text with every part of it, also those that no head names any more. */
export function forgetLong(workbook: Workbook, key: string): void {
  const of = (one: string) => one === key || /^\.[12]\.\d+$/.test(one.slice(key.length));
  workbook.forget(
    Object.keys(workbook.recallAll()).filter((one) => one.startsWith(key) && of(one)),
  );
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

function partsOf(key: string, { turn, parts }: Head): string[] {
  return Array.from({ length: parts }, (_, part) => `${key}.${turn}.${part}`);
}

/** The parts together; null when one is gone or their length is not the one the head says. */
function textOf(all: Readonly<Record<string, string>>, key: string, head: Head): string | null {
  const { length } = head;
  let text = "";
  for (const part of partsOf(key, head)) {
    const found = all[part];
    if (!found) return null;
    text += found;
  }
  return length === null || text.length === length ? text : null;
}
