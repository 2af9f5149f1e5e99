/**
 * What formulas that went wrong leave in their cells: the error values of ECMA-376 part 1, 18.17.3 (from
 * memory), those spreadsheets have added, and their German forms.
 */
const errors =
  /^#(null!|div\/0!|value!|ref!|name\?|num!|n\/a|error!|spill!|calc!|nv|bezug!|wert!|zahl!)$/i;

/** True for the error that a formula gave instead of a value. */
export const isErrorCell = (cell: unknown): boolean =>
  typeof cell === "string" && errors.test(cell);
