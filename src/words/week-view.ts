/** Labels of the next week's view. */
export const weekViewWords = {
  weekOf: "Week of",
  athlete: "Athlete",
  day: "Day",
  setsReps: "Sets × reps",
  readFirst: "Read first",
  theRest: "The rest",
  nothing: "nothing proposed",
  write: (rows: number) => `Write ${rows} ${rows === 1 ? "row" : "rows"}`,
  writeOne: (athlete: string) => `Write ${athlete} only`,
  writeDeleted: (rows: number) => `Write ${rows} deleted ${rows === 1 ? "row" : "rows"} again`,
  noOther: "In the tab Next week. No other cell changes.",
  takeBack: "Take back",
  empty: "Nobody to propose for: name the athletes in an Athletes tab, or add rows to Sets.",
  /** "5×5 at 80 kg, Tue 30 Jun and Thu 2 Jul."; each by itself where a step is taken between them. */
  planned: (sessions: readonly { readonly day: string; readonly what: string }[]) => {
    const [first] = sessions;
    return sessions.every(({ what }) => what === first?.what)
      ? `${first?.what}, ${sessions.map(({ day }) => day).join(" and ")}.`
      : `${sessions.map(({ day, what }) => `${day}: ${what}`).join("; ")}.`;
  },
  why: "Why",
  change: "Change",
  leaveOut: "Leave out this week",
  takeIn: "Take in again",
  noRack: "No rack this week",
  rackAgain: "A rack after all",
  days: "Days",
  block: "Block",
  setsASession: "Sets a session",
  sessionsThisWeek: "Sessions this week",
  load: (unit: string) => `Load, ${unit}`,
  lighter: "One plate step lighter",
  heavier: "One plate step heavier",
  contacts: "Contacts",
  stack: "Stack",
  ifWritten: "If written so",
  onTheDay: "On the day",
  marker: (load: string) => `marker ${load}`,
  firstSet: "first planned set",
  speed: "Speed, m/s",
  lift: "Lift",
  ahead: "The weeks ahead",
  aSide: (plates: string) => `${plates} a side`,
  session: (n: number) => `Session ${n}`,
  floor: (speed: string) => `Speed floor ${speed} m/s: two repetitions under it end the set.`,
} as const;
