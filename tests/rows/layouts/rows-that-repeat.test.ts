import { understandTable } from "../../../src/rows/read-table";
import { problems, shortSet, today } from "./short";

// Rows of a log that repeat others, and rows that count their own sets; all invented.

const read = (
  head: readonly string[],
  rows: readonly (readonly unknown[])[],
  tab: { readonly setsFirst?: boolean } = {},
) =>
  understandTable("Sets", [["Date", "Athlete", "Exercise", ...head], ...rows], { today, tab })
    .reading;
const log = (...rows: readonly (readonly unknown[])[]) =>
  read(["kg x sets x reps", "Speeds", "Note"], rows);
const shown = ({ records }: ReturnType<typeof log>) =>
  records.map((set) => [shortSet(set), set.exercise, set.note].filter(Boolean).join(" | "));

test("of a weekday with several lifts a row repeats its own, or all where it names none", () => {
  const tuesday = [
    ["2026-05-12", "Ilka", "Squat", "85x2x5", "", ""],
    ["2026-05-12", "Ilka", "bench", "40x1x8", "", ""],
  ];
  const own = log(...tuesday, ["2026-05-14", "Ilka", "back squat", "as Tue", ".6 .59", ""]);
  expect(shown(own).slice(3)).toEqual([
    "05-14 Ilka 1 85x5 0.6 | back squat",
    "05-14 Ilka 2 85x5 0.59 | back squat",
  ]);
  const all = log(...tuesday, ["2026-05-14", "Ilka", "as Tue", "", "", "late"]);
  expect(shown(all).slice(3)).toEqual([
    "05-14 Ilka 1 85x5 | Squat | late",
    "05-14 Ilka 2 85x5 | Squat",
    "05-14 Ilka 1 40x8 | bench",
  ]);
  expect([...problems(own), ...problems(all)]).toEqual([]);
  const neither = log(...tuesday, ["2026-05-14", "Ilka", "lunge", "as Tue", "", ""]);
  expect(problems(neither)).toEqual(["D4 nothing-to-repeat: as Tue"]);
});

test("speeds beside a day of several lifts are of none of them, and told", () => {
  const reading = log(
    ["2026-05-12", "Ilka", "squat", "85x2x5", "", ""],
    ["2026-05-12", "Ilka", "bench", "40x1x8", "", ""],
    ["2026-05-14", "Ilka", "as Tue", "", ".6 .59 .58", ""],
  );
  expect(shown(reading).slice(3)).toEqual([
    "05-14 Ilka 1 85x5 | squat",
    "05-14 Ilka 2 85x5 | squat",
    "05-14 Ilka 1 40x8 | bench",
  ]);
  expect(reading.issues.map(({ cell, code, facts }) => [cell, code, facts])).toEqual([
    ["E4", "speeds-too-many", { speeds: 3, sets: 3 }],
  ]);
  const word = log(
    ["2026-05-12", "Ilka", "squat", "85x2x5", "", ""],
    ["2026-05-12", "Ilka", "bench", "40x1x8", "", ""],
    ["2026-05-14", "Ilka", "as Tue", "", "fast", ""],
  );
  expect(problems(word)).toEqual(["E4 not-a-number: fast"]);
});

test("a mark under a row that could not be read repeats nothing from further up", () => {
  const after = (cell: string) =>
    problems(
      log(
        ["2026-05-12", "Ilka", "squat", "85x1x5", "", ""],
        ["2026-05-13", "Ilka", "squat", cell, "", ""],
        ["2026-05-14", "Ilka", "squat", '"', "", "own"],
      ),
    );
  expect(after("85?x")).toEqual(["D3 scheme-unread: 85?x", 'D4 nothing-to-repeat: "']);
  expect(after("as Sun")).toEqual(["D3 nothing-to-repeat: as Sun", 'D4 nothing-to-repeat: "']);
  expect(after("90x1x5")).toEqual([]);
  const part = log(
    ["2026-05-12", "Ilka", "squat", "85x1x5", "", ""],
    ["2026-05-12", "Ilka", "bench", "40?x", "", ""],
    ["2026-05-14", "Ilka", "as Tue", "", "", ""],
  );
  expect(problems(part)).toEqual(["D3 scheme-unread: 40?x", "C4 nothing-to-repeat: as Tue"]);
});

test("a mark keeps the row's own note", () => {
  const reading = log(
    ["2026-05-12", "Ilka", "squat", "85x1x5", "", ""],
    ["2026-05-14", "Ilka", "squat", '"', "", "own"],
  );
  expect(shown(reading)[1]).toBe("05-14 Ilka 1 85x5 | squat | own");
});

const counted = (...rows: readonly (readonly unknown[])[]) =>
  read(["Load", "Sets", "Reps", "Speeds"], rows, { setsFirst: true });

test("sets that stand in two ways are none, ask nothing of their speeds, and no row repeats them", () => {
  const twice = ["2026-05-12", "Ilka", "squat", "85x3x5", 4, "", ".6 .58"];
  const told = "E3 meaning-twice: 4";
  const first = ["2026-05-11", "Ilka", "squat", "80x1x5", "", "", ""];
  const after = (...row: readonly unknown[]) =>
    counted(first, twice, ["2026-05-13", "Ilka", "squat", ...row]);
  for (const [repeats, ...more] of [
    ['"', "", "", ""],
    ['"', 3, 5, ""],
    ["as Tue", "", "", ""],
  ]) {
    const reading = after(repeats, ...more);
    expect(problems(reading)).toEqual([told, `D4 nothing-to-repeat: ${repeats}`]);
    expect(reading.records.map(shortSet)).toEqual(["05-11 Ilka 1 80x5"]);
  }
});

test("a count of all sets agrees with shorthand in two parts", () => {
  const reading = counted(
    ["2026-05-11", "Ilka", "squat", "85x4x5+1x3", 5, "", ""],
    ["2026-05-12", "Ilka", "squat", "80x1x5", "", "", ""],
  );
  expect(problems(reading)).toEqual([]);
  expect(reading.records.map(({ reps }) => reps)).toEqual([5, 5, 5, 5, 3, 5]);
});

test("a count that cannot be is told with its heading and what could be", () => {
  const facts = (sets: unknown) =>
    counted(
      ["2026-05-11", "Ilka", "squat", "85x3x5", sets, "", ""],
      ["2026-05-12", "Ilka", "squat", "80x3x5", 3, "", ""],
    ).issues.map(({ code, facts }) => [code, facts]);
  expect(facts(13)).toEqual([["implausible", { low: 1, high: 12, unit: "", heading: "Sets" }]]);
  expect(facts("few")).toEqual([["not-a-number", { heading: "Sets" }]]);
});
