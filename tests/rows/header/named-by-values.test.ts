import { findTables } from "../../../src/rows/find-tables";
import { isJumpColumn } from "../../../src/rows/layout/wide/test-heading";
import { understandTable } from "../../../src/rows/read-table";

// Logs whose headings do not say day or load; athletes, days and figures are invented.

const today = 20600;
const rows = [
  ["Thu 5 Mar 26", "Harriet Moss", "TBDL", "62.5kg x 5 x 3", 0.78, 30],
  ["Thu 5 Mar 26", "Colin Dray", "trap bar", "80kg x 5 x 3", 0.76, 30],
  ["Thu 12 Mar 26", "Colin Dray", "trap bar", "-", "", 20],
];
const fields = (headings: readonly string[], body: readonly (readonly unknown[])[] = rows) =>
  Object.fromEntries(
    understandTable("Sets", [headings, ...body], { today, title: "Thursdays" }).columns.flatMap(
      ({ heading, field }) => (field === null ? [] : [[heading, field]]),
    ),
  );

test.each(["Session", "Thursday", "Gym night"])(
  "the one column of days is the day, also under “%s”, and the one of schemes under “Top set” the loads",
  (heading) => {
    expect(fields([heading, "Who", "Lift", "Top set", "m/s", "Hops"])).toMatchObject({
      [heading]: "day",
      "Top set": "scheme",
    });
  },
);

test("such a log is one of sets, its hops are no jump test of 30 cm", () => {
  const cells = [["Session", "Who", "Lift", "Top set (kg x reps x sets)", "m/s", "Hops"], ...rows];
  const found = findTables([{ name: "Thursdays", cells }], { today });
  expect(
    found.map(({ table, understanding: { reading, questions } }) => [
      table,
      reading.records.length,
      questions.map(({ heading }) => heading),
    ]),
  ).toEqual([["Sets", 6, ["Hops"]]]);
});

test("counts of jumps are no test; with a unit, or one jump named, they are", () => {
  for (const count of ["Hops", "Jumps", "No. of hops", "Number of jumps", "Pogos done", "Sprünge"])
    expect([count, isJumpColumn(count)]).toEqual([count, false]);
  for (const test of ["Hops (cm)", "Hop", "Hop test", "Box jumps", "Drop jumps cm", "CMJ"])
    expect([test, isJumpColumn(test)]).toEqual([test, true]);
});

test("under any other heading days and schemes are asked about, not taken", () => {
  const found = fields(["Xyz", "Who", "Lift", "Qrs", "m/s", "Hops"]);
  expect(Object.values(found)).toEqual(["athlete", "exercise", "speed"]);
});

test("of two columns of days, a date that is no day of all, or a single row, none is taken", () => {
  const two = rows.map((row) => [...row, "Thu 5 Mar 26"]);
  expect(
    fields(["Session", "Who", "Lift", "Load", "m/s", "Hops", "Entered"], two),
  ).not.toHaveProperty("Session");
  const some = [...rows, ["later", "Colin Dray", "trap bar", "80kg x 5 x 3", 0.7, 20]];
  expect(fields(["Session", "Who", "Lift", "Top set", "m/s", "Hops"], some)).not.toHaveProperty(
    "Session",
  );
  expect(
    fields(["Session", "Who", "Lift", "Top set", "m/s", "Hops"], rows.slice(0, 1)),
  ).not.toHaveProperty("Session");
});

test("a column with a heading of its own keeps it: a numbered set, loads beside a scheme of the warm-up", () => {
  expect(fields(["Date", "Who", "Lift", "Top set", "kg", "Hops"])).toMatchObject({
    "Top set": "set",
    kg: "load",
  });
  const numbered = rows.map(([day, who, lift, , speed]) => [day, who, lift, 1, speed, 80]);
  expect(fields(["Date", "Who", "Lift", "Top set", "m/s", "kg"], numbered)).toMatchObject({
    "Top set": "set",
  });
});

test("who may do what has days of its own: none is taken for its first", () => {
  const { columns } = understandTable(
    "Availability",
    [
      ["Athlete", "Seen", "Status"],
      ["Harriet Moss", "2026-03-05", "out"],
      ["Colin Dray", "2026-03-12", "full"],
    ],
    { today, title: "Availability" },
  );
  expect(columns.find(({ heading }) => heading === "Seen")!.field).toBeNull();
});
