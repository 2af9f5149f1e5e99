import { athleteStates } from "../../src/actions/squad/athlete-states";
import { stateOfSquad } from "../../src/actions/squad/state-of-squad";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const name = "Nils Quarrington";
const asOf = dayFromIso("2026-06-12") as number;
type Tab = readonly (readonly unknown[])[];

const noted = (tabs: Readonly<Record<string, Tab>>) =>
  athleteStates(stateOfSquad(memoryWorkbook({ Athletes: [["Athlete"], [name]], ...tabs }), asOf))(
    name,
  ).unwellDay;
const unwell = (tabs: Readonly<Record<string, Tab>>) => noted(tabs)?.day ?? null;
const sets: Tab = [
  ["Date", "Athlete", "Exercise", "Load (kg)", "Notes"],
  ["2026-06-10", name, "back squat", 80, ""],
  ["2026-06-11", "N. Quarrington", "back squat", 80, ""],
  ["2026-06-11", name, "back squat", 80, "knee pain, stopped"],
];
const jumps: Tab = [
  ["Date", "Athlete", "Test", "Height (cm)", "Notes"],
  ["2026-06-10", name, "box jump", 50, "calf hurts"],
];
const diary: Tab = [
  ["Date", "Athlete", "Note"],
  ["2026-06-12", name, "fever"],
];

test("pain written beside a set, a jump or in the diary is asked after before sets are written", () => {
  expect(unwell({ Sets: sets.slice(0, 3) })).toBeNull();
  expect(unwell({ Sets: sets })).toBe(asOf - 1);
  expect(unwell({ Jumps: jumps })).toBe(asOf - 2);
  expect(unwell({ Sets: sets, Jumps: jumps, Diary: diary })).toBe(asOf);
});

test("once Availability says what is allowed, it is not asked again", () => {
  const answered: Tab = [
    ["Athlete", "From", "May do"],
    [name, "2026-06-12", "full"],
  ];
  expect(unwell({ Sets: sets, Diary: diary, Availability: answered })).toBeNull();
});

const grid = (cell: unknown, ...others: readonly unknown[][]): Tab => [
  ["Squat", "10 Jun 2026", "11 Jun 2026"],
  [name, "80x5x5", cell],
  ["Tove Fennwick", "70x5x5", "72.5x5x5"],
  ...others,
];
const sheets: readonly (readonly [string, Readonly<Record<string, Tab>>])[] = [
  ["in place of the load", { Sets: [sets[0]!, ["2026-06-11", name, "back squat", "ill", ""]] }],
  ["as a slip told of a load", { Sets: [sets[0]!, ["2026-06-11", name, "squat", "injured", ""]] }],
  ["in a grid's cell of sets", { Gym: grid("ill") }],
  ["in words in a grid's cell", { Gym: grid("calf pain") }],
  [
    "in a set's own column",
    {
      Gym: [
        ["Date", "Athlete", "Lift", "Set 1", "Set 2"],
        ["2026-06-10", name, "Squat", 80, 85],
        ["2026-06-11", name, "Squat", "sick", ""],
      ],
    },
  ],
  ["in place of a jump's height", { Jumps: [jumps[0]!, ["2026-06-11", name, "CMJ", "krank", ""]] }],
  [
    "in a grid's cell of jumps",
    {
      CMJ: [
        ["CMJ cm", "10 Jun 2026", "11 Jun 2026"],
        [name, 32, "ill"],
        ["Tove Fennwick", 31, 32],
      ],
    },
  ],
  [
    "in place of a run's minutes",
    {
      Runs: [
        ["Date", "Athlete", "Kind", "Minutes"],
        ["2026-06-11", name, "easy", "ill"],
      ],
    },
  ],
  [
    "beside a run",
    {
      Runs: [
        ["Date", "Athlete", "Kind", "Minutes", "Notes"],
        ["2026-06-11", name, "easy", 40, "Achilles sore"],
      ],
    },
  ],
  [
    "in place of a rating of the diary",
    {
      Diary: [
        ["Date", "Athlete", "Soreness", "Mood"],
        ["2026-06-11", name, "sick", 2],
      ],
    },
  ],
];

test.each(sheets)("an illness written %s is asked after, too", (_, tabs) => {
  expect(unwell(tabs)).toBe(asOf - 1);
  const [, tab = "", letter = "", row] = /^(.+) ([A-Z])(\d+)$/.exec(noted(tabs)!.place)!;
  expect(tabs[tab]![Number(row) - 1]![letter.charCodeAt(0) - 65]).toMatch(
    /^(ill|sick|krank|injured|calf pain|Achilles sore)$/,
  );
});

const diaryRow = (...cells: readonly unknown[]): readonly (readonly unknown[])[] => [
  ["Date", "Athlete", "Pain?", "Food note", "Note"],
  ["2026-06-11", name, ...cells],
];

test.each([
  ["beside a set", { Sets: sets }, "Sets E4"],
  ["beside a jump", { Jumps: jumps }, "Jumps E2"],
  ["in the diary", { Diary: diaryRow("", "stomach upset", "") }, "Diary D2"],
  ["as a yes under a heading of pain", { Diary: diaryRow("yes", "", "tired") }, "Diary C2"],
  ["as a tick under a heading of pain", { Diary: diaryRow(true, "", "") }, "Diary C2"],
  [
    "behind the sets of a grid, each day its own",
    {
      Gym: grid("85x5x5 (knee pain)").map((line) =>
        line.map((cell) => (cell === "80x5x5" ? "80x5x5 (ill)" : cell)),
      ),
    },
    "Gym C2",
  ],
])("the cell of what was written %s is told", (_, tabs, place) => {
  expect(noted(tabs)!.place).toBe(place);
});

test("the week's line says on which day and in which cell", () => {
  const book = memoryWorkbook({ Athletes: [["Athlete"], [name]], Sets: sets });
  expect(weekView(book, asOf, null, []).lines[0]!.why).toContain(
    "Pain or illness was noted on 11 Jun (Sets E4): ask before anything is lifted, and write in the Availability tab what is allowed.",
  );
});

test("words of a week may be of its last day, not of one to come", () => {
  const weeks = (days: readonly string[], words: string): Readonly<Record<string, Tab>> => ({
    Gym: [
      ["Squat", ...days, "Notes"],
      [name, "80x5x5", "", words],
      ["Tove Fennwick", "70x5x5", "", ""],
    ],
  });
  expect(unwell(weeks(["8 Jun 2026", "9 Jun 2026"], "flu"))).toBe(asOf);
  expect(unwell(weeks(["8 Jun 2026", "9 Jun 2026"], "fine"))).toBeNull();
  expect(unwell(weeks(["1 Jun 2026", "2 Jun 2026"], "flu"))).toBeNull();
});

test("the weather of a run is no illness, a tight chest is none to pass over", () => {
  const run = (words: string): Readonly<Record<string, Tab>> => ({
    Runs: [
      ["Date", "Athlete", "Kind", "Minutes", "Notes"],
      ["2026-06-11", name, "easy", 40, words],
    ],
  });
  expect(unwell(run("cold and windy"))).toBeNull();
  expect(unwell(run("chest tight at the end"))).toBe(asOf - 1);
});

test("marks of no figure say no more than that", () => {
  const marks = ["-", "n/a", "DNS", "skipped"].map((mark, at) => [
    `2026-06-0${at + 1}`,
    name,
    "back squat",
    mark,
    "",
  ]);
  const { notes } = stateOfSquad(memoryWorkbook({ Sets: [sets[0]!, ...marks] }), asOf).read;
  expect(notes).toEqual([]);
  const ill = [...marks, ["2026-06-05", name, "back squat", " Ill ", ""]];
  const read = stateOfSquad(memoryWorkbook({ Sets: [sets[0]!, ...ill] }), asOf).read;
  expect(read.notes.map(({ cell, words }) => [cell, words])).toEqual([["D6", "Ill"]]);
});
