import { plainTab } from "../../src/local-host/workbook-data";
import { type ServedPage, servedPage } from "./served-page";

let shown: ServedPage;
beforeAll(async () => {
  const rules = [{ ranges: ["C2:C9"], formula: "=AND($B2=$A$1,C2>0)", bold: true }];
  const lines = [[{ value: "out" }], [{ value: "Wren Oddie" }, { value: "out" }, { value: 1 }]];
  shown = await servedPage({
    workbook: {
      name: "Quillbeck",
      tabs: ["Open", "Sets"].map((name) => ({
        ...plainTab(name, lines),
        conditionalFormats: rules,
      })),
      names: [],
      properties: {},
    },
  });
});
afterAll(() => shown.close());

type Change = "row" | "column" | "first row out" | "undo";

const after = (tab: string, change: Change) =>
  shown.page.evaluate(
    ([name, what]) => {
      const { engine, undo, workbook } = globalThis.holdline!;
      const sheet = engine.book.getSheetByName(name!)!;
      if (what === "row") sheet.insertRowsBefore(0, 1);
      if (what === "column") sheet.insertColumnsBefore(0, 1);
      if (what === "first row out") sheet.deleteRows(1, 1);
      if (what === "undo") undo();
      return workbook()
        .tabs.find((one) => one.name === name)!
        .conditionalFormats.map(({ ranges, formula }) => `${ranges} ${formula}`);
    },
    [tab, change],
  );

// Formulas' references in a highlight move as those in cells do: as in the online sheet.
test.each(["Open", "Sets"])(
  "a highlight of the tab %s follows its lines, and undo",
  async (tab) => {
    expect(await after(tab, "row")).toEqual(["C3:C10 =AND($B3=$A$2,C3>0)"]);
    expect(await after(tab, "column")).toEqual(["D3:D10 =AND($C3=$B$2,D3>0)"]);
    expect(await after(tab, "undo")).toEqual(["C3:C10 =AND($B3=$A$2,C3>0)"]);
    expect(await after(tab, "undo")).toEqual(["C2:C9 =AND($B2=$A$1,C2>0)"]);
    expect(await after(tab, "first row out")).toEqual(["C2:C8 =AND($B2=$A$1,C2>0)"]);
    expect(await after(tab, "undo")).toEqual(["C2:C9 =AND($B2=$A$1,C2>0)"]);
  },
);
