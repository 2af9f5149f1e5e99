/** Headings of the Races table, as coaches write them; the first of each is ours. */
export const racesColumns = {
  day: ["date", "day", "datum", "tag"],
  start: ["start time", "start", "time", "gun", "startzeit", "uhrzeit"],
  race: ["race", "event", "meeting", "competition", "rennen", "wettkampf", "name"],
  who: [
    "athlete or group or all",
    "athlete",
    "who",
    "athletes",
    "runner",
    "group",
    "athlete or group",
    "for",
    "wer",
    "who runs",
  ],
  distance: ["distance", "km", "m", "strecke", "distanz", "length"],
  surface: ["surface", "course", "untergrund", "on"],
  matters: ["matters", "matters a/b/c", "priority", "a/b/c", "class", "wichtigkeit", "importance"],
} as const;
