import { type ColumnAnswer, withAnswers } from "../../../src/rows/header/column-answers";
import { recogniseHeader } from "../../../src/rows/header/recognise-header";

const line = ["Date", "Load", "Rep 1", "Rep 2", "Rep 3", " Weather ", ""];
const header = recogniseHeader("Sets", line);

/** Columns from 1 by their meaning once the answers stand, the unknown ones by themselves. */
const answered = (...columns: readonly ColumnAnswer[]) => {
  const { fields, repColumns, unknown } = withAnswers(header, { columns }, line);
  return {
    fields: Object.fromEntries(
      Object.entries(fields).map(([name, { index }]) => [name, index + 1]),
    ),
    reps: repColumns.map(({ index }) => index + 1),
    unknown: unknown.map((index) => index + 1),
  };
};
const plain = { fields: { day: 1, load: 2 }, reps: [3, 4, 5], unknown: [6] };

test("without an answer the header stays as it is", () => {
  expect(withAnswers(header, null, line)).toBe(header);
  expect(withAnswers(header, { columns: [] }, line)).toBe(header);
  expect(answered({ column: 7, field: null })).toEqual(plain);
});

test.each([
  ["a meaning moved", [{ column: 2, field: "bar" }], { fields: { day: 1, bar: 2 } }],
  [
    "a meaning for a strange heading",
    [{ column: 6, field: "note" }],
    { fields: { day: 1, load: 2, note: 6 }, unknown: [] },
  ],
  [
    "a meaning for no heading",
    [{ column: 7, field: "note" }],
    { fields: { day: 1, load: 2, note: 7 } },
  ],
  [
    "a meaning taken from another column",
    [{ column: 6, field: "load" }],
    { fields: { day: 1, load: 6 }, unknown: [] },
  ],
  ["a column left alone", [{ column: 2, field: null }], { fields: { day: 1 } }],
  ["a repetition left alone", [{ column: 4, field: null }], { reps: [3, 5] }],
  [
    "a repetition made a note",
    [{ column: 3, field: "note" }],
    { fields: { day: 1, load: 2, note: 3 }, reps: [4, 5] },
  ],
  [
    "another repetition put first",
    [{ column: 6, field: "rep 1" }],
    { reps: [6, 3, 4, 5], unknown: [] },
  ],
  ["put between", [{ column: 6, field: "rep 3" }], { reps: [3, 4, 6, 5], unknown: [] }],
  ["put last", [{ column: 6, field: "rep 12" }], { reps: [3, 4, 5, 6], unknown: [] }],
  ["the third made the first", [{ column: 5, field: "rep 1" }], { reps: [5, 3, 4] }],
  ["a repetition that only gets a unit", [{ column: 4, unit: "cm/s" }], {}],
  ["the first that only gets a unit", [{ column: 3, unit: "cm/s" }], {}],
  ["the last that only gets a unit", [{ column: 5, unit: "cm/s" }], {}],
  ["a column that only gets a unit", [{ column: 2, unit: "lb" }], {}],
  [
    "the load made the second repetition",
    [{ column: 2, field: "rep 2" }],
    { fields: { day: 1 }, reps: [3, 2, 4, 5] },
  ],
  [
    "a meaning that only looks like a repetition",
    [{ column: 6, field: "rep 2 x" }],
    { fields: { day: 1, load: 2, "rep 2 x": 6 }, unknown: [] },
  ],
  [
    "another that does",
    [{ column: 6, field: "half rep 2" }],
    { fields: { day: 1, load: 2, "half rep 2": 6 }, unknown: [] },
  ],
])("%s", (_, columns, now) => {
  expect(answered(...columns)).toEqual({ ...plain, ...now });
});

test("what is answered of a column stands beside what its heading says", () => {
  const { fields, repColumns } = withAnswers(
    header,
    {
      columns: [
        { column: 1, dateOrder: "month first" },
        { column: 2, unit: "lb" },
        { column: 4, unit: "cm/s" },
        { column: 6, field: "note" },
      ],
    },
    line,
  );
  expect(fields.day).toEqual({ ...header.fields.day, dateOrder: "month first" });
  expect(fields.load).toMatchObject({ heading: "Load", unit: { name: "lb" } });
  expect(fields.load).not.toHaveProperty("dateOrder");
  expect(repColumns.map(({ unit }) => unit?.name)).toEqual([undefined, "cm/s", undefined]);
  expect(fields.note).toEqual({ index: 5, unit: null, heading: "Weather", words: "weather" });
});

test("another meaning leaves a column the unit and the words of its heading", () => {
  const pounds = ["Date", "Load (lb)", "Rep 1 (cm/s)"];
  const said = (column: ColumnAnswer) =>
    withAnswers(recogniseHeader("Sets", pounds), { columns: [column] }, pounds);
  expect(said({ column: 2, field: "bar" }).fields.bar).toMatchObject({
    words: "load",
    unit: { name: "lb" },
  });
  expect(said({ column: 3, field: "speed" }).fields.speed).toMatchObject({
    words: "rep 1",
    unit: { name: "cm/s" },
  });
});

test("a column past the row of headings has a meaning when the coach gives it one", () => {
  const { fields } = withAnswers(header, { columns: [{ column: 9, field: "note" }] }, line);
  expect(fields.note).toEqual({ index: 8, unit: null, heading: "", words: "" });
});
