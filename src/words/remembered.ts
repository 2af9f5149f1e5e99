/** Said of what is kept with the workbook and can no longer be read, and once it was forgotten. */
export const recallWords = {
  damaged: {
    answers:
      "What you said of tabs, columns and names can no longer be read. Rows are read without it, and nothing is put in its place. To say it afresh, press “Forget it”.",
    "next week":
      "What Holdline has written into the Next week tab can no longer be told from your own cells. Nothing was written. To go on, press “Forget it”: all that stands in the tab then counts as yours.",
    "week changes":
      "Your earlier changes to proposed weeks can no longer be read. Weeks are proposed without them, and nothing was written. To go on without them, press “Forget it”.",
    season:
      "What Holdline has written into the Season tab can no longer be told from your own cells. Nothing was written. To go on, press “Forget it”: all that stands in the tab then counts as yours.",
  },
  forget: "Forget it",
  forgotten: {
    answers: "Forgotten. Open Set up to answer what is asked.",
    "next week": "Forgotten. All that stands in the Next week tab counts as yours.",
    "week changes": "Forgotten. Weeks are proposed without your earlier changes.",
    season: "Forgotten. All that stands in the Season tab counts as yours.",
  },
  readable: "It can be read again: nothing was forgotten.",
} as const;
