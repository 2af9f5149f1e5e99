/** Labels of the next week's view. */
export const weekViewWords = {
  weekOf: "Week of",
  athlete: "Athlete",
  day: "Day",
  setsReps: "Sets × reps",
  kg: "kg",
  readFirst: "Read first",
  theRest: "The rest",
  nothing: "nothing proposed",
  write: (rows: number) => `Write ${rows} ${rows === 1 ? "row" : "rows"}`,
  writeOne: (athlete: string) => `Write ${athlete} only`,
  noOther: "In the tab Next week. No other cell changes.",
  takeBack: "Take back",
  empty: "Nobody to propose for: name the athletes in an Athletes tab, or add rows to Sets.",
  why: "Why",
  change: "Change",
  leaveOut: "Leave out this week",
  takeIn: "Take in again",
  noRack: "No rack this week",
  rackAgain: "A rack after all",
  days: "Days",
  block: "Block",
  setsThisWeek: "Sets this week",
  load: "Load, kg",
  lighter: "One plate step lighter",
  heavier: "One plate step heavier",
  contacts: "Contacts",
  stack: "Stack",
  ifWritten: "If written so",
  onTheDay: "On the day",
  marker: (kg: number) => `marker ${kg} kg`,
  speed: "Speed, m/s",
  lift: "Lift",
  ahead: "The weeks ahead",
  aSide: (plates: string) => `${plates} a side`,
  session: (n: number) => `Session ${n}`,
  floor: (speed: number) =>
    `Speed floor ${speed.toFixed(2)} m/s: two repetitions under it end the set.`,
} as const;

/** What holds for the whole week's proposal. */
export const weekNoteWords = {
  noPlates:
    "No Plates table: loads are built from pairs of 25, 20, 15, 10, 5, 2.5 and 1.25 kg. Write down what the gym owns.",
  noRacks: "The rule says no racks: the main lift gives way to its alternative.",
} as const;
