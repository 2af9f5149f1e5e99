/** Headings of the Runs table, as coaches write them; the first of each is ours. */
export const runsColumns = {
  day: ["date", "day", "datum", "tag"],
  minute: ["time", "start", "start time", "uhrzeit", "time of day"],
  athlete: ["athlete", "name", "runner", "athlete name", "wer", "who", "athlet"],
  kind: ["kind", "type", "run", "session", "run type", "art", "what", "workout"],
  minutes: ["minutes", "min", "duration", "mins", "time run", "dauer", "minuten", "length"],
  exertion: [
    "exertion",
    "exertion 0-10",
    "exertion 0–10",
    "rpe",
    "effort",
    "srpe",
    "anstrengung",
    "session rpe",
  ],
  km: ["km", "distance", "kilometres", "kilometers", "mi", "miles", "strecke", "distanz"],
} as const;
