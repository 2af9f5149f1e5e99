/** Said when the spreadsheet itself does not do or give what was asked of it. */
export const spreadsheetWords = {
  tabGone: "That tab is no longer there. Check again.",
  otherCoachWrites:
    "Another coach is writing just now. Nothing was changed; try again in a moment.",
  answeredInPart: "The spreadsheet answered only in part. Try again.",
  unknownZone: (zone: string) =>
    `The spreadsheet’s time zone, ${zone}, is not known here: choose the one of a city near you in the spreadsheet’s settings.`,
} as const;
