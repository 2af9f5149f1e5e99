/** Tabs that the add-on writes; they are never read as a coach's table. */
export const ownTabNames = {
  squad: "Squad",
  nextWeek: "Next week",
  season: "Season",
} as const;
