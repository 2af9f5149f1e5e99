/** One runner of the invented Quillbeck Running Club. */
export type Member = {
  readonly athlete: string;
  readonly group: "track" | "road" | "marathon";
  readonly event: string;
  readonly experience: "novice" | "trained";
  readonly birthYear: number;
  readonly supervisor: string;
  readonly sessionsAWeek: 1 | 2;
  readonly notes: string;
  /** Best back squat at the season's start, kg. */
  readonly bestKg: number;
  readonly boxJumpCm: number;
  readonly contactMs: number;
  /** Chance of its own, so that a change for one runner leaves the others' rows alone. */
  readonly seed: number;
};

type Line = readonly [
  athlete: string,
  group: Member["group"],
  event: string,
  experience: Member["experience"],
  birthYear: number,
  supervisor: string,
  sessionsAWeek: 1 | 2,
  bestKg: number,
  boxJumpCm: number,
  contactMs: number,
  seed: number,
  notes: string,
];

/** Seeds are chosen so that the stories can be seen in one season's wobble. */
const lines: readonly Line[] = [
  ["Ilka Brandmoor", "track", "1500 m", "trained", 2002, "", 2, 88, 42, 183, 33, "lifts 6 years"],
  ["Tomas Reyerson", "track", "5000 m", "trained", 1999, "", 2, 112, 44, 190, 22, "lifts 4 years"],
  ["Wren Castellow", "track", "800 m", "novice", 2007, "", 2, 58, 34, 215, 6, "first season"],
  ["Kofi Anstruther", "track", "800 m", "trained", 2004, "", 2, 138, 56, 170, 30, "lifts 5 years"],
  [
    "Oona Petrakell",
    "road",
    "half marathon",
    "trained",
    1993,
    "",
    1,
    76,
    32,
    205,
    33,
    "lifts 8 years",
  ],
  ["Dario Quell", "road", "10 km", "trained", 1997, "", 2, 116, 43, 185, 30, "lifts 5 years"],
  [
    "Priya Tellander",
    "road",
    "10 km",
    "trained",
    2000,
    "",
    2,
    82,
    36,
    195,
    123,
    "marker and jumps on some Saturdays",
  ],
  [
    "Hamid Sorley",
    "marathon",
    "marathon",
    "trained",
    1988,
    "",
    1,
    95,
    38,
    210,
    31,
    "lifts 10 years",
  ],
  [
    "Bea Lindqvale",
    "track",
    "1500 m",
    "novice",
    2009,
    "S. Marchbank from 2026-05-05",
    2,
    48,
    30,
    225,
    34,
    "first season",
  ],
  [
    "Nils Quarrington",
    "road",
    "triathlon",
    "trained",
    1995,
    "",
    2,
    120,
    46,
    195,
    34,
    "home gym some weeks, plates in lb",
  ],
  [
    "Joss Whitterby",
    "track",
    "steeplechase",
    "trained",
    2003,
    "",
    2,
    104,
    45,
    190,
    31,
    "lifts 4 years",
  ],
  ["Maren Aspholt", "track", "5000 m", "trained", 1998, "", 2, 84, 37, 188, 34, "joined 26 May"],
];

export const members: readonly Member[] = lines.map(
  ([athlete, group, event, experience, birthYear, supervisor, sessionsAWeek, ...rest]) => {
    const [bestKg, boxJumpCm, contactMs, seed, notes] = rest;
    const person = { athlete, group, event, experience, birthYear, supervisor, sessionsAWeek };
    return { ...person, bestKg, boxJumpCm, contactMs, seed, notes };
  },
);
