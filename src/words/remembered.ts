/** Said when what the add-on keeps with the workbook could not be read. */
export const recallWords = {
  inPart:
    "What Holdline remembers with this workbook could not be read whole. Nothing was changed; try again in a moment.",
};
