import { printPages } from "../../src/actions/pages/print-pages";
import { readWorkbook } from "../../src/actions/read-workbook";
import { serveRequest } from "../../src/actions/requests";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

const today = dayFromIso("2026-05-29")!;
type Tabs = Readonly<Record<string, readonly (readonly unknown[])[]>>;
const names = ["Nils Quarrington", "Tove Fennwick"];
const athletes = [["Athlete"], ...names.map((name) => [name])];
const bookOf = (tabs: Tabs) => memoryWorkbook({ Athletes: athletes, ...tabs });
const lineOf = (tabs: Tabs, name = names[0]!) =>
  weekView(bookOf(tabs), today, null, []).lines.find(({ athlete }) => athlete === name)!;
const days = ["20 May 2026", "22 May 2026", "26 May 2026", "28 May 2026", "2 Jun 2026"];
const grid = (title: string, own: readonly unknown[], other: readonly unknown[]) => [
  [title, ...days],
  [names[0], ...own],
  [names[1], ...other],
];
const squat = (last: string, planned = "") =>
  grid(
    "Squat",
    ["80x5x5", "80x5x5", "80x5x5", last, planned],
    ["70x5x5", "70x5x5", "70x5x5", "70x5x5", ""],
  );
const told = (day: string, place: string, words: string) =>
  `Absence written for ${day} (${place}): “${words}”. Ask before anything is lifted, and write in the Availability tab what is allowed.`;

test("words of absence in a grid of sets stand first beside next week, with their day and cell", () => {
  const words = "out – back w/c 1 June";
  const line = lineOf({ Gym: squat(words) });
  expect(line.why[0]).toBe(told("28 May", "Gym E2", words));
  expect([line.brief, line.odd]).toEqual(["Absence written for 28 May (Gym E2)", true]);
  // Nothing is decided for the coach.
  expect(line.sessions.map(({ loadKg }) => loadKg)).toEqual([80, 80]);
  const other = lineOf({ Gym: squat(words) }, names[1]);
  expect(other.why.join(" ")).not.toContain("Absence");
});

test("the cell's own words are told, and the days to come of the week as well, not those after it", () => {
  expect(lineOf({ Gym: squat("", "away, camp") }).why[0]).toBe(
    told("2 Jun", "Gym F2", "away, camp"),
  );
  const later = squat("", "away, camp").map((row, at) =>
    at === 0 ? [...row.slice(0, 5), "9 Jun 2026"] : row,
  );
  expect(lineOf({ Gym: later }).why.join(" ")).not.toContain("Absence");
});

const jumps = (last: string) => ({
  CMJ: grid("CMJ cm", [32, 33, 32, last, ""], [30, 31, 30, 30, ""]),
});
const runs = (last: string) => ({
  Runs: grid(
    "Runs (min)",
    ["40 easy", "40 easy", "40 easy", last, ""],
    ["40 easy", "40 easy", "40 easy", "30 easy", ""],
  ),
});
const rows = (table: string, header: readonly string[], ...cells: readonly unknown[][]) => ({
  [table]: [header, ...cells.map(([day, ...row]) => [`2026-05-${day}`, names[0], ...row])],
});
const sets = ["Date", "Athlete", "Exercise", "Load (kg)", "Reps", "Notes"];
const done = [20, "back squat", 80, 5, ""];

test.each<readonly [string, Tabs, string, string]>([
  ["a grid of jumps", jumps("holiday until 12/6"), "CMJ E2", "holiday until 12/6"],
  ["a grid of runs", runs("away, camp"), "Runs E2", "away, camp"],
  [
    "the column of loads",
    rows("Sets", sets, done, [28, "back squat", "away, camp", "", ""]),
    "Sets D3",
    "away, camp",
  ],
  [
    "the notes of a set that was not done",
    rows("Sets", sets, done, [28, "back squat", "", "", "Urlaub bis 12.6."]),
    "Sets F3",
    "Urlaub bis 12.6.",
  ],
  [
    "the kind of a run",
    rows("Runs", ["Date", "Athlete", "Kind", "Minutes"], [28, "out – back w/c 1 June", ""]),
    "Runs C2",
    "out – back w/c 1 June",
  ],
  [
    "the diary's notes",
    rows("Diary", ["Date", "Athlete", "Sleep (h)", "Note"], [28, 8, "on holiday from Monday"]),
    "Diary D2",
    "on holiday from Monday",
  ],
])("words of absence in %s are told with their cell", (_, tabs, place, words) => {
  expect(lineOf(tabs).why).toContain(told("28 May", place, words));
});

test("words of a week are told as the week's, and once wherever they stand twice", () => {
  const weeks = [
    ["Squat", "19 May 2026", "21 May 2026", "Notes", "26 May 2026", "28 May 2026", "Notes"],
    [names[0], "80x5x5", "80x5x5", "", "", "", "camp until 4 June"],
    [names[1], "70x5x5", "70x5x5", "", "70x5x5", "", ""],
  ];
  expect(lineOf({ Gym: weeks }).why[0]).toBe(
    "Absence written for the week of 25 May (Gym G2): “camp until 4 June”. Ask before anything is lifted, and write in the Availability tab what is allowed.",
  );
  const day = [28, "back squat", 80, 5, "away until 12 June"];
  const twice = lineOf(
    rows(
      "Sets",
      sets,
      day,
      day.map((cell) => (cell === 80 ? 85 : cell)),
    ),
  );
  expect(twice.why.filter((one) => one.includes("Absence"))).toHaveLength(1);
});

test("a form's answer that begins with the day is told by its own cell", () => {
  const form = rows(
    "Diary",
    ["Date", "Athlete", "Pain?", "Note"],
    [28, "keine 🙂", "Ab 1.6. eine Woche weg"],
  );
  expect(lineOf(form).why).toContain(told("28 May", "Diary D2", "Ab 1.6. eine Woche weg"));
});

test("an injury of before the last days is asked about until something is lifted", () => {
  const early = grid(
    "Squat",
    ["80x5x5", "injured", "", "", ""],
    ["70x5x5", "injured", "70x5x5", "70x5x5", ""],
  );
  expect(lineOf({ Gym: early }).why[0]).toBe(told("22 May", "Gym C2", "injured"));
  expect(lineOf({ Gym: early }, names[1]).why.join(" ")).not.toContain("Absence");
  // One of the last days is asked about as an injury, once.
  const why = lineOf({ Gym: squat("injured") }).why.join(" ");
  expect(why).toContain("Pain or illness was noted on 28 May (Gym E2): ask");
  expect(why).not.toContain("Absence");
});

const undated = (place: string, words: string) =>
  `Absence written without a day (${place}): “${words}”. Ask before anything is lifted, and write in the Availability tab what is allowed.`;

test.each<readonly [string, readonly unknown[][], string, string]>([
  [
    "notes",
    [
      ["Athlete", "Notes"],
      [names[0], "Urlaub bis 12.6."],
    ],
    "Athletes B2",
    "Urlaub bis 12.6.",
  ],
  [
    "state",
    [
      ["Athlete", "Status"],
      [names[0], "injured"],
    ],
    "Athletes B2",
    "injured",
  ],
  [
    "state, beside notes of something else",
    [
      ["Athlete", "Status", "Notes"],
      [names[0], "away until 12 June", "likes mornings"],
    ],
    "Athletes B2",
    "away until 12 June",
  ],
])(
  "an absence among the athletes' %s is told with its cell until the day it names",
  (_, own, place, words) => {
    const book = { Athletes: [...own, [names[1], "", ""]], Gym: squat("80x5x5") };
    const line = lineOf(book);
    expect([line.why[0], line.odd]).toEqual([undated(place, words), true]);
    expect(lineOf(book, names[1]).why.join(" ")).not.toContain("Absence");
    const cleared = [
      ["Athlete", "From", "May do"],
      [names[0], "2026-05-28", "full"],
    ];
    expect(lineOf({ ...book, Availability: cleared }).why.join(" ")).not.toContain("Absence");
  },
);

test("an absence among the athletes that has ended by its own words is not told", () => {
  const own = [
    ["Athlete", "Notes"],
    [names[0], "Urlaub bis 12.5."],
  ];
  expect(lineOf({ Athletes: own, Gym: squat("80x5x5") }).why.join(" ")).not.toContain("Absence");
});

test("what somebody is to do now is no experience: the Availability tab takes it, with its day", () => {
  const own = ["active", "fit", "trained", "out", "modified"];
  const { tabs } = readWorkbook(
    bookOf({ Athletes: [["Athlete", "Status"], ...own.map((word) => [`Runner ${word}`, word])] }),
    today,
  );
  const { reading } = tabs[0]!.understanding;
  expect(reading.issues.map(({ code, cell }) => `${code} ${cell}`)).toEqual([
    "state-undated B5",
    "state-undated B6",
  ]);
  expect(reading.records.map((one) => "experience" in one && one.experience)).toEqual([
    null,
    null,
    "trained",
    null,
    null,
  ]);
});

test("notes left of the dates of a grid belong to no week, and are told as such", () => {
  const [heads, ...lines] = squat("80x5x5");
  const [title, ...dates] = heads!;
  const own = ["away, camp", ""];
  const gym = [
    [title, "Notes", ...dates],
    ...lines.map(([name, ...cells], at) => [name, own[at], ...cells]),
  ];
  expect(lineOf({ Gym: gym }).why[0]).toBe(undated("Gym B2", "away, camp"));
});

test("a private row of the diary gives its day and cell, not its words", () => {
  const header = ["Date", "Athlete", "Note", "Private?"];
  const line = lineOf({
    ...rows("Diary", header, [28, "away until 12 June", "y"]),
    Gym: squat("80x5x5").map((row) => row.slice(0, 4)),
  });
  expect(line.why[0]).toBe(
    "Absence written for 28 May (Diary C2). Ask before anything is lifted, and write in the Availability tab what is allowed.",
  );
});

test("who has no sets yet is asked about, too; who is out by Availability is not asked twice", () => {
  const line = lineOf(jumps("injured"));
  expect(line.why.slice(0, 2)).toEqual([
    "Pain or illness was noted on 28 May (CMJ E2): ask before anything is lifted, and write in the Availability tab what is allowed.",
    "No work sets in the rows, only jumps: no lift is proposed. At most 30 ground contacts a session.",
  ]);
  const spell = [names[0], "2026-05-21", "out"];
  const out = lineOf({
    Gym: squat("away, camp"),
    Availability: [["Athlete", "From", "May do"], spell],
  });
  expect(out.why.join(" ")).not.toContain("Absence");
});

test("the Next week tab's why names day and cell; a card the cell alone, without the words", () => {
  const book = bookOf({ Gym: squat("out – back w/c 1 June") });
  const week = { today: "2026-05-29", monday: "2026-06-01", changes: [] };
  serveRequest(book, "writeWeek", { ...week, athletes: null });
  const cells = book.values(book.tabNamed("Next week").id).flat();
  expect(cells).toContain("Absence written for 28 May (Gym E2).");
  const pages = printPages(book, today, "cards", null, []);
  const [card] =
    pages.kind === "cards" ? pages.cards.filter(({ athlete }) => athlete === names[0]) : [];
  expect(card!.without.ask).toEqual(["Gym E2"]);
  expect(JSON.stringify(card)).not.toContain("back w/c");
});
