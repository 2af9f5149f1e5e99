/** Words for what was planned, not lifted, for a pattern of plain words. */
export const plannedWords = "plan|planned|targets?|goals?|prescribed|soll|ziel|geplant";
