/** Said in the local workbook's cells where a formula cannot be answered. */
export const localFormulas = {
  /** Said in the cell of a formula that stands in a range it is given. */
  ownCell:
    "The formula stands in a range that it is given, so it would read its own result. Move it, or give a range without its cell.",
  /** Said in a cell of several whose formulas rest on one another. */
  circle:
    "This formula rests on its own result, through the cells it names. Change one of them to a figure or another cell.",
  /** Said in the cell of a formula that is handed one of the grid's that change by themselves. */
  volatile: (name: string) =>
    `${name}() changes by itself, and the online sheet never finishes loading a formula that is handed it. Type the day into a cell and give that cell.`,
  notCalculated: "The calculation did not finish in two minutes.",
} as const;
