import { questionsOfReading } from "../../../src/rows/header/questions-of-reading";
import { IssueLog } from "../../../src/rows/issue-log";
import { understandTable } from "../../../src/rows/read-table";
import { today } from "../layouts/short";

type Row = readonly unknown[];
const decided = (head: Row, rows: readonly Row[], more = {}) =>
  understandTable("Sets", [head, ...rows], { today, ...more });
const head = ["Date", "Athlete", "Exercise", "Load (kg)"];
const row = (...more: unknown[]) => ["2026-05-12", "Ilka", "squat", 65, ...more];
const rows = (count: number, ...more: unknown[]) =>
  Array.from({ length: count }, () => row(...more));

test("what is decided of each column: heading, meaning, unit, how surely, by what, with three samples", () => {
  const { columns, questions } = decided(
    [...head, "Rep 1", "Rep 2", "", "Weather", "Coach notes", "Empty"],
    rows(3, 0.6, 0.59, "12 May", "rain", "late", ""),
  );
  expect(columns).toEqual([
    {
      column: 1,
      heading: "Date",
      field: "day",
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["2026-05-12"],
    },
    {
      column: 2,
      heading: "Athlete",
      field: "athlete",
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["Ilka"],
    },
    {
      column: 3,
      heading: "Exercise",
      field: "exercise",
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["squat"],
    },
    {
      column: 4,
      heading: "Load (kg)",
      field: "load",
      unit: "kg",
      sureness: 1,
      by: "heading",
      samples: ["65"],
    },
    {
      column: 5,
      heading: "Rep 1",
      field: "rep 1",
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["0.6"],
    },
    {
      column: 6,
      heading: "Rep 2",
      field: "rep 2",
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["0.59"],
    },
    {
      column: 8,
      heading: "Weather",
      field: null,
      unit: null,
      sureness: 0,
      by: "nothing",
      samples: ["rain"],
    },
    {
      column: 9,
      heading: "Coach notes",
      field: null,
      unit: null,
      sureness: 1,
      by: "heading",
      samples: ["late"],
    },
    {
      column: 7,
      heading: "",
      field: null,
      unit: null,
      sureness: 0,
      by: "nothing",
      samples: ["12 May"],
    },
  ]);
  expect(questions.map(({ column, about, guess }) => [column, about, guess])).toEqual([
    [8, "meaning", null],
    [7, "meaning", null],
  ]);
  expect(questions[0]!.choices).toContain("reps");
  expect(questions[0]!.choices).not.toContain("load");
});

test("a column that nobody explains is asked about however late its first cell stands", () => {
  const rows = Array.from({ length: 1400 }, (_, at) =>
    at === 1300
      ? ["2026-05-12", "Ilka", "squat", 65, "late", "later"]
      : ["2026-05-12", "Ilka", "squat", 65, "", false],
  );
  const { questions } = decided(["Date", "Athlete", "Exercise", "Load (kg)", "Zq", ""], rows);
  expect(questions.map(({ column, samples }) => [column, samples])).toEqual([
    [5, ["late"]],
    [6, ["later"]],
  ]);
});

test("a column of dates without a heading is the day; one with a strange heading is asked about", () => {
  const dated = (heading: string) =>
    decided(
      [heading, "Athlete", "Exercise", "Load (kg)"],
      ["2026-05-12", "2026-05-13", "2026-05-14"].map((day) => [day, "Ilka", "squat", 65]),
    );
  expect(dated("").columns.at(-1)).toMatchObject({
    column: 1,
    field: "day",
    sureness: 0.9,
    by: "values",
  });
  expect(dated("").reading.rowsRead).toBe(3);
  expect(dated("Xyz").questions).toMatchObject([{ column: 1, guess: "day" }]);
  expect(dated("Xyz").reading.rowsRead).toBe(0);
});

test.each([
  ["Exercize", "Exercise", "near heading"],
  ["Exrecise", "Exercise", "near heading"],
  ["Exarcose", "Exercise", "near heading"],
  ["Atlhete", "Athlete", "near heading"],
  ["Exrcse", "Exercise", "nothing"],
  ["Nam", "Athlete", "nothing"],
])("“%s” in place of “%s” is taken by its %s", (heading, meant, by) => {
  const { columns } = decided(
    head.map((one) => (one === meant ? heading : one)),
    rows(4),
  );
  const field = by === "nothing" ? null : meant.toLowerCase();
  expect(columns.find((one) => one.heading === heading)).toMatchObject({ field, by });
});

test("a near heading counts only where four in five of its values bear it out", () => {
  const near = (...cells: unknown[]) => {
    const { columns } = decided(
      ["Date", "Athlete", "Exercise", "Laod"],
      cells.map((cell) => ["2026-05-12", "Ilka", "squat", cell]),
    );
    return columns.find(({ heading }) => heading === "Laod")!.by;
  };
  expect(near(60, 65, 70, 75, "x")).toBe("near heading");
  expect(near(60, 65, 70, "y", "x")).toBe("nothing");
});

test("a heading of three letters is near to none, and no meaning that has its column is taken again", () => {
  const beside = (heading: string, cell: unknown) => {
    const { columns, reading } = decided([...head, heading], rows(4, cell));
    expect(reading.records.map(({ loadKg, gym }) => [loadKg, gym])).toEqual(
      Array(4).fill([65, ""]),
    );
    return columns.at(-1)!.by;
  };
  // One letter from "gym" and from "load".
  expect(beside("Gymn", "north")).toBe("nothing");
  expect(beside("Loadd", 80)).toBe("nothing");
});

test("a heading two letters short is near to a long one", () => {
  const { columns } = decided([...head, "Repettons"], rows(4, 5));
  expect(columns.at(-1)).toMatchObject({ field: "reps", by: "near heading" });
});

test("a strange heading is told without spaces around it, none at all as nothing", () => {
  const { questions } = decided([...head, " Weather ", null], rows(3, "rain", "late"));
  expect(questions.map(({ column, heading }) => [column, heading])).toEqual([
    [5, "Weather"],
    [6, ""],
  ]);
});

test("a cell past the row of headings is in no column", () => {
  const { columns, questions } = decided(head, rows(4, "late"));
  expect([columns.length, questions]).toEqual([4, []]);
});

test("a heading that two meanings are near to is neither", () => {
  // One letter from "sets" and from "reps".
  const { columns } = decided([...head, "Seps"], rows(4, 3));
  expect(columns.at(-1)).toMatchObject({ field: null, by: "nothing" });
});

test("a heading whose values hardly bear it out is half sure; answered, it is sure", () => {
  const cells = [row(5), row("x"), row("y"), row("z"), row("a"), row("b")];
  const sure = (more = {}) =>
    decided([...head, "Reps"], cells, more).columns.find(({ heading }) => heading === "Reps")!;
  expect(sure()).toMatchObject({ field: "reps", sureness: 0.5, by: "heading" });
  expect(sure({ answers: { columns: [{ column: 5, field: "reps" }] } })).toMatchObject({
    field: "reps",
    sureness: 1,
    by: "answer",
  });
  const fifth = decided([...head, "Reps"], cells.slice(0, 5)).columns.at(-1)!;
  expect(fifth.sureness).toBe(1);
});

test("ratings under “ok” are asked about unless the coach has said; a lone contradicted heading is not", () => {
  const rated = rows(5, 3);
  expect(decided([...head, "ok"], rated).questions).toMatchObject([
    { column: 5, heading: "ok", about: "meaning", samples: ["3"] },
  ]);
  const answers = { columns: [{ column: 5, field: "movedWell" }] };
  expect(decided([...head, "ok"], rated, { answers }).questions).toEqual([]);
  expect(decided([...head, "Reps"], rows(5, 77)).questions).toEqual([]);
});

test("blank cells under a filled one are said to repeat it", () => {
  const merged = [row(), ["", "", "", 66], ["", "", "", 67], ["2026-05-13", "", "", 68]];
  const carried = (cells: readonly Row[]) =>
    decided(head, cells).columns.map(({ carried }) => carried === true);
  expect(carried(merged)).toEqual([true, true, true, false]);
  expect(carried(rows(4))).toEqual([false, false, false, false]);
});

test("units and date orders that stay open become one question a column", () => {
  const { questions } = decided(
    ["Date", "Athlete", "Exercise", "Load"],
    [135, 145, 155, 165, 175].map((load, at) => [`${at + 1}/6/2026`, "Ilka", "squat", load]),
  );
  expect(questions).toMatchObject([
    {
      column: 4,
      heading: "Load",
      about: "unit",
      guess: null,
      choices: ["kg", "lb"],
      samples: ["135", "145", "155"],
    },
    { column: 1, heading: "Date", about: "date order", choices: ["day first", "month first"] },
  ]);
});

test("what is open of a whole row is no question of a column; a column without a heading has none", () => {
  const log = new IssueLog("Sets");
  log.add("date-order-unsettled", 1, -1, "", {}, true);
  log.add("date-order-unsettled", 1, 0, "5/6", {}, true);
  const nothing = { records: [], rowsRead: 0, rowsReported: 2, rowsBlank: 0, rowsHeading: 1 };
  const asked = questionsOfReading({ ...nothing, issues: log.issues }, [["", ""], ["5/6"]], 1, 2);
  expect(asked.map(({ column, heading, samples }) => [column, heading, samples])).toEqual([
    [1, "", ["5/6"]],
  ]);
});
