import { findTables } from "../../../src/rows/find-tables";
import { understandTable } from "../../../src/rows/read-table";
import { problems, shortJump, today } from "./short";

// Jumps with a column that says whether the box was cleared; athletes, days and figures are invented.

const day = new Date(2026, 2, 4);
const read = (headings: readonly string[], ...rows: readonly (readonly unknown[])[]) => {
  const cells = [
    ["Date", "Name", ...headings],
    ...rows.map((row, at) => [day, ["Ragna", "Dag", "Pia"][at], ...row]),
  ];
  const { reading, questions } = understandTable("Jumps", cells, { today, title: "Jumping" });
  return {
    jumps: reading.records.map(
      (jump) =>
        `${jump.test} ${shortJump(jump)}${jump.heightCm !== null && jump.cleared !== null ? `, cleared: ${jump.cleared}` : ""}`,
    ),
    problems: problems(reading),
    asked: questions.map(({ heading }) => heading),
  };
};

test("y and n beside a stack say whether it was cleared, and nothing of the drop jump", () => {
  expect(
    read(
      ["DJ 30 cm", "Box stack", "ok?"],
      [31.2, "3x15", "n"],
      [36.4, "3x15+5", "y"],
      [27, "2x15", ""],
    ),
  ).toEqual({
    jumps: [
      "DJ 30 03-04 Ragna 31.2 cm",
      "Box 03-04 Ragna 15 15 15 ✗",
      "DJ 30 03-04 Dag 36.4 cm",
      "Box 03-04 Dag 15 15 15 5 ✓",
      "DJ 30 03-04 Pia 27 cm",
      "Box 03-04 Pia 15 15 ✓",
    ],
    problems: [],
    asked: [],
  });
});

test("what the stack’s own cell says of its tries stands", () => {
  expect(
    read(["Box stack", "Cleared?"], ["3x15 xo", "y"], ["3x15 x", "y"], ["3x15 o", "n"]),
  ).toEqual({
    jumps: [
      "Box 03-04 Ragna 15 15 15 ✗",
      "Box 03-04 Ragna 15 15 15 ✓",
      "Box 03-04 Dag 15 15 15 ✗",
      "Box 03-04 Pia 15 15 15 ✗",
    ],
    problems: [],
    asked: [],
  });
});

test("a box kept in centimetres is cleared or not; of two boxes nobody knows which", () => {
  const one = read(["Box jump (cm)", "CMJ (cm)", "Cleared?"], [60, 31, "n"], [55, 33, "y"]);
  expect(one.problems).toEqual([]);
  expect(one.jumps.map((jump) => jump.replace(/ 03-04/, ""))).toEqual([
    "Box jump Ragna 60 cm, cleared: false",
    "CMJ Ragna 31 cm",
    "Box jump Dag 55 cm, cleared: true",
    "CMJ Dag 33 cm",
  ]);
  const two = read(["Box stack", "Box jump (cm)", "Cleared?"], ["3x15", 60, "n"]);
  expect([two.problems, two.asked]).toEqual([["E1 heading-unknown: Cleared?"], ["Cleared?"]]);
});

test("a box to tick that is not ticked is a miss where others are, and nothing where none is", () => {
  const boxes = (...ticks: readonly unknown[]) =>
    read(["Box stack", "Cleared"], ...ticks.map((tick) => ["3x15", tick])).jumps.map((jump) =>
      jump.slice(-1),
    );
  expect(boxes(true, false)).toEqual(["✓", "✗"]);
  expect(boxes(false, false)).toEqual(["✓", "✓"]);
});

test("a log of jumps with a column of y and n is no calendar of races with a runner called ok?", () => {
  const cells = [
    ["Datum", "Name", "DJ 30 cm", "DJ 30 contact (ms)", "Box stack", "ok?"],
    ["04.03.26", "Ragna Holt", "31,2", "", "3x15", "n"],
    ["04.03.26", "Dag Ensor", "37,0", "186", "3x15+5", "y"],
    ["11.03.26", "Dag Ensor", "36,1", "190", "3x15+5", "y"],
    ["11.03.26", "Pia Tolland", "26,2", "-", "2x15", "y"],
  ];
  expect(findTables([{ name: "Jumping", cells }], { today }).map(({ table }) => table)).toEqual([
    "Jumps",
  ]);
});
