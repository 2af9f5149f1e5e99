/** Labels and sentences of the local workbook's own page, outside grid and sidebar. */
export const localPage = {
  product: "Holdline",
  opening: "Opening…",
  openingNamed: (file: string) => `Opening ${file}…`,
  openingWorkbook: "Opening the workbook…",
  about:
    "Reads the rows you already keep and says who is holding the speed, power and strength of the season’s start, and what each athlete lifts next week.",
  chooseSample: "Open the sample squad",
  sampleAbout:
    "An invented club with half a season of rows. Change anything; your own files are not touched.",
  chooseOwn: "Open your own",
  ownAbout:
    "An .xlsx workbook, or the .csv files of one folder together. You can also drop them here.",
  stays: "Everything stays on this machine. No account, no network.",
  openDropped: (files: string) => `Open ${files} in place of this workbook?`,
  keptHere: (place: string) => `Everything here is saved to ${place}.`,
  lostHere:
    "What you changed here is not in a file yet and would be lost: press Save as .xlsx first to keep it.",
  openIt: "Open it",
  stayHere: "Stay here",
  manyFiles: (count: number) => `${count} files`,
  back: "Back to the workbook",
  undo: "Undo",
  redo: "Redo",
  undone: { none: "Nothing to undo", done: (tab: string) => `Undone in ${tab}` },
  redone: { none: "Nothing to redo", done: (tab: string) => `Redone in ${tab}` },
  openAnother: "Open…",
  saveCopy: "Save as .xlsx",
  closeSidebar: "Close the sidebar",
  sidebar: "Sidebar",
  calculating: "Calculating…",
  calculated: "Calculated",
  unchanged: "No changes yet",
  saving: "Saving…",
  savedTo: (place: string) => `Saved to ${place}`,
  notKept: "Not kept in a file yet",
  notSaved: (sentence: string) => `Not saved. ${sentence}`,
  notSavedYet: "The workbook that is open could not be saved first.",
  tryAgain: "Try again",
  close: "Close",
  notOpened: (sentence: string) => `Not opened. ${sentence}`,
  noAnswer: "The program in the terminal does not answer.",
  ended:
    "The program in the terminal has ended, so changes are no longer saved. Start it again and open the new address.",
  refusedAt: (cell: string, sentence: string) => `${cell}: ${sentence}`,
  hiddenCell: (cell: string) =>
    `${cell} is in a hidden row or column: read and change it in the line above the grid.`,
  protectedCell: (cell: string, reason: string) =>
    `${cell}: ${reason || "this cell is filled by Holdline"}. Undo takes your change back.`,
  menuFailed: (label: string, sentence: string) => `${label}: ${sentence}`,
  grid: "Workbook. F6 goes on to the toolbar and the sidebar",
} as const;
