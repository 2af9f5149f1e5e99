/** What the way between sidebar and script says when it does not carry. */
export const bridgeWords = {
  notConnected: "The sidebar is not connected to the spreadsheet. Close and open it again.",
  otherVersion:
    "The sidebar and the script are of different versions. Close the sidebar and open it again.",
  noAnswer:
    "The spreadsheet did not answer. If several accounts are signed in, use a window with one.",
  notAsked: (name: string) => `The sidebar may not ask for ${name}.`,
} as const;
