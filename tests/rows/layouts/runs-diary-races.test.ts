import { isoFromDay } from "../../../src/coaching/calendar/day";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import type { Race } from "../../../src/coaching/record/race";
import type { Run } from "../../../src/coaching/record/run";
import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { counts, notes, problems, today } from "./short";

// Runs, diary and races as coaches keep them; athletes, races and figures are invented.

/** "05-04 Ilka easy 45 min 8 km @3" */
const shortRun = ({ day, athlete, kind, minutes, km, exertion }: Run) =>
  [
    isoFromDay(day).slice(5),
    athlete,
    kind,
    minutes === null ? null : `${minutes} min`,
    km === null ? null : `${Math.round(km * 100) / 100} km`,
    exertion === null ? null : `@${exertion}`,
  ]
    .filter((part) => part !== null)
    .join(" ");
const shortRace = ({ day, race, who, distanceKm, matters }: Race) =>
  `${isoFromDay(day).slice(5)} ${race} ${distanceKm} km ${matters ?? "?"}: ${who}`;
const shortDiary = ({ day, athlete, sleepH, sleepQuality, soreness, mood, note }: DiaryDay) =>
  [isoFromDay(day).slice(5), athlete, sleepH, sleepQuality, soreness, mood, note].join(" ");
/** The one table a tab is taken for, with its rows in short. */
function found(name: string, cells: readonly (readonly unknown[])[]) {
  const [one, ...more] = findTables([{ name, cells }], { today });
  if (one === undefined || more.length > 0) throw new Error(`${more.length + 1} tables found`);
  return { ...one, reading: one.understanding.reading };
}

test("runs in wide weeks: minutes said in the title, rest and rides no run, marks repeated to the left", () => {
  const { table, sureness, reading } = found("Endurance", [
    ["RUNNING – spring 2026, in minutes", "", "", "", "", "", "", ""],
    ["", "w/c 4 May", "", "", "w/c 11 May", "", "", ""],
    ["Athlete", "Mon", "Wed", "Sun", "Mon", "Wed", "Sun", "notes"],
    ["TRACK", "", "", "", "", "", "", ""],
    ["Ilka", "45 easy", "8x400", "1:20:00 long", '""', "as Mon", "bike 60", "calf tight"],
    ["Kofi", 40, "10 km tempo RPE 7", "rest", "40' @3", "-", "12k long", ""],
    ["AVG", 42.5, "", "", "", "", "", ""],
  ]);
  expect([table, sureness > 0.6]).toEqual(["Runs", true]);
  expect((reading.records as readonly Run[]).map(shortRun)).toEqual([
    "05-04 Ilka easy 45 min",
    "05-06 Ilka interval",
    "05-10 Ilka long 80 min",
    "05-11 Ilka long 80 min",
    "05-13 Ilka long 80 min",
    "05-04 Kofi 40 min",
    "05-06 Kofi race pace 10 km @7",
    "05-11 Kofi 40 min @3",
    "05-17 Kofi long 12 km",
  ]);
  expect(problems(reading)).toEqual([]);
  expect(notes(reading)).toEqual([
    "H5 Ilka: calf tight",
    "C5 Ilka: 8x400",
    "G5 Ilka: bike 60",
    "D6 Kofi: rest",
  ]);
  expect(counts(reading)).toEqual([2, 0, 0, 5]);
});

test("runs with kilometres and exertion in columns of their own under each date", () => {
  const { table, reading } = found("Mileage 2026", [
    ["", "12/5", "", "14/5", ""],
    ["Name", "mi", "RPE", "km", "RPE"],
    ["Ilka", 5, 3, "8,5", "4/10"],
    ["Kofi", "-", "", 12, ""],
  ]);
  expect(table).toBe("Runs");
  expect((reading.records as readonly Run[]).map(shortRun)).toEqual([
    "05-12 Ilka 8.05 km @3",
    "05-14 Ilka 8.5 km @4",
    "05-12 Kofi",
    "05-14 Kofi 12 km",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("bare numbers in a grid of runs are asked about, not guessed", () => {
  const cells = [
    ["Runs, May 2026", "", ""],
    ["", "12/5/2026", "14/5/2026"],
    ["Ilka", 45, "easy 8.5"],
    ["Kofi", 10, "12 km"],
  ];
  const { reading, understanding, sureness } = found("Road", cells);
  expect(problems(reading)).toEqual([
    "B3 run-figure-unsettled: 45",
    "C3 run-figure-unsettled: easy 8.5",
    "B4 run-figure-unsettled: 10",
  ]);
  expect(understanding.tabQuestions).toEqual([
    {
      about: "runs",
      said: "",
      samples: ["45", "easy 8.5", "10"],
      guess: null,
      choices: ["minutes", "kilometres"],
    },
  ]);
  expect(sureness).toBeGreaterThan(0);
  const answered = understandTable("Runs", cells, { today, tab: { runs: "km" } });
  expect(answered.tabQuestions).toEqual([]);
  expect(answered.reading.records.map(shortRun)).toEqual([
    "05-12 Ilka 45 km",
    "05-14 Ilka easy 8.5 km",
    "05-12 Kofi 10 km",
    "05-14 Kofi 12 km",
  ]);
});

test("words in a Notes column beside runs are notes of the athlete and the day", () => {
  const { reading, understanding } = found("Runs", [
    ["Date", "Athlete", "Minutes", "Exertion", "Notes"],
    ["2026-05-12", "Ilka", 45, 3, "calf tight"],
    ["2026-05-14", "Kofi", 50, 4, ""],
  ]);
  expect(reading.rowsRead).toBe(2);
  expect(understanding.questions).toEqual([]);
  expect(understanding.columns.find(({ heading }) => heading === "Notes")).toMatchObject({
    field: "note",
    by: "heading",
  });
  expect(notes(reading)).toEqual(["E2 Ilka: calf tight"]);
});

test("a diary of one question, dates across, a block a question; marks repeat what stands to the left", () => {
  const { table, sureness, reading, understanding } = found("Wellness", [
    ["Sleep (h), May 2026", "", "", ""],
    ["", "12/5/2026", "13/5/2026", "14/5/2026"],
    ["Ilka", 7.5, '"', "8:15"],
    ["Kofi", '"', "seven", 8],
    ["", "", "", ""],
    ["Sleep quality 1-5", "", "", ""],
    ["", "12/5/2026", "13/5/2026", "14/5/2026"],
    ["Ilka", 4, 3, ""],
  ]);
  expect([table, understanding.layout, sureness > 0.6]).toEqual(["Diary", "dates across", true]);
  expect((reading.records as readonly DiaryDay[]).map(shortDiary)).toEqual([
    "05-12 Ilka 7.5    ",
    "05-13 Ilka 7.5    ",
    "05-14 Ilka 8.25    ",
    "05-13 Kofi     ",
    "05-14 Kofi 8    ",
    "05-12 Ilka  4   ",
    "05-13 Ilka  3   ",
  ]);
  expect(problems(reading)).toEqual(['B4 nothing-to-repeat: "', "C4 not-a-number: seven"]);
  expect(counts(reading)).toEqual([3, 0, 1, 4]);
});

test("a diary with its questions under each date, a note of the week beside", () => {
  const { table, reading } = found("Diary", [
    ["", "12/5/2026", "", "13/5/2026", "", ""],
    ["Athlete", "Sleep", "Mood", "Sleep", "Mood", "Notes"],
    ["Ilka", 7, 4, 8, "", "exams"],
  ]);
  expect(table).toBe("Diary");
  expect((reading.records as readonly DiaryDay[]).map(shortDiary)).toEqual([
    "05-12 Ilka 7   4 ",
    "05-13 Ilka 8    ",
  ]);
  expect(notes(reading)).toEqual(["F3 Ilka: exams"]);
});

test("sleep in minutes by the title, soreness by the tab's name", () => {
  const grid = (title: string, ...answers: unknown[]) => [
    [title, "", ""],
    ["", "12/5/2026", "13/5/2026"],
    ["Ilka", ...answers],
  ];
  const sleep = found("Spring", grid("Sleep, minutes", 450, 480));
  expect(sleep.reading.records).toMatchObject([{ sleepH: 7.5 }, { sleepH: 8 }]);
  const sore = found("Soreness", grid("Spring 2026", 2, 3));
  expect(sore.reading.records).toMatchObject([{ soreness: 2 }, { soreness: 3 }]);
});

test("a grid is a diary only when its answers may be a diary's and its title names no lift", () => {
  const grid = (title: string, ...answers: unknown[]) => [
    [title, "", ""],
    ["", "12/5/2026", "13/5/2026"],
    ["Ilka", ...answers],
  ];
  const tables = (title: string, ...answers: unknown[]) =>
    findTables([{ name: "Spring", cells: grid(title, ...answers) }], { today }).map(
      ({ table }) => table,
    );
  expect(tables("Squat, low stress week", "5x5x60", "3x5x65")).toEqual(["Sets"]);
  expect(tables("Mood", "fine", "tired")).toEqual([]);
  expect(tables("Mood", 4, 5)).toEqual(["Diary"]);
});

test("a grid the coach says is the diary, with no word on what was asked, is said in one sentence", () => {
  const cells = [
    ["", "12/5/2026", "13/5/2026"],
    ["Ilka", 4, 5],
    ["Kofi", 3, 3],
  ];
  const { reading, layout } = understandTable("Diary", cells, { today, said: true, title: "May" });
  expect(layout).toBe("dates across");
  expect(problems(reading)).toEqual([`B1 diary-question-missing: 12/5/2026`]);
  expect(counts(reading)).toEqual([0, 2, 0, 1]);
});

test("runs in a grid: miles and efforts, marks with nothing to repeat, and cells that are no run", () => {
  const { reading } = found("Runs 2026", [
    ["Runs 2026, km", "", "", ""],
    ["", "w/c 4 May", "", "w/c 11 May"],
    ["Athlete", "Mon", "Wed", "Mon"],
    ["Ilka", "8", "as Mon", "as Wed"],
    ["Kofi", '"', "as Fri", "6 mi @4"],
    ["Nora", "5 km 7", true, false],
    ["Mia", "30 min 4/10", new Date(2026, 3, 4), "k9"],
  ]);
  expect((reading.records as readonly Run[]).map(shortRun)).toEqual([
    "05-04 Ilka 8 km",
    "05-06 Ilka 8 km",
    "05-11 Kofi 9.66 km @4",
    "05-04 Mia 30 min @4",
  ]);
  expect(problems(reading)).toEqual([
    "D4 nothing-to-repeat: as Wed",
    'B5 nothing-to-repeat: "',
    "C5 nothing-to-repeat: as Fri",
    "B6 run-unread: 5 km 7",
    "C6 run-unread: true",
    "C7 run-unread: 2026-04-04",
    "D7 run-unread: k9",
  ]);
});

test("a grid whose cells speak of runs needs no title; its dates may be either way round", () => {
  const { table, reading } = found("Endurance", [
    ["", "5/6/2026", "6/6/2026", "7/6/2026"],
    ["Ilka", "45 min easy", "8 km", "1:10:00 long"],
    ["Kofi", "50 min easy", "", ""],
  ]);
  expect(table).toBe("Runs");
  expect(problems(reading)).toEqual([
    "B1 date-order-unsettled: 5/6/2026",
    "D1 date-order-unsettled: 7/6/2026",
  ]);
  expect((reading.records as readonly Run[]).map(shortRun)).toEqual(["06-06 Ilka 8 km"]);
});

test("a row of totals below runners' marks is no race and no mark", () => {
  const { reading, understanding } = found("Races", [
    ["Date", "Race", "Ilka", "Kofi", "Travel (h)"],
    ["2026-05-12", "Relays", "x", "", 2],
    ["", "", "", "", ""],
    ["total", "", 1, "", ""],
    ["2026-05-19", "5000", "", "", 1],
  ]);
  expect(understanding.layout).toBe("runners across");
  expect(reading.records).toMatchObject([{ race: "Relays", who: "Ilka" }]);
  expect(problems(reading)).toEqual(["C5 race-without-runner: "]);
  expect(counts(reading)).toEqual([1, 1, 1, 2]);
});

test("a grid of the diary whose dates may be either way round is the diary all the same, and asked about", () => {
  const { table, reading, understanding } = found("Mood", [
    ["", "5/6/2026", "7/6/2026"],
    ["Ilka", 4, 5],
  ]);
  expect([table, understanding.layout]).toEqual(["Diary", "dates across"]);
  expect(problems(reading)).toEqual([
    "B1 date-order-unsettled: 5/6/2026",
    "C1 date-order-unsettled: 7/6/2026",
  ]);
  expect(understanding.questions.map(({ about }) => about)).toContain("date order");
  const kit = [
    ["Kit list", "5/6/2026", "7/6/2026"],
    ["Ilka", "vest", "spikes"],
  ];
  expect(findTables([{ name: "Kit", cells: kit }], { today })).toEqual([]);
});

test("a grid of jumps or lifts is no grid of runs, and one of neither is left alone", () => {
  const grid = (title: string, ...cells: unknown[]) => [
    [title, "", ""],
    ["", "12/5/2026", "14/5/2026"],
    ["Ilka", ...cells],
    ["Kofi", ...cells],
  ];
  expect(found("Box jump", grid("Box jump (cm)", 41, 42)).table).toBe("Jumps");
  expect(found("Gym", grid("Squat, sets x reps x kg", "5x5x60", "3x5x65")).table).toBe("Sets");
  expect(
    findTables([{ name: "Kit", cells: grid("Kit list", "vest", "spikes") }], { today }),
  ).toEqual([]);
});

test("one tab an athlete: runs under “Name:”, a row of units, ditto marks, dates under merged cells", () => {
  const { table, reading } = found("Ilka", [
    ["Name:", "Ilka Brandmoor", "", "", ""],
    ["5000 m", "", "", "", ""],
    ["Date", "Type", "Duration", "Distance", "Effort"],
    ["", "", "min", "km", "0-10"],
    ["4/5/2026", "easy", 45, 9, 3],
    ["", "interval", '"', "8,5", 8],
    ["16/5/2026", '"', "1:05:00", "-", "6/10"],
    ["", "easy", 30, 6, ""],
    ["", "", "", "", ""],
    ["total", "", 155, 17.5, ""],
  ]);
  expect(table).toBe("Runs");
  expect((reading.records as readonly Run[]).map(shortRun)).toEqual([
    "05-04 Ilka Brandmoor easy 45 min 9 km @3",
    "05-04 Ilka Brandmoor interval 45 min 8.5 km @8",
    "05-16 Ilka Brandmoor interval 65 min @6",
    "05-16 Ilka Brandmoor easy 30 min 6 km",
  ]);
  expect(problems(reading)).toEqual([]);
  expect(counts(reading)).toEqual([4, 0, 1, 5]);
});

test("one tab an athlete: a diary whose header lies over two rows, the name in the tab alone", () => {
  const { table, reading } = found("Kofi Anstruther", [
    ["Diary – health data, coach only", "", "", "", "", ""],
    ["", "Sleep", "", "How it felt", "", ""],
    ["Date", "sleep h", "sleep quality", "soreness", "mood", "note"],
    ["2026-05-04", "7,5", 4, 2, 4, "long drive"],
    ["2026-05-05", '"', '"', 3, "-", ""],
    ["2026-05-06", "8:15", "", "2/10", 5, "DNS"],
  ]);
  expect(table).toBe("Diary");
  expect((reading.records as readonly DiaryDay[]).map(shortDiary)).toEqual([
    "05-04 Kofi Anstruther 7.5 4 2 4 long drive",
    "05-05 Kofi Anstruther 7.5 4 3  ",
    "05-06 Kofi Anstruther 8.25  2 5 DNS",
  ]);
  expect(problems(reading)).toEqual([]);
});

test("a diary in a tab of one word may be anybody's: it is asked whose, and nothing is read till then", () => {
  const cells = [
    ["Date", "Sleep h", "Soreness", "Mood"],
    ["2026-05-04", 7.5, 2, 4],
    ["2026-05-05", 8, 3, 4],
  ];
  const { table, sureness, reading, understanding } = found("Autumn", cells);
  expect([table, sureness, reading.rowsRead, reading.rowsReported]).toEqual(["Diary", 0.5, 0, 2]);
  expect(understanding.tabQuestions).toEqual([
    {
      about: "athlete",
      said: "",
      samples: ["2026-05-04 · 7.5 · 2 · 4", "2026-05-05 · 8 · 3 · 4"],
      guess: "Autumn",
      choices: [],
    },
  ]);
  const answered = understandTable("Diary", cells, { today, tab: { athlete: "Ilka" } });
  expect(answered.reading.records.map(({ athlete }) => athlete)).toEqual(["Ilka", "Ilka"]);
});

test("races with the athletes across and a cross where they run; a race without one counts for nobody", () => {
  const { table, understanding, reading } = found("Race calendar", [
    ["QUILLBECK RUNNING CLUB", "", "", "", "", ""],
    ["Races 2026", "", "", "", "", ""],
    ["Date", "Race", "Distance", "A/B/C", "Ilka Brandmoor", "Kofi Anstruther"],
    ["16/5", "Fellside 10", "10 km", "B", "x", ""],
    ["30/5", "County 5000", "5000 m", "a", "X", "x"],
    ["13/6", "Mill relay", "5 km", "C", "", "-"],
  ]);
  expect([table, understanding.layout]).toEqual(["Races", "runners across"]);
  expect((reading.records as readonly Race[]).map(shortRace)).toEqual([
    "05-16 Fellside 10 10 km B: Ilka Brandmoor",
    "05-30 County 5000 5 km A: Ilka Brandmoor",
    "05-30 County 5000 5 km A: Kofi Anstruther",
  ]);
  expect(problems(reading)).toEqual(["E6 race-without-runner: "]);
  expect(counts(reading)).toEqual([2, 1, 0, 3]);
});

test("races by group, ticked; ticks beside crosses in one column could be yes and no and are asked", () => {
  const races = (road: readonly unknown[]) => [
    ["Datum", "Wettkampf", "Strecke", "Straße", "Bahn"],
    ["16.5.2026", "Stadtlauf", "10 km", road[0], ""],
    ["30.5.2026", "Bahnabend", "5 km", road[1], "✓"],
  ];
  const { reading } = found("Rennen", races([true, "ja"]));
  expect((reading.records as readonly Race[]).map(shortRace)).toEqual([
    "05-16 Stadtlauf 10 km ?: Straße",
    "05-30 Bahnabend 5 km ?: Straße",
    "05-30 Bahnabend 5 km ?: Bahn",
  ]);
  const { understanding } = found("Rennen", [...races(["✓", "x"]).map((row) => row.slice(0, 4))]);
  expect(understanding.layout).toBe("plain rows");
  expect(understanding.questions).toMatchObject([{ heading: "Straße", samples: ["✓", "x"] }]);
});

test("races with a column for who: a group, an athlete, everybody, or blank for everybody", () => {
  const { reading } = found("Races", [
    ["Date", "Event", "km", "Who runs"],
    ["2026-05-16", "Fellside 10", 10, "road group"],
    ["2026-05-30", "County 5000", 5, "Ilka Brandmoor"],
    ['"', "Mill relay", 5, "ALL"],
    ["2026-06-13", "Moor half", "half", ""],
  ]);
  expect(
    (reading.records as readonly Race[]).map(({ who, distanceKm }) => [who, distanceKm]),
  ).toEqual([
    ["road group", 10],
    ["Ilka Brandmoor", 5],
    ["all", 5],
    ["all", 21.0975],
  ]);
});

test("a grid the coach says is the diary, under dates that may be either way round, is asked about both", () => {
  const { reading } = understandTable(
    "Diary",
    [
      ["", "5/6/2026", "7/6/2026"],
      ["Ilka", 4, 5],
    ],
    { today, said: true, title: "May" },
  );
  expect(problems(reading)).toEqual([
    "B1 date-order-unsettled: 5/6/2026",
    "C1 date-order-unsettled: 7/6/2026",
    "B1 diary-question-missing: 5/6/2026",
  ]);
});

test("a dash between the words of a question parts nothing, and minutes may be named first", () => {
  const asked = (title: string, ...answers: unknown[]) =>
    found("Spring", [
      [title, "", ""],
      ["", "12/5/2026", "13/5/2026"],
      ["Ilka", ...answers],
    ]).reading.records;
  expect(asked("Sleep – quality, 1-5", 4, 3)).toMatchObject([
    { sleepQuality: 4, sleepH: null },
    { sleepQuality: 3, sleepH: null },
  ]);
  expect(asked("Minutes of sleep, May", 450, 480)).toMatchObject([{ sleepH: 7.5 }, { sleepH: 8 }]);
});

test("a grid of lifts in shorthand whose title names none is asked for its lift, never read as jumps", () => {
  for (const [one, other] of [
    ["5x5x80", "3x3x90"],
    ["5×5×80", "3×3×90"],
    ["5x5 80", "3x3 90"],
    ["5x5 @80kg", "3x3 @90kg"],
  ]) {
    const { table, understanding } = found("Spring", [
      ["", "12/5/2026", "13/5/2026"],
      ["Ilka", one, other],
    ]);
    expect([table, understanding.tabQuestions.map(({ about }) => about)]).toEqual([
      "Sets",
      ["exercise"],
    ]);
  }
});

test("a day of rest where the kind of a run would stand is no run, and its note is kept", () => {
  const rows = ["rest", "Rest day", "off", "Ruhetag", "frei"].map((kind, at) => [
    `2026-05-1${at}`,
    "Ilka",
    kind,
    "",
  ]);
  const { reading } = understandTable("Runs", [
    ["Date", "Athlete", "Kind", "Minutes", "Note"],
    ["2026-05-09", "Ilka", "easy", 40, ""],
    ...rows,
    ["2026-05-15", "Ilka", "rest", "", "calf tight"],
    ["2026-05-18", "Ilka", "rest", 0, ""],
    ["2026-05-19", "Ilka", "", 0, ""],
    ["2026-05-16", "Ilka", "off", 20, ""],
    ["2026-05-17", "Ilka", "restless", 30, ""],
  ]);
  expect(reading.records.map(({ kind, minutes }) => [kind, minutes])).toEqual([
    ["easy", 40],
    [null, 20],
    [null, 30],
  ]);
  expect(problems(reading)).toEqual(["C12 word-unknown: restless"]);
  expect(reading.notes!.map(({ cell, words }) => `${cell} ${words}`)).toEqual(["E8 calf tight"]);
  expect([reading.rowsRead, reading.rowsReported]).toEqual([11, 0]);
});
