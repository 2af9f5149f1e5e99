import { findTables } from "../../../src/rows/find-tables";
import { askedInWords } from "../../../src/rows/header/asked-in-words";
import { headerWords } from "../../../src/rows/header/header-words";
import { understandTable } from "../../../src/rows/read-table";

// Answers of a form as a coach finds them in a tab; invented.
const form = [
  [
    "Timestamp",
    "Name",
    "How many hours did you sleep?",
    "How well did you sleep? (1-5)",
    "Soreness (1-5)",
    "How tired are you today (0-10)?",
    "Mood out of 10",
    "How stressed are you? (1 to 5)",
    "Anything to tell us? Note",
  ],
  ["2026-04-06 08:47:22", "Ilka Brandmoor", 7.5, 4, 2, 3, 8, 1, ""],
  ["2026-04-07 07:12:03", "Ilka Brandmoor", 6, 2, 4, 6, 5, 3, "exams"],
];

test("the answers of a form are a diary, each question what it asks for", () => {
  expect(findTables([{ name: "Form responses 1", cells: form }])).toMatchObject([
    { table: "Diary", understanding: { questions: [] } },
  ]);
  const { reading } = understandTable("Diary", form);
  expect(reading.issues).toEqual([]);
  expect(reading.records[1]).toMatchObject({
    athlete: "Ilka Brandmoor",
    minute: 7 * 60 + 12,
    sleepH: 6,
    sleepQuality: 2,
    soreness: 4,
    fatigue: 6,
    mood: 5,
    stress: 3,
  });
});

test.each([
  ["Are you sore or tired?", [3, 4], null],
  ["How sore are you?", ["left calf", "no"], null],
  ["Sore calf", [3, 4], null],
  ["How stressed today?", [3, 4], "stress"],
  ["How stressed today?", [3, "very"], null],
  ["How stressed today?", [3, "school 3"], null],
  ["How stressed today?", [3, "A3"], null],
  ["How stressed today?", [3, true], null],
  ["How stressed today?", ["3 of 5", "~4"], "stress"],
  ["How stressed today?", [3, 4, 2, 3, "very"], "stress"],
  ["How stressed today?", [3, 4, 2, "very"], null],
  ["How is your mood today", ["7", "8"], "mood"],
  ["Wie viele Stunden hast du geschlafen", ["7,5", 8], "sleepH"],
  ["How are the shoes", [3, 4], null],
  ["Anything hurting or ill?", ["left calf", "no"], "pain"],
  ["Pains today", ["none"], "pain"],
  ["Any pain?", [3, 4], "pain"],
  ["Favourite shoes", ["the old ones"], null],
  ["How did you sleep (1-5)?", [3, 4], "sleepQuality"],
  ["How did you sleep?", [3, 4], null],
  ["Do you have any pain or injury today?", ["no", "left calf"], "pain"],
  ["Are you ill or tired?", [3], null],
  ["Injured?", ["no"], "pain"],
  ["Anything else?", ["no"], "note"],
  ["Is there anything we should know?", ["exams"], "note"],
  ["Any other comments", [3], "note"],
  ["Coach comments", ["hm"], null],
])("“%s” answered with %j asks for %s", (heading, sample, field) => {
  expect(askedInWords(headerWords(heading).words, sample)).toBe(field);
});

test("however many questions stand beside two headings the tab is a diary; sentences of other things are none", () => {
  const asking = (...questions: readonly string[]) =>
    findTables([
      {
        name: "Sheet1",
        cells: [
          ["Timestamp", "What is your name?", ...questions],
          ["2026-04-06 08:47:22", "Ilka Brandmoor", ...questions.map((_, at) => at + 1)],
        ],
      },
    ]).map(({ table, sureness }) => [table, sureness >= 0.6]);
  expect(
    asking("How long did you sleep?", "How sore are you today?", "How tired are you?", "Any pain?"),
  ).toEqual([["Diary", true]]);
  expect(asking("How many lessons today?", "How is the bus?", "What shoes have you?")).toEqual([]);
});

test("a question asked beside a column of its own takes nothing from it, and is asked about", () => {
  const { reading, questions } = understandTable("Diary", [
    ["Date", "Athlete", "Soreness", "How sore are you today?"],
    ["2026-04-06", "Ilka Brandmoor", 2, 9],
  ]);
  expect(reading.records[0]!.soreness).toBe(2);
  expect(questions.map(({ column }) => column)).toEqual([4]);
});

test("the ends of a scale beside anything but a rating say nothing", () => {
  const { columns } = understandTable("Sets", [
    ["Date", "Athlete", "Exercise", "Load (kg)", "Reps 1-5"],
    ["2026-04-06", "Ilka Brandmoor", "back squat", 60, 5],
  ]);
  expect(columns.find(({ heading }) => heading === "Reps 1-5")?.field).toBe(null);
});

test("a form is told by its questions alone, whatever its tab is called and however it asks the name", () => {
  const asked = [
    [
      "Timestamp",
      "What is your name?",
      "How many hours did you sleep last night?",
      "How sore are your legs? (1-5)",
      "Anything hurting or ill? Tell us",
      "Anything else?",
    ],
    ["2026-06-09 07:10:22", "Ilka Brandmoor", 7.5, 2, "sharp pain in left shin", ""],
  ];
  const [found, ...more] = findTables([{ name: "Responses", cells: asked }]);
  expect([found!.table, found!.sureness >= 0.6, more]).toEqual(["Diary", true, []]);
  expect(found!.understanding.reading.records).toMatchObject([
    {
      athlete: "Ilka Brandmoor",
      sleepH: 7.5,
      soreness: 2,
      note: "sharp pain in left shin",
    },
  ]);
});

test("a form of sets is told by its questions, each with its own answer", () => {
  const asked = [
    [
      "Timestamp",
      "Name",
      "Which lift?",
      "Weight on the bar (kg)",
      "Sets x reps",
      "Bar speed of each set",
      "How hard was it? (RPE 1-10)",
      "Comments",
    ],
    ["2026-06-09 18:12:22", "Ilka", "Back squat", "82,5", "3x5", "0,62, 0,60, 0,57", "8", "good"],
    ["2026-06-09 18:20:01", "Tomo", "Back squat", "60kg", "2 x 5", "0,71 0,70", "7,5", ""],
  ];
  const found = findTables([{ name: "Form responses 2", cells: asked }]);
  expect(found.map(({ table, understanding: { questions } }) => [table, questions])).toEqual([
    ["Sets", []],
  ]);
  const { reading } = found[0]!.understanding;
  expect(reading.issues).toEqual([]);
  expect(reading.records).toMatchObject([
    { athlete: "Ilka", loadKg: 82.5, reps: 5, setSpeed: 0.62, repsInReserve: 2, note: "good" },
    { athlete: "Ilka", loadKg: 82.5, reps: 5, setSpeed: 0.6 },
    { athlete: "Ilka", loadKg: 82.5, reps: 5, setSpeed: 0.57 },
    { athlete: "Tomo", loadKg: 60, reps: 5, setSpeed: 0.71, repsInReserve: 2.5 },
    { athlete: "Tomo", loadKg: 60, reps: 5, setSpeed: 0.7 },
  ]);
});

test.each([
  ["anything new or different today", "newToday"],
  ["anything unusual yesterday", "newToday"],
  ["anything the coach should know", "note"],
  ["is there anything your coach should know", "note"],
  ["anything to report", "note"],
  ["anything i should know", "note"],
  ["anything to eat", null],
])("%s asks for %s", (words, field) => {
  expect(askedInWords(words, ["new shoes"])).toBe(field);
});

test.each(["How hard was it? (0-10)", "How hard was the run?"])(
  "of a run %s asks its exertion",
  (asked) => {
    const cells = [
      ["Date", "Name", "Minutes", asked],
      ["2026-06-09", "Ilka", 40, 3],
    ];
    expect(understandTable("Runs", cells).reading.records).toMatchObject([{ exertion: 3 }]);
  },
);
