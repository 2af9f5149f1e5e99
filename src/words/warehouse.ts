/** Why rows of a warehouse whose athlete is blank have no answer. */
export const nobodyNamed = "These rows name no athlete: fill in whose they are.";

/** Words of a formula as a warehouse says them: its rows are checked by a function of its own. */
export function inWarehouse(words: string, checkedBy: string): string {
  return words.replace(/ROW_CHECK/g, checkedBy);
}
