import type { WorkbookData } from "../workbook-data";

/** A workbook ready for the grid, where it is kept, and what the coach should know of its opening. */
export type OpenedWorkbook = {
  /** Which opening this is: two windows on one file have one each, and neither writes over the other. */
  readonly opening: number;
  readonly workbook: WorkbookData;
  /** Shown beside the name; null when it is not kept anywhere yet. */
  readonly place: string | null;
  readonly notes: readonly string[];
};

/** One file picked or dropped on the page. */
export type GivenFile = { readonly name: string; readonly bytes: Uint8Array };

/**
 * Where the served workbook comes from and goes to. Every function may reject with an `Error` whose
 * message is a sentence for the coach.
 */
export type WorkbookStore = {
  /** The workbook opened last, at first the one the program was started with; null shows the first screen. */
  readonly opened: () => Promise<OpenedWorkbook | null>;
  /** A fresh copy of the sample squad. */
  readonly sample: () => Promise<OpenedWorkbook>;
  /** A workbook from files given in the page. */
  readonly imported: (files: readonly GivenFile[]) => Promise<OpenedWorkbook>;
  /** Writes to where the workbook of an opening is kept, if nobody else wrote there since. */
  readonly save: (opening: number, workbook: WorkbookData) => Promise<void>;
  /** The workbook of an opening as the bytes of an .xlsx file. */
  readonly exported: (opening: number, workbook: WorkbookData) => Promise<Uint8Array>;
};
