/** Titles, keys and text alternatives of the drawings. A key fits one line of the sidebar. */
export const chartWords = {
  seasonTitle: (athlete: string) => `Season of ${athlete}, percent of baseline`,
  seasonKey: "Bar: the days that may hold the change",
  longerLower: (name: string) => `${name}: longer is lower`,
  setsTitle: "Speed of each set against the first",
  setsKey: "By set, against the first. Grey: usual range.",
  lineTitle: (exercise: string) => `Speed against load, ${exercise}`,
  lineKey: (unit: string) => `m/s by ${unit}. Large: last day. Grey: nine in ten.`,
  diaryTitle: (athlete: string) => `Sessions and diary of ${athlete}, own wobbles`,
  days: (what: string, count: number) => `${what}: ${count} ${count === 1 ? "day" : "days"}`,
  ladderTitle: (athlete: string) => `The weeks ahead for ${athlete}`,
  ladderStep: (week: string, block: string, load: string) => `${week}: ${block} at ${load}`,
  bar: (load: string, plates: string) => `${load}: ${plates}`,
} as const;
