import type { CellStyle } from "../workbook-data";

/** Headings above a formula of ours, when a tab is dressed that was read from CSV. */
export const dressedHeading: CellStyle = { bold: true, background: "#ededf1", wrap: true };
