import { type ConditionalFormat, plainTab } from "../../src/local-host/workbook-data";
import { opened } from "./opened";

const lines = [[{ value: "out" }, { value: 80 }], [{ value: "full" }], [{ value: "out" }]];
const rule = (formula: string, range = "D3:D9"): ConditionalFormat => ({
  ranges: [range],
  formula,
  bold: true,
});

/** The one highlight of a tab after what a script, or a coach, did to its lines. */
async function after(
  formula: string,
  change: (sheet: {
    insertRowsBefore: (at: number, count: number) => unknown;
    insertColumnsBefore: (at: number, count: number) => unknown;
    deleteRows: (at: number, count: number) => unknown;
    deleteColumns: (at: number, count: number) => unknown;
  }) => unknown,
) {
  const tabs = [
    plainTab("Open", lines),
    { ...plainTab("Sets", lines), conditionalFormats: [rule(formula)] },
  ];
  const host = await opened({}, { tabs });
  change(host.engine.book.getSheetByName("Sets")!);
  await host.settled();
  return host.workbook().tabs[1]!.conditionalFormats;
}

test.each([
  ["a column put in", "=$C3>$C$5", "=$D3>$D$5", "E3:E9"],
  ["a column put in", '=AND($B3="out",C3>$A$1)', '=AND($C3="out",D3>$A$1)', "E3:E9"],
])("after %s %s is %s, though another tab is open", async (_, formula, now, range) => {
  expect(await after(formula, (sheet) => sheet.insertColumnsBefore(1, 1))).toEqual([
    rule(now, range),
  ]);
});

test.each([
  ["=$C3>$C$5", "=$C5>$C$7"],
  ["=COUNTIF($D$3:$D$9,D3)>1", "=COUNTIF($D$5:$D$11,D5)>1"],
  ["=COUNTIF($D:$D,D3)>1", "=COUNTIF($D:$D,D5)>1"],
  ["=Open!$A$3=D3", "=Open!$A$3=D5"],
])("after two rows put in above %s is %s", async (formula, now) => {
  expect(await after(formula, (sheet) => sheet.insertRowsBefore(0, 2))).toEqual([
    rule(now, "D5:D11"),
  ]);
});

test("a range that a row is put into reaches over it", async () => {
  expect(await after("=COUNTIF($D$3:$D$9,D3)>1", (sheet) => sheet.insertRowsBefore(5, 1))).toEqual([
    rule("=COUNTIF($D$3:$D$10,D3)>1", "D3:D10"),
  ]);
});

test("a highlight whose first row is taken out is read from the first that is left", async () => {
  expect(await after("=$C3>$C$5", (sheet) => sheet.deleteRows(2, 1))).toEqual([
    rule("=$C3>$C$4", "D3:D8"),
  ]);
  expect(await after("=$C3>$C$5", (sheet) => sheet.deleteColumns(2, 1))).toEqual([
    rule("=#REF!>#REF!", "C3:C9"),
  ]);
});
