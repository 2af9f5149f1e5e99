import type * as z from "zod/mini";
import { recallWords } from "../../words/remembered";
import type { KeptMatter } from "../messages";
import type { Workbook } from "../workbook";
import { forgetLong, recallLong, rememberLong } from "./remember-long";

/** One thing kept with the workbook, checked whenever it comes back. */
export type Kept<Value> = {
  /** For looking: what is kept, and whether it is damaged, which counts as nothing kept. */
  readonly read: (workbook: Workbook) => { readonly value: Value; readonly damaged: boolean };
  /**
   * For writing: what is kept. Throws a sentence when it is damaged, so that nothing is put over it
   * before the coach has said so.
   */
  readonly whole: (workbook: Workbook) => Value;
  readonly put: (workbook: Workbook, value: Value) => void;
  readonly forget: (workbook: Workbook) => void;
};

export function kept<Value extends object>(
  what: KeptMatter,
  schema: z.ZodMiniType<unknown>,
  /** What is kept where nothing was stored, or the part that was not. */
  nothing: Value,
): Kept<Value> {
  const read = (workbook: Workbook) => {
    const found = recallLong(workbook, what);
    if (found.is === "nothing") return { value: nothing, damaged: false };
    const value = found.is === "text" ? parsed(found.text) : null;
    return value === null ? { value: nothing, damaged: true } : { value, damaged: false };
  };
  const parsed = (text: string): Value | null => {
    try {
      // Absent fields are absent in what was stored: they were never undefined.
      return { ...nothing, ...(schema.parse(JSON.parse(text)) as Value) };
    } catch {
      return null;
    }
  };
  return {
    read,
    whole: (workbook) => {
      const { value, damaged } = read(workbook);
      if (damaged) throw new Error(recallWords.damaged[what]);
      return value;
    },
    put: (workbook, value) => rememberLong(workbook, what, JSON.stringify(value)),
    forget: (workbook) => forgetLong(workbook, what),
  };
}
