// A made-up corner of the invented club: small enough to open again for every fault.
const names = ["Tomas Reyerson", "Priya Tellander"] as const;
const days = ["2026-06-02", "2026-06-04", "2026-06-09", "2026-06-11", "2026-06-16", "2026-06-18"];

const sets = names.flatMap((athlete, at) =>
  days.flatMap((day) => [
    [day, athlete, "back squat", "marker", 3, 50 + at, "0.85 0.84 0.83"],
    ...[7, 8, 9].map((nth) => [
      day,
      athlete,
      "back squat",
      "work",
      5,
      70 + at,
      `0.62 0.60 0.5${nth}`,
    ]),
  ]),
);

/** Today, a Sunday, and the Monday after it. */
export const today = "2026-06-21";
export const monday = "2026-06-22";
export const [tomas, priya] = names;

/** Fresh cells of the whole workbook; the Diary has a spelling and a value to ask about. */
export const smallClub = (): Record<string, (string | number)[][]> => ({
  Athletes: [
    ["Athlete", "Group", "Experience"],
    ...names.map((name) => [name, "track", "trained"]),
  ],
  Sets: [["Date", "Athlete", "Exercise", "Kind", "Reps", "Load (kg)", "Rep speeds (m/s)"], ...sets],
  Diary: [
    ["Date", "Athlete", "Sleep (h)", "Soreness", "Mood", "Note"],
    ["2026-06-17", tomas, 75, 3, 5, "late train"],
    ["2026-06-18", "Priya Telander", 8, 3, 5, ""],
    ["2026-06-19", priya, 8, 3, 5, ""],
  ],
  Races: [
    ["Date", "Start", "Race", "Who", "Distance", "Matters"],
    ["2026-06-27", "10:00", "R2", "all", "10 km", "A"],
    ["2026-07-04", "14:00", "R3", "track", "1500 m", "B"],
  ],
  Squad: [
    ["Athlete", "Word"],
    [tomas, "slipping"],
  ],
  Camp: [["Day", "Where"]],
});
