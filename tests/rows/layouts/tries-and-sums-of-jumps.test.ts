import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortJump, today } from "./short";

// Tries of jump tests in columns of their own, and what is worked out from them; all invented.

const day = new Date(2026, 4, 5);
const read = (...cells: unknown[][]) => understandTable("Jumps", cells, { today });
const shown = (...cells: unknown[][]) =>
  read(...cells).reading.records.map((jump) => `${jump.test}: ${shortJump(jump)}`);
const droppedFrom = ({ records }: ReturnType<typeof read>["reading"]) =>
  records.map(({ test, heightCm, contactS, dropCm }) => [test, heightCm, contactS, dropCm]);
const three = ["CMJ: 05-05 Ilka 31.5 cm", "CMJ: 05-05 Ilka 32 cm", "CMJ: 05-05 Ilka 30.8 cm"];

test("numbered tries beside a column of tests are the jumps; their best and mean are asked about no more", () => {
  for (const tries of [
    ["Try 1", "Try 2", "Try 3"],
    ["Versuch 1", "Versuch 2", "Versuch 3"],
    ["1 (cm)", "2 (cm)", "3 (cm)"],
    ["Jump 1", "Jump 2", "Jump 3"],
    ["Set 1", "Set 2", "Set 3"],
  ]) {
    const cells = [
      ["Date", "Athlete", "Test", ...tries, "Best", "Average"],
      [day, "Ilka", "CMJ", 31.5, 32, 30.8, 32, 31.4],
      [day, "Bram", "SJ", 27, "x", "", 27, 27],
    ];
    expect(shown(...cells)).toEqual([...three, "SJ: 05-05 Bram 27 cm"]);
    const { reading, questions, layout } = read(...cells);
    expect([problems(reading), questions, layout]).toEqual([[], [], "tests across"]);
    const [found] = findTables([{ name: "Testing", cells }], { today });
    expect([found!.table, found!.sureness >= 0.6]).toEqual(["Jumps", true]);
  }
});

test("drop jumps that name no test: what was dropped from is none, the height beside the contact is theirs", () => {
  const rows = (box: string, height: string) =>
    read(
      ["Date", "Athlete", box, "Contact time (ms)", height],
      [day, "Ilka", 30, 220, 28],
      [day, "Bram", 45, 198, 35],
    );
  for (const [box, height] of [
    ["Box (cm)", "Height (cm)"],
    ["Drop height (cm)", "Jump height (cm)"],
  ] as const) {
    const { reading } = rows(box, height);
    expect(droppedFrom(reading)).toEqual([
      ["drop jump", 28, 0.22, 30],
      ["drop jump", 35, 0.198, 45],
    ]);
    expect(problems(reading)).toEqual([]);
  }
});

test("stacks of plates in a column “Box” beside contact times are what was jumped onto", () => {
  const { reading } = read(
    ["Date", "Athlete", "Box", "Contact time (ms)"],
    [day, "Ilka", "2x15+10", 220],
  );
  expect(reading.records.map(({ test, stackKg }) => [test, stackKg])).toEqual([
    ["Box", [15, 15, 10]],
    ["drop jump", []],
  ]);
  expect(droppedFrom(reading).map(([, , contactS, dropCm]) => [contactS, dropCm])).toEqual([
    [null, null],
    [0.22, null],
  ]);
});

test("tests named over merged cells above their tries and figures, with the unit they name", () => {
  const cells = [
    ["", "", "CMJ (in)", "", "", "Drop jump 30 cm", "", ""],
    ["Date", "Athlete", 1, 2, "Best", "Contact ms", "Height cm", "RSI"],
    [day, "Ilka", 10, 12, 12, 182, 28, 1.54],
  ];
  const { reading, questions } = read(...cells);
  expect(droppedFrom(reading)).toEqual([
    ["CMJ", 25.4, null, null],
    ["CMJ", 12 * 2.54, null, null],
    ["Drop jump 30 cm", 28, 0.182, 30],
  ]);
  expect([problems(reading), questions]).toEqual([[], []]);
});

test("a title above the headings changes no test that is named in them, nor does a line with figures", () => {
  const heads = ["Date", "Athlete", "CMJ", "SJ"];
  const own = ["CMJ: 05-05 Ilka 31.5 cm", "SJ: 05-05 Ilka 29 cm"];
  const under = (...line: unknown[]) => {
    const cells = [line, heads, [day, "Ilka", 31.5, 29]];
    const [found] = findTables([{ name: "Testing", cells }], { today });
    expect([found!.table, found!.sureness >= 0.6]).toEqual(["Jumps", true]);
    return shown(...cells);
  };
  for (const title of ["Contact: M. Grell", "Jump tests in spring", "CMJ and SJ"])
    expect([title, under(title, "", "", "")]).toEqual([title, own]);
  expect(under("", "", "", "in the hall")).toEqual(own);
  expect(under("", "", "CMJ contact", 180)).toEqual(own);
  const asked = (above: string) => {
    const cells = [
      ["", "", "", "", above],
      [...heads, "Feel"],
      [day, "Ilka", 31.5, 29, 4],
    ];
    return read(...cells).questions.map(({ heading }) => heading);
  };
  expect([asked(""), asked("Squat block")]).toEqual([["Feel"], ["Feel"]]);
  // A title names what the columns do not.
  expect(shown(["CMJ"], ["Date", "Athlete", 1, 2], [day, "Ilka", 31.5, 32])).toEqual(
    three.slice(0, 2),
  );
});

test("tries in each heading, and a best that stands alone and so is the figure", () => {
  for (const best of ["CMJ best", "CMJ – best", "CMJ: Best", "CMJ best of 3", "Best of CMJ"]) {
    const heads = ["Date", "Athlete", "CMJ 1", "CMJ 2", "CMJ 3", best];
    expect(shown(heads, [day, "Ilka", 31.5, 32, 30.8, 32])).toEqual(three);
  }
  expect(shown(["Date", "Athlete", "CMJ best", "SJ best"], [day, "Ilka", 32, 29])).toEqual([
    "CMJ best: 05-05 Ilka 32 cm",
    "SJ best: 05-05 Ilka 29 cm",
  ]);
});

test("tries without headings of their own, under tests merged over them, are each read once and of their test", () => {
  const squatJumps = ["SJ: 05-05 Ilka 28 cm", "SJ: 05-05 Ilka 29 cm"];
  const rows = [day, "Ilka", 31.5, 32, 30.8, 28, 29];
  expect(
    shown(["", "", "CMJ", "", "", "SJ", ""], ["Date", "Athlete", "", "", "", "", ""], rows),
  ).toEqual([...three, ...squatJumps]);
  // Their best says nothing that they do not, wherever its heading stands.
  const withBest = [day, "Ilka", 31.5, 32, 30.8, 32, 28, 29];
  for (const heads of [
    [
      ["", "", "CMJ", "", "", "", "SJ", ""],
      ["Date", "Athlete", "", "", "", "Best", "", ""],
    ],
    [["Date", "Athlete", "CMJ", "", "", "CMJ best", "SJ", ""]],
  ])
    expect(shown(...heads, withBest)).toEqual([...three, ...squatJumps]);
});

test("what is no sum of the tries beside them is asked about", () => {
  const heads = ["Date", "Athlete", "CMJ 1", "CMJ 2", "Best", "Surface"];
  const { questions } = read(heads, [day, "Ilka", 31.5, 32, 32, "turf"]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Surface"]);
});

test("where there are no tries a best or a mean of something else is asked about", () => {
  const heads = ["Date", "Athlete", "CMJ", "SJ", "Max power", "Mean"];
  const { reading, questions } = read(heads, [day, "Ilka", 32, 29, 3300, 30.5]);
  expect(reading.records.map(shortJump)).toEqual(["05-05 Ilka 32 cm", "05-05 Ilka 29 cm"]);
  expect(questions.map(({ heading }) => heading)).toEqual(["Max power", "Mean"]);
});

test("a jump's height beside one test's contact times is of that test", () => {
  const heads = ["Date", "Athlete", "Drop (cm)", "Contact (ms)", "Jump height (cm)"];
  const { records } = read(heads, [day, "Ilka", 30, 182, 28]).reading;
  expect(records.map(({ heightCm, contactS, dropCm }) => [heightCm, contactS, dropCm])).toEqual([
    [28, 0.182, 30],
  ]);
});

test("columns that are not numbered from one are no tries", () => {
  const heads = ["Date", "Athlete", "Test", "Height", "Try 2", "Try 3"];
  const { layout } = read(heads, [day, "Ilka", "CMJ", 32, 31, 30]);
  expect(layout).toBe("plain rows");
});

test("a jump among lifts with their sets side by side is a jump, each set one; under kilograms a number is no height", () => {
  const cells = (set: string) => [
    ["Date", "Athlete", "Exercise", set.replace("n", "1"), set.replace("n", "2")],
    [day, "Ilka", "Squat", 80, 85],
    [day, "Ilka", "CMJ", 31, 32],
    [day, "Ilka", "Box jump", "5x15 o", "5x15+5 x"],
    [day, "Bram", "Deadlift", 100, 105],
    [day, "Ada", "Deadlift", 90, 95],
  ];
  const bare = findTables([{ name: "Tuesday", cells: cells("Set n") }], { today });
  expect(
    bare.map(({ table, understanding }) => [table, understanding.reading.records.length]),
  ).toEqual([
    ["Sets", 6],
    ["Jumps", 4],
  ]);
  expect(shown(...cells("Set n")).slice(0, 2)).toEqual([
    "CMJ: 05-05 Ilka 31 cm",
    "CMJ: 05-05 Ilka 32 cm",
  ]);
  const kilograms = read(...cells("Set n kg")).reading;
  expect(problems(kilograms)).toEqual(["D3 jump-unread: 31", "E3 jump-unread: 32"]);
  expect(kilograms.records.map(shortJump)).toEqual([
    "05-05 Ilka 15 15 15 15 15 ✓",
    "05-05 Ilka 15 15 15 15 15 5 ✗",
  ]);
});
