import type { WorkbookData } from "../../src/local-host/workbook-data";
import { opened } from "./opened";

const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [
    {
      name: "Next week",
      cells: [
        [
          { value: "Athlete", style: { bold: true, background: "#ededf1", align: "center" } },
          { value: "Date", style: { wrap: true, upright: "top" } },
          { value: "Typed speed", note: "First work set" },
        ],
        [
          { value: "Wren Castellow" },
          { value: 46199, format: "yyyy-mm-dd" },
          { value: null, format: "@" },
          { value: true },
          { value: "01234", format: "@" },
          { value: 3, formula: "=COUNT_TO(1)+2", fills: [[3, "#VALUE!"]] },
        ],
        [
          null,
          null,
          null,
          { value: "far", style: { italic: true, colour: "#934400", upright: "middle" } },
        ],
      ],
      frozenRows: 1,
      frozenColumns: 2,
      columnWidths: [122, null, 76],
      conditionalFormats: [
        { ranges: ["A2:C9"], formula: '=$A2="slipping"', background: "#fde0c4", bold: true },
        {
          ranges: ["A2:C9", "E2:E9"],
          formula: '=$A2="too few rows"',
          colour: "#50565d",
          italic: true,
        },
      ],
      validations: [{ range: "B2:B9", values: ["full", "out, not cleared"], help: "May do" }],
      merged: ["A5:B5"],
    },
    {
      name: "Kept",
      cells: [[{ value: 1 }]],
      frozenRows: 0,
      frozenColumns: 0,
      columnWidths: [],
      conditionalFormats: [],
      validations: [],
      hidden: true,
    },
  ],
  names: [{ name: "Loads", ref: "'Next week'!$A$2:$A$9" }],
  properties: { rules: "{}" },
};

test("a workbook that was opened and not changed comes back the same", async () => {
  const host = await opened({}, workbook);
  const back = host.workbook();
  expect(back.name).toBe("Quillbeck");
  expect(back.names).toEqual(workbook.names);
  expect(back.properties).toMatchObject(workbook.properties);
  expect(back.tabs.map(trimmed)).toEqual(workbook.tabs.map(trimmed));
});

test("calculated values are kept beside their formulas, spilled cells are left to the formula", async () => {
  const host = await opened({ Squad: [["=COUNT_TO(2)"]] });
  expect(host.workbook().tabs[0]!.cells).toEqual([
    [
      {
        value: 1,
        formula: "=COUNT_TO(2)",
        fills: [
          [1, "row 1"],
          [2, "row 2"],
        ],
      },
      null,
    ],
    [null, null],
  ]);
});

test("a formula that has no format gets none from the cells it names", async () => {
  const host = await opened({
    Sets: [[{ value: 46199, format: "d mmm yyyy" }, "=A1+7", "=VLOOKUP(46199,A1:A1,1,FALSE)"]],
  });
  expect(host.workbook().tabs[0]!.cells[0]).toEqual([
    { value: 46199, format: "d mmm yyyy" },
    { value: 46206, formula: "=A1+7" },
    { value: 46199, formula: "=VLOOKUP(46199,A1:A1,1,FALSE)" },
  ]);
});

test("a second copy of a copy is the same", async () => {
  const once = (await opened({}, workbook)).workbook();
  const twice = (await opened({}, once)).workbook();
  expect(twice).toEqual(once);
});

/** Empty ends of rows say nothing. */
function trimmed(tab: WorkbookData["tabs"][number]) {
  const cells = tab.cells.map((line) => {
    const last = line.findLastIndex((cell) => cell !== null);
    return line.slice(0, last + 1);
  });
  return { ...tab, cells };
}

test("Undo takes nothing back that the coach did not do: lists, highlights, notes and names stay", async () => {
  const host = await opened({}, workbook);
  await host.settled();
  const asOpened = host.workbook();
  for (let presses = 0; presses < 20; presses++) host.undo();
  expect(host.workbook()).toEqual(asOpened);
});
