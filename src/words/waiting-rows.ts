import { listWords } from "./pages";
import { countWords } from "./reasons-figures";

/** What waits, in a line of the week, and what to do about it. */
export type Waiting = { readonly brief: string; readonly toDo: string };

/** What waits for the coach's word before it counts for an athlete. */
export const waitingWords = {
  /** "127 rows under “Jo” may be Jo Renwick: say so under Rows" */
  name: (written: string, rows: number, athlete: string): Waiting => ({
    brief: `${countWords(rows, "row")} under “${written}” may be ${athlete}`,
    toDo: "say so under Rows",
  }),
  /** Its place alone, as this may be printed: "Injury report D5 does not count: read it before anything is lifted" */
  spell: (place: string): Waiting => ({
    brief: `${place} does not count`,
    toDo: "read it before anything is lifted",
  }),
  whole: ({ brief, toDo }: Waiting): string => `${brief}: ${toDo}`,
  /** Beside time off or a first week that the rows alone speak of. */
  unread: (rows: number): string =>
    `${countWords(rows, "row")} of this athlete ${rows === 1 ? "has" : "have"} cells that were not used: look under Rows first.`,
  /** "Nothing of “Race plan” counts yet: say under Set up what it is." */
  tab: (tab: string): string => `Nothing of “${tab}” counts yet: say under Set up what it is.`,
  /** "72 rows of Gym do not count until what is asked under Set up is answered." */
  unsettled: (rows: number, tabs: readonly string[]): string =>
    `${countWords(rows, "row")} of ${listWords(tabs)} ${rows === 1 ? "does" : "do"} not count until what is asked under Set up is answered.`,
} as const;
