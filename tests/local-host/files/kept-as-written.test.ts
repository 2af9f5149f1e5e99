import { strToU8, unzipSync, zipSync } from "fflate";
import type { TabData, WorkbookData } from "../../../src/local-host/workbook-data";
import { fileOf, firstTab, oneCell, partOf, read, saved, withPart } from "./xlsx-file";

const sheet = "xl/worksheets/sheet1.xml";
const relations = "xl/worksheets/_rels/sheet1.xml.rels";

/** A tab of a few rows whose part holds more of its own, each before what must follow it. */
async function tabWith(more: readonly (readonly [before: string, xml: string])[], links = "") {
  const plain = await fileOf((book) => {
    book.addWorksheet("Sets").addRows([
      ["Date", "Load"],
      ["Mon", 80],
      ["Tue", 81],
      ["Wed", 82],
    ]);
    book.addWorksheet("Coach's list").addRows([["Ilka"], ["Joss"], ["Maren"]]);
  });
  const filled = withPart(plain, sheet, (text) =>
    more.reduce((made, [before, xml]) => made.replace(before, () => xml + before), text),
  );
  return withPart(
    filled,
    relations,
    () =>
      `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${links}</Relationships>`,
  );
}

/** Hidden rows or columns from the second on, so many places on, as the grid moves them. */
const onBy = (by: number, hidden: readonly number[] = []) =>
  hidden.map((at) => (at < 1 ? at : at + by));

/** A row put in above the second, in the first tab. */
const rowPutIn = firstTab((tab: TabData) => ({
  ...tab,
  hiddenRows: onBy(1, tab.hiddenRows),
  cells: [tab.cells[0]!, [], ...tab.cells.slice(1)],
}));
const rowTakenOut = firstTab((tab: TabData) => ({
  ...tab,
  hiddenRows: onBy(-1, tab.hiddenRows),
  cells: tab.cells.filter((_, at) => at !== 1),
}));
const columnPutIn = firstTab((tab: TabData) => ({
  ...tab,
  hiddenColumns: onBy(1, tab.hiddenColumns),
  cells: tab.cells.map(([first, ...others]) => [first!, null, ...others]),
}));
const renamed = (workbook: WorkbookData): WorkbookData => ({
  ...workbook,
  tabs: [workbook.tabs[0]!, { ...workbook.tabs[1]!, name: "Squad" }],
});

describe("what a tab holds that is not shown here stays as it is written", () => {
  test.each([
    [
      "a protection with an old password",
      "<pageMargins",
      '<sheetProtection password="CC1A" sheet="1"/>',
    ],
    [
      "a range some may change",
      "<pageMargins",
      '<protectedRanges><protectedRange name="x" sqref="A2:A4"/></protectedRanges>',
    ],
    [
      "a filter with what it shows",
      "<pageMargins",
      '<autoFilter ref="A1:B4"><filterColumn colId="0"><filters><filter val="Mon"/></filters></filterColumn></autoFilter>',
    ],
    [
      "cells not to be marked as errors",
      "</worksheet>",
      '<ignoredErrors><ignoredError sqref="A2:A4" numberStoredAsText="1"/></ignoredErrors>',
    ],
    [
      "page breaks between columns",
      "</worksheet>",
      '<colBreaks count="1" manualBreakCount="1"><brk id="1" max="1048575" man="1"/></colBreaks>',
    ],
  ])("%s", async (_, before, xml) => {
    const original = await tabWith([[before, xml]]);
    expect(partOf(await saved(original, oneCell(1, 1, { value: 85 })), sheet)).toContain(xml);
  });

  test("links, to addresses and within the workbook, on ranges and on formulas", async () => {
    const links =
      '<hyperlinks><hyperlink ref="A2" r:id="rId7" tooltip="plan"/><hyperlink ref="B2:B3" location="\'Coach\'\'s list\'!A1:A3" display="list"/></hyperlinks>';
    const original = await tabWith(
      [["<pageMargins", links]],
      '<Relationship Id="rId7" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink" Target="https://example.org/plan?a=1&amp;b=2" TargetMode="External"/>',
    );
    const withFormula = withPart(original, sheet, (text) =>
      text.replace(/<c r="A2"[^>]*>.*?<\/c>/, '<c r="A2"><f>B2*2</f><v>160</v></c>'),
    );
    const bytes = await saved(withFormula, oneCell(2, 1, { value: 85 }));
    const [link] = /<hyperlink ref="A2"[^>]*>/.exec(partOf(bytes, sheet)) ?? [];
    const [, id] = /r:id="([^"]*)"/.exec(link ?? "") ?? [];
    expect(partOf(bytes, relations)).toMatch(
      new RegExp(`Id="${id}"[^>]*Target="https://example.org/plan\\?a=1&amp;b=2"`),
    );
    expect(partOf(bytes, sheet)).toContain("location=\"'Coach''s list'!A1:A3\"");
    expect((await read(bytes)).tabs[0]!.cells[1]![0]).toEqual({ value: 160, formula: "=B2*2" });
  });
});

describe("rows and columns put in and taken out take along what is not shown here", () => {
  const dressed = () =>
    fileOf((book) => {
      const tab = book.addWorksheet("Sets");
      tab.addRows([
        ["Athlete", "Load"],
        ["Ilka", 80],
        ["Joss", 81],
        ["Maren", 82],
        ["Tomas", 83],
      ]);
      const joss = tab.getCell("A3");
      joss.font = { strike: true, size: 14, name: "Georgia" };
      joss.fill = { type: "pattern", pattern: "solid", fgColor: { theme: 5 } as never };
      tab.getRow(3).hidden = true;
      tab.getCell("B4").border = { bottom: { style: "double" } };
      tab.getCell("B5").note = "sore";
      tab.addConditionalFormatting({
        ref: "B2:B5",
        rules: [
          { type: "cellIs", operator: "lessThan", formulae: ["$B$4"], priority: 1, style: {} },
        ],
      });
      tab.pageSetup.printArea = "A1:B5";
    });
  const row = (bytes: Uint8Array, name: string) => {
    const text = partOf(bytes, sheet);
    const shared = [...partOf(bytes, "xl/sharedStrings.xml").matchAll(/<t[^>]*>([^<]*)<\/t>/g)];
    const at = shared.findIndex(([, word]) => word === name);
    return [...text.matchAll(/<row\b[\s\S]*?<\/row>/g)].find(([one]) =>
      new RegExp(`t="s"><v>${at}</v>`).test(one),
    )![0];
  };
  const fontOf = (bytes: Uint8Array, name: string) => {
    const style = /<c r="A\d+" s="(\d+)"/.exec(row(bytes, name))?.[1];
    const styles = partOf(bytes, "xl/styles.xml");
    const cells = /<cellXfs[\s\S]*?<\/cellXfs>/.exec(styles)![0].match(/<xf\b[^>]*>/g)!;
    const font = /fontId="(\d+)"/.exec(cells[Number(style ?? 0)]!)![1];
    return styles.match(/<font>[\s\S]*?<\/font>/g)![Number(font)]!;
  };

  test.each([
    ["put in", rowPutIn, 4, "B3:B6", "$B$5", "$A1:$B6"],
    ["taken out", rowTakenOut, 2, "B2:B4", "$B$3", "$A1:$B4"],
  ])("a row %s above", async (_, change, at, ranges, compared, printed) => {
    const bytes = await saved(await dressed(), change);
    expect(fontOf(bytes, "Joss")).toMatch(/<strike\/>/);
    expect(fontOf(bytes, "Maren")).not.toMatch(/<strike\/>/);
    expect(row(bytes, "Joss")).toMatch(new RegExp(`^<row r="${at}"[^>]* hidden="1"`));
    expect(row(bytes, "Maren")).not.toContain("hidden");
    expect(partOf(bytes, sheet)).toContain(`<conditionalFormatting sqref="${ranges}">`);
    expect(partOf(bytes, sheet)).toContain(`<formula>${compared}</formula>`);
    expect(partOf(bytes, "xl/workbook.xml")).toContain(`!${printed}`);
    const again = await read(bytes);
    const names = again.tabs[0]!.cells.flatMap((line) => (line[0] ? [line[0].value] : []));
    const before = (await read(await dressed())).tabs[0]!.cells.map((line) => line[0]!.value);
    expect(names).toEqual(before.filter((name) => names.includes(name)));
  });

  test("rows that were only emptied stay where they are, with their checks", async () => {
    const checks =
      '<dataValidations count="1"><dataValidation type="whole" sqref="B2:B4"><formula1>1</formula1></dataValidation></dataValidations>';
    const original = await tabWith([["<pageMargins", checks]]);
    const emptied = firstTab((tab) => ({ ...tab, cells: [tab.cells[0]!] }));
    expect(partOf(await saved(original, emptied), sheet)).toContain('sqref="B2:B4"');
  });

  test.each([
    ["a row put in", rowPutIn, "B3:B5", "'Coach''s list'!$A$1:$A$3", "$B3&gt;0"],
    [
      "the first row of the checks taken out",
      rowTakenOut,
      "B2:B3",
      "'Coach''s list'!$A$1:$A$3",
      "$B2&gt;0",
    ],
    ["a column put in", columnPutIn, "C2:C4", "'Coach''s list'!$A$1:$A$3", "$C2&gt;0"],
    ["a tab renamed", renamed, "B2:B4", "'Squad'!$A$1:$A$3", "$B2&gt;0"],
  ])("checks after %s", async (_, change, ranges, list, own) => {
    const checks = `<dataValidations count="2"><dataValidation type="list" sqref="B2:B4"><formula1>'Coach''s list'!$A$1:$A$3</formula1></dataValidation><dataValidation type="custom" sqref="B2:B4"><formula1>$B2&gt;0</formula1></dataValidation></dataValidations>`;
    const text = partOf(await saved(await tabWith([["<pageMargins", checks]]), change), sheet);
    expect(text).toContain(
      `<dataValidation type="list" sqref="${ranges}"><formula1>${list}</formula1>`,
    );
    expect(text).toContain(
      `<dataValidation type="custom" sqref="${ranges}"><formula1>${own}</formula1>`,
    );
  });

  test("links, filters, protected ranges and breaks", async () => {
    const original = await tabWith([
      [
        "<pageMargins",
        '<protectedRanges><protectedRange name="x" sqref="A2:A4 A2"/></protectedRanges><autoFilter ref="A1:B4"><filterColumn colId="1"><filters><filter val="80"/></filters></filterColumn></autoFilter><hyperlinks><hyperlink ref="A2" location="Sets!A4"/></hyperlinks>',
      ],
      ["</worksheet>", '<colBreaks count="1"><brk id="2" man="1"/></colBreaks>'],
    ]);
    const down = partOf(await saved(original, rowPutIn), sheet);
    expect(down).toContain('sqref="A3:A5 A3"');
    expect(down).toContain('<autoFilter ref="A1:B5">');
    expect(down).toContain('<hyperlink ref="A3" location="Sets!A5"/>');
    const gone = partOf(await saved(original, rowTakenOut), sheet);
    expect(gone).toContain('sqref="A2:A3"');
    expect(gone).not.toContain("hyperlink");
    const right = partOf(await saved(original, columnPutIn), sheet);
    expect(right).toContain('<autoFilter ref="A1:C4"><filterColumn colId="2">');
    expect(right).toContain('<brk id="3" man="1"/>');
  });

  test("pictures, widths and the looks of notes", async () => {
    const png =
      "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
    const original = await fileOf((book) => {
      const tab = book.addWorksheet("Sets");
      tab.addRows([
        ["Athlete", "Load"],
        ["Ilka", 80],
        ["Joss", 81],
        ["Maren", 82],
      ]);
      tab.getColumn(2).hidden = true;
      const texts = [{ font: { bold: true }, text: "By I.B.:" }, { text: " sore" }];
      tab.getCell("B3").note = { texts };
      const picture = book.addImage({ base64: png, extension: "png" });
      tab.addImage(picture, { tl: { col: 1, row: 2 }, ext: { width: 9, height: 9 } });
    });
    const anchor = (bytes: Uint8Array) => {
      const text = partOf(bytes, "xl/drawings/drawing1.xml");
      return ["col", "row"].map((name) => new RegExp(`<xdr:${name}>(\\d+)<`).exec(text)?.[1]);
    };
    expect(anchor(original)).toEqual(["1", "2"]);
    const down = await saved(original, rowPutIn);
    expect(anchor(down)).toEqual(["1", "3"]);
    expect(partOf(await saved(original), "xl/comments1.xml")).toContain('ref="B3"');
    const right = await saved(original, columnPutIn);
    expect(anchor(right)).toEqual(["2", "2"]);
    expect(partOf(right, sheet)).toMatch(/<col min="3" max="3"[^>]* hidden="1"/);
    const comment = partOf(down, "xl/comments1.xml");
    expect(comment).toContain('ref="B4"');
    expect(comment).toMatch(/<b\/>/);
    expect(anchor(await saved(original, rowTakenOut))).toEqual(["1", "1"]);
  });

  test("a tab's own names go along when it is renamed", async () => {
    const original = withPart(await tabWith([]), "xl/workbook.xml", (text) =>
      text.replace(
        "</sheets>",
        "</sheets><definedNames><definedName name=\"first\" localSheetId=\"1\">'Coach''s list'!$A$1</definedName></definedNames>",
      ),
    );
    expect(partOf(await saved(original, renamed), "xl/workbook.xml")).toContain(
      '<definedName name="first" localSheetId="1">\'Squad\'!$A$1</definedName>',
    );
  });
});

test("notes are read and kept wherever the program that made the file put them", async () => {
  const usual = await fileOf((book) => {
    for (const name of ["Sets", "Jumps"]) {
      const tab = book.addWorksheet(name);
      tab.addRow([name]);
      tab.getCell("A1").note = `note of ${name}`;
    }
  });
  const parts = unzipSync(usual);
  for (const number of [1, 2]) {
    const places = [
      [`xl/comments${number}.xml`, `xl/comments/comment${number}.xml`],
      [`xl/drawings/vmlDrawing${number}.vml`, `xl/drawings/commentsDrawing${number}.vml`],
    ] as const;
    const path = `xl/worksheets/_rels/sheet${number}.xml.rels`;
    let text = partOf(usual, path);
    for (const [from, to] of places) {
      parts[to] = parts[from]!;
      delete parts[from];
      text = text.replace(from.replace("xl/", "../"), `/${to}`);
    }
    parts[path] = strToU8(text);
  }
  const elsewhere = zipSync(parts);
  const notes = async (bytes: Uint8Array) =>
    (await read(bytes)).tabs.map(({ cells }) => cells[0]![0]!.note);
  expect(await notes(elsewhere)).toEqual(["note of Sets", "note of Jumps"]);
  expect(await notes(await saved(elsewhere))).toEqual(["note of Sets", "note of Jumps"]);
});

test("a tab renamed keeps what is not shown here, though others came and went meanwhile", async () => {
  const original = await tabWith([
    ["<pageMargins", '<sheetProtection password="CC1A" sheet="1"/>'],
  ]);
  const change = (workbook: WorkbookData): WorkbookData => {
    const [sets] = workbook.tabs;
    const more = [...sets!.cells, [{ value: "Thu" }, { value: 83 }]];
    const added = { ...sets!, name: "Next week", cells: [[{ value: "Athlete" }]] };
    return { ...workbook, tabs: [added, { ...sets!, name: "Spring", cells: more }] };
  };
  const bytes = await saved(original, (workbook) => {
    const { tabs, ...rest } = change(workbook);
    return { ...rest, tabs: [...tabs, workbook.tabs[1]!] };
  });
  const parts = [1, 2, 3, 4].map((at) => partOf(bytes, `xl/worksheets/sheet${at}.xml`));
  const held = parts.filter((text) => text.includes('password="CC1A"'));
  expect(held).toHaveLength(1);
  expect(held[0]).toContain('<row r="5"');
  expect((await read(bytes)).tabs.map(({ name }) => name)).toEqual([
    "Next week",
    "Spring",
    "Coach's list",
  ]);
});

test("a tab may be renamed in capitals alone, and two may change their names", async () => {
  const named =
    (...names: string[]) =>
    (workbook: WorkbookData) => ({
      ...workbook,
      tabs: workbook.tabs.map((tab, place) => ({ ...tab, name: names[place]! })),
    });
  for (const names of [
    ["SETS", "Coach's list"],
    ["Coach's List", "sets"],
  ]) {
    const bytes = await saved(await tabWith([]), named(...names));
    const { tabs } = await read(bytes);
    expect(tabs.map(({ name }) => name)).toEqual(names);
    expect(tabs.map(({ cells }) => cells[1]![0]!.value)).toEqual(["Mon", "Joss"]);
  }
  await expect(saved(await tabWith([]), named("Sets", "sets"))).rejects.toThrow(
    "Two tabs are named “sets”",
  );
});

test("what is printed of a tab with an apostrophe in its name is printed again", async () => {
  const names =
    "<definedName name=\"_xlnm.Print_Area\" localSheetId=\"1\">'Coach''s list'!$A$1:$A$3</definedName><definedName name=\"_xlnm.Print_Titles\" localSheetId=\"1\">'Coach''s list'!$1:$1</definedName>";
  const original = withPart(await tabWith([]), "xl/workbook.xml", (text) =>
    text.replace("</sheets>", `</sheets><definedNames>${names}</definedNames>`),
  );
  expect(partOf(await saved(original), "xl/workbook.xml")).toContain(names);
  expect(partOf(await saved(original, renamed), "xl/workbook.xml")).toContain(
    names.replaceAll("Coach''s list", "Squad"),
  );
});

test("the tab that was open is open again, or another that can be seen", async () => {
  const original = withPart(await tabWith([]), "xl/workbook.xml", (text) =>
    text.replace(
      "<sheets>",
      '<bookViews><workbookView xWindow="0" yWindow="0" activeTab="1"/></bookViews><sheets>',
    ),
  );
  const activeTab = (bytes: Uint8Array) =>
    Number(/activeTab="(\d+)"/.exec(partOf(bytes, "xl/workbook.xml"))?.[1] ?? 0);
  expect(activeTab(await saved(original))).toBe(1);
  const taken = (workbook: WorkbookData) => ({ ...workbook, tabs: workbook.tabs.slice(0, 1) });
  expect(activeTab(await saved(original, taken))).toBe(0);
  const hidden = (workbook: WorkbookData) => ({
    ...workbook,
    tabs: workbook.tabs.map((tab, at) => (at === 1 ? { ...tab, hidden: true } : tab)),
  });
  expect(activeTab(await saved(original, hidden))).toBe(0);
});

test("pages are numbered on from one tab to the next, unless the coach gave a first number", async () => {
  const setup = async (given: string) => {
    const original = withPart(await tabWith([]), sheet, (text) =>
      text.replace(/<pageSetup\b[^>]*\/>/, "").replace("</worksheet>", `${given}</worksheet>`),
    );
    return /<pageSetup\b[^>]*>/.exec(partOf(await saved(original), sheet))?.[0] ?? "";
  };
  expect(await setup('<pageSetup orientation="landscape"/>')).not.toContain("irstPageNumber");
  expect(await setup('<pageSetup firstPageNumber="5" useFirstPageNumber="1"/>')).toMatch(
    / firstPageNumber="5" useFirstPageNumber="1"/,
  );
});
