import type { Done } from "../../src/actions/messages";
import type { RequestName } from "../../src/actions/requests";
import type { Highlight } from "../../src/actions/workbook";
import type { Held, Message } from "../faults/writing-actions";
import type { HeldTab } from "./what-stands";

/** A cell as a coach types it; beside a formula what it comes to, for a host that calculates nothing. */
export type Typed = string | number | { readonly formula: string; readonly value: number };
/** Tabs of cells, and the coach's own highlights by tab. */
export type Club = {
  readonly tabs: Readonly<Record<string, readonly (readonly Typed[])[]>>;
  readonly marks: Readonly<Record<string, Highlight>>;
};

/** What a writing test needs of a workbook, whichever host holds it. */
export type HeldWorkbook = Omit<Held, "ask" | "type"> & {
  readonly ask: (name: RequestName, message: Message) => Done;
  readonly type: (tab: string, row: number, column: number, cell: Typed) => void;
  /** What stands in each cell, formulas as written; blank ends of rows and tab cut off. */
  readonly standing: (tab: string) => string[][];
  readonly tabs: () => HeldTab[];
  /** Texts that are remembered, by key. */
  readonly kept: () => Readonly<Record<string, string>>;
  /** Closes the workbook and opens it again; what was to be spoilt is spoilt then. */
  readonly reopen: () => Promise<void>;
  readonly close: () => void;
};
