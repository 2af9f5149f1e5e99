import { rowCheckFunction } from "../../src/catalogue/row-check";

const day = "2026-05-12";
const name = "Ilka Brandmoor";
const ranges: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  Athletes: [
    ["Athlete", "Group", "Event", "Birth year"],
    [name, "track", "1500 m", 2002],
  ],
  Availability: [
    ["Athlete", "From", "Until", "May do", "Site"],
    [name, day, "", "modified", "calf"],
  ],
  Sets: [
    ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"],
    [day, name, "back squat", 1, 5, 80, "0.62 0.61 0.60 0.59 0.58"],
    [day, name, "back squat", 2, 5, 80, "0.62 0.61 0.60 0.59 0.58"],
  ],
  Jumps: [
    ["Date", "Athlete", "Test", "Height (cm)", "Contact time (ms)"],
    [day, name, "drop jump", 31, 180],
  ],
  Diary: [
    ["Date", "Athlete", "Sleep (h)", "Soreness", "Mood"],
    [day, name, 8, 2, 3],
  ],
  Runs: [
    ["Date", "Athlete", "Kind", "Minutes", "Exertion", "km"],
    [day, name, "easy", 40, 3, 8],
  ],
  Races: [
    ["Date", "Race", "Athlete or group", "Distance", "Matters"],
    [day, "Mill ten", "all", "10 km", "B"],
  ],
  Plates: [
    ["Mass (kg)", "Thickness (cm)", "Number owned"],
    [20, 4.3, 6],
  ],
  Rules: [
    ["Rule", "Value"],
    ["Weeks of the season", 18],
  ],
};
const squat = [
  ["Squat", "12 May 2026", "14 May 2026"],
  [name, "80x5x5", "80x5x5"],
];
const check = (rows: unknown, table: string) =>
  rowCheckFunction.compute([rows, table, "", ""]) as string[][];
const other = (is: string, said: string) =>
  `rows read like the ${is} table, not ${said}: write "${is}" as table, or give the range of ${said}.`;

test.each(Object.entries(ranges))(
  "a range of %s given as another table is said to be it",
  (is, rows) => {
    for (const said of Object.keys(ranges)) {
      if (said === is) expect(check(rows, said)[0]).toEqual(["all rows read", "", "", ""]);
      else expect(() => check(rows, said)).toThrow(other(is, said));
    }
  },
);

test("so is a grid of sets given as jumps", () => {
  expect(() => check(squat, "Jumps")).toThrow(other("Sets", "Jumps"));
  expect(() =>
    check(
      [
        ["CMJ cm", ...squat[0]!.slice(1)],
        [name, 31, 32],
      ],
      "Runs",
    ),
  ).toThrow(other("Jumps", "Runs"));
});

test("what may be the table it is said to be keeps its own sentences", () => {
  // Bare numbers may be loads of a lift that only the tab names.
  const bare = [
    ["", "12 May 2026", "14 May 2026"],
    [name, 80, 85],
  ];
  expect(check(bare, "Sets").map((row) => row[1])).toEqual(["no exercise named"]);
  // Jumps among sets are jumps as well.
  const log = [...ranges.Sets!, [day, name, "box jump", "", "", "", ""]];
  expect(() => check(log, "Sets")).not.toThrow();
  // One slip makes no other table.
  const slip = [...ranges.Jumps!, [day, name, "drop jump", "about 31", 180]];
  expect(check(slip, "Jumps").map((row) => row[0])).toEqual(["D3"]);
  expect(check([["Something"], ["else"]], "Runs").map((row) => row[1])).toEqual(["no header row"]);
});
