import type {
  RowCheckView,
  SetUpView,
  SquadLine,
  SquadView,
  WeekLine,
  WeekView,
} from "../../src/actions/messages";

/** Answers of the script for athletes of the invented club; the words are what is shown. */
const line = (part: Partial<SquadLine>): SquadLine => ({
  athlete: "Tomas Reyerson",
  group: "5000 m",
  event: "5000 m",
  mayDo: "full",
  word: "slipping",
  dress: "low",
  since: "since 12 May",
  why: "bar speed −8.1 %, wobble ±2.3 %",
  today: "25 Jun: below usual",
  todayWhy: "",
  todayDress: "low",
  rowsNotUsed: 2,
  ...part,
});

export const squad: SquadView = {
  damaged: [],
  asOf: "2026-06-28",
  asOfWords: "Rows up to 28 Jun",
  summary: "1 slipped, 1 not sure.",
  lines: [
    line({}),
    line({ athlete: "Priya Tellander", word: "too few rows", dress: "unsure", rowsNotUsed: 0 }),
    line({ athlete: "<b>Kofi</b>", word: "rising", dress: "high" }),
  ],
  toCheck: 7,
  cautions: ["Lift inside a rack with safeties."],
};

const weekLine: WeekLine = {
  athlete: "Tomas Reyerson",
  group: "5000 m",
  event: "5000 m",
  odd: true,
  word: "slipping",
  dress: "low",
  brief: "Load held.",
  why: ["Slipping: load held.", "Race on Saturday: sets about half."],
  exercise: "back squat",
  sessions: [
    {
      lift: "",
      turn: "",
      day: "2026-06-30",
      dayWords: "Tue 30 Jun",
      block: "5×5",
      sets: 2,
      reps: 5,
      loadKg: 85,
      plates: [20, 10, 2.5],
      platesWords: "20+10+2.5 a side",
      barKg: 20,
      markerKg: 67.5,
      speedFloor: 0.46,
      stack: "5x15+10",
      contacts: 40,
      bands: [{ speed: "0.81 or faster", again: "", lift: "85", change: "as planned" }],
      instead: "",
      ifWritten: ["4 repetitions in reserve"],
    },
  ],
  leftOut: false,
  byHand: false,
  noRack: false,
  deleted: 0,
  daysSaid: ["Best: Tue 30 Jun.", "Thu 2 Jul refused: 41 h before R4, an A race (rule: 72 h)."],
  ahead: [
    {
      lift: "back squat",
      steps: [
        { week: "this step", block: "5×5", loadKg: 85 },
        { week: "step 2", block: "3×5", loadKg: 87.5 },
      ],
    },
  ],
  blocks: ["5×5", "3×5", "5×3", "3×3"],
  days: [{ day: "2026-06-30", label: "Tue 30 Jun", why: "" }],
};

export const week: WeekView = {
  numbers: { unit: "kg", mark: "." },
  damaged: [],
  monday: "2026-06-29",
  mondays: [{ monday: "2026-06-29", label: "29 Jun" }],
  notes: ["R4, A race, Sat 4 Jul 11:00."],
  lines: [
    weekLine,
    { ...weekLine, athlete: "Priya Tellander", odd: false, sessions: [], brief: "Not cleared." },
  ],
  rowsToWrite: 1,
  deleted: 0,
  already: "",
  isWritten: false,
  stepKg: 2.5,
  canTakeBack: true,
  toCheck: 4,
  cautions: ["Lift inside a rack with safeties."],
};

export const rows: RowCheckView = {
  mark: ".",
  damaged: [],
  summary: "1204 of 1211 rows read",
  noRows: false,
  problems: [
    {
      tab: "Sets",
      tabId: 3,
      cell: "H412",
      found: "62",
      why: "No bar moves at 62 m/s.",
      toDo: "Write 0.62 if centimetres were meant.",
      kind: "implausible",
      mend: "0.62",
      right: null,
    },
    {
      tab: "Sets",
      tabId: 3,
      cell: "B9",
      found: "31/6",
      why: "The row has no day.",
      toDo: "Write the date.",
      kind: "not-a-day",
      mend: null,
      right: null,
    },
  ],
  leftAlone: ["Shopping"],
  waiting: "To answer under Set up: In Sets, what is “Feel”?",
  athletes: ["Priya Tellander", "Tomas Reyerson"],
  names: [
    {
      name: "T. Reyerson",
      tab: "Sets",
      tabId: 3,
      cell: "C12",
      rows: 4,
      near: ["Tomas Reyerson"],
      toDo: "Is this Tomas Reyerson? Say so under Rows in the sidebar, or correct the name in its cells.",
    },
  ],
};

export const setUp: SetUpView = {
  mark: ".",
  damaged: [],
  tabs: [
    {
      tabId: 3,
      tab: "Sets",
      table: "Sets",
      found: "sure",
      rows: 1204,
    },
    { tabId: 9, tab: "Kit list", table: null, found: "said", rows: 0 },
  ],
  tables: ["Athletes", "Sets"],
  missing: ["Runs"],
  questions: [
    {
      tabId: 3,
      tab: "Sets",
      column: 6,
      heading: "v",
      about: "meaning",
      samples: ["0.62", "0.60", "0.57"],
      guess: "speed",
      choices: [
        { answer: "speed", words: "rep speeds" },
        { answer: "load", words: "load" },
      ],
    },
  ],
  answered: [
    {
      tabId: 3,
      tab: "Sets",
      about: "unit",
      heading: "Wt",
      column: 7,
      tag: "c1",
      said: "lb",
      choices: ["kg", "lb"].map((answer) => ({ answer, words: answer })),
    },
    {
      tabId: 4,
      tab: "Winter",
      about: "exercise",
      written: "",
      said: "back squat",
      choices: [],
    },
  ],
  rightSets: [],
  rules: { velocityLossCap: 0.1, racks: 3 },
  names: [{ spelling: "T. Reyerson", athlete: "Tomas Reyerson", same: true }],
};
