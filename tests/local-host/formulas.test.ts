import { tabChange } from "../../src/local-host/engine/tab-change";
import { day, opened } from "./opened";

const sets = [
  ["Date", "Athlete", "Load", "Moved well"],
  [day(46154), "Wren Oddie", 40, true],
  [day(46155), "Tomas Reyerson", 85, false],
  [null, null, 62.5, null],
];
const values = async (formula: string, tabs = { Sets: sets }) => {
  const host = await opened(tabs);
  const answer = await host.evaluate(formula);
  if (!answer.ok) throw new Error(answer.sentence);
  return answer.values;
};
const refusal = async (formula: string, tabs: Parameters<typeof opened>[0] = { Sets: sets }) => {
  const host = await opened(tabs);
  const answer = await host.evaluate(formula);
  return answer.ok ? `no refusal: ${JSON.stringify(answer.values)}` : answer.sentence;
};

test("dates arrive as Date, blanks as empty text, booleans as booleans, a result spreads over rows and columns", async () => {
  expect(await values("=KINDS(Sets!A2:D4)")).toEqual([
    ["date", "string", "number", "boolean"],
    ["date", "string", "number", "boolean"],
    ["blank", "blank", "number", "blank"],
  ]);
});

test("one cell arrives as its value, a left-out argument as undefined", async () => {
  expect(await values("=KINDS(Sets!A2, Sets!B4, Sets!D3, , 3)")).toEqual([
    ["date"],
    ["blank"],
    ["boolean"],
    ["none"],
    ["number"],
  ]);
});

test("a date keeps its day on the local clock", async () => {
  const host = await opened({ Sets: sets });
  const [line] = host.values("Sets").slice(1);
  const date = line![0] as Date;
  expect([date.getFullYear(), date.getMonth(), date.getDate()]).toEqual([2026, 4, 12]);
});

test("whole columns, ranges open below, and ranges of several columns reach every row", async () => {
  expect(await values("=TOTAL(Sets!C:C)")).toEqual([[187.5]]);
  expect(await values("=TOTAL(Sets!C2:C)")).toEqual([[187.5]]);
  expect(await values("=TOTAL(Sets!A2:D)")).toEqual([[187.5]]);
  expect(await values("=SHAPE(Sets!A1:D3)")).toEqual([["3 x 4"]]);
  expect(await values("=SHAPE(Sets!C3)")).toEqual([["one cell"]]);
});

test("a tab whose name needs quotes is read", async () => {
  expect(await values("=TOTAL('Oona''s log'!B:B)", { "Oona's log": [["x", 3]] } as never)).toEqual([
    [3],
  ]);
});

test("a missing tab is #REF!, never the formula's own tab", async () => {
  const host = await opened({ Squad: [[7, "=ECHO(Nowhere!A1)"]] });
  expect(host.values("Squad")).toEqual([[7, "#REF!"]]);
  expect(await refusal("=ECHO(Nowhere!A1)")).toMatch(/^#REF!.*does not exist/);
});

test("a missing function is named as such", async () => {
  const unknown = "#NAME?: the formula names a function or a range that does not exist.";
  expect(await refusal('=NO_SUCH("a;b")')).toBe(unknown);
  // As where decimals have a comma.
  expect(await refusal("=ECHO(1;2)")).toBe(
    `${unknown} Arguments are parted by commas here, not by semicolons.`,
  );
});

test("the sentence that a function throws is the answer, and stands beside #ERROR! in its cell", async () => {
  expect(await refusal("=REFUSES(1)")).toBe("Two sets are needed, 1 was found.");
  const host = await opened({ Squad: [["=REFUSES(0)"]] });
  const sheet = host.tab("Squad");
  expect(sheet.getRange("A1").getValue()).toBe("#ERROR!");
  expect(host.sentenceAt(sheet.inside.grid.getSheetId(), 0, 0)).toBe(
    "Two sets are needed, 0 was found.",
  );
});

test("a thrown sentence does not stop other formulas, then or later", async () => {
  const host = await opened({ Squad: [[5, "=REFUSES(A1)", "=ECHO(A1)"]] });
  host.write("Squad", "A1", [[6]]);
  await host.settled();
  expect(host.values("Squad")).toEqual([[6, "#ERROR!", 6]]);
  expect(host.sentenceAt(host.tab("Squad").inside.grid.getSheetId(), 0, 1)).toBe(
    "Two sets are needed, 6 was found.",
  );
});

test("an error in a cell that is handed over is shown, and the function is not called", async () => {
  const host = await opened({ Squad: [["=1/0", "=ECHO(A1)"]] });
  expect(host.values("Squad")[0]![1]).toBe("#DIV/0!");
});

test("quoted fractions and times stay text", async () => {
  expect(await values('=ECHO("1/2")')).toEqual([["1/2"]]);
  expect(await values('=ECHO("5:30")')).toEqual([["5:30"]]);
  expect(await values('=ECHO("5x15+5")')).toEqual([["5x15+5"]]);
});

test("results nest in the grid's own functions", async () => {
  expect(await values("=SUM(COUNT_TO(4))")).toEqual([[10]]);
  expect(await values('=IFERROR(REFUSES(1), "none")')).toEqual([["none"]]);
  expect(await values("=ECHO(1/2)")).toEqual([[0.5]]);
});

test("a spilled result with no room is #SPILL!, and what stood in its way is kept", async () => {
  const host = await opened({ Squad: [["=COUNT_TO(3)"], ["mine"]] });
  expect(host.values("Squad")).toEqual([["#SPILL!"], ["mine"]]);
  host.write("Squad", "A2", [[""]]);
  await host.settled();
  expect(host.values("Squad")).toEqual([
    [1, "row 1"],
    [2, "row 2"],
    [3, "row 3"],
  ]);
});

test("spilled cells are the formula's: reading their formulas gives none", async () => {
  const host = await opened({ Squad: [["=COUNT_TO(2)"]] });
  expect(host.tab("Squad").getRange("A1:B2").getFormulas()).toEqual([
    ["=COUNT_TO(2)", ""],
    ["", ""],
  ]);
});

test("an edit, an appended row and an undo are calculated", async () => {
  const host = await opened({ Sets: sets, Squad: [["=TOTAL(Sets!C2:C)"]] });
  const total = () => host.values("Squad")[0]![0];
  host.write("Sets", "C2", [[50]]);
  await host.settled();
  expect(total()).toBe(197.5);
  host.tab("Sets").appendRow(["", "", 100]);
  await host.settled();
  expect(total()).toBe(297.5);
  await host.undo();
  await host.settled();
  expect(total()).toBe(197.5);
});

test("formulas and their sentences follow rows put in above them", async () => {
  const host = await opened({ Squad: [[3], ["=REFUSES(A1)"], ["=ECHO(A1)"]] });
  host.tab("Squad").insertRowsAfter(1, 2);
  await host.settled();
  expect(host.tab("Squad").getRange("A5").getFormula()).toBe("=ECHO(A1)");
  const id = host.tab("Squad").inside.grid.getSheetId();
  expect(host.sentenceAt(id, 3, 0)).toBe("Two sets are needed, 3 was found.");
  expect(host.sentenceAt(id, 1, 0)).toBeUndefined();
});

test.each(["Log", "My log", "Oona's log"])(
  "renaming a tab to %s keeps direct and named ranges right",
  async (name) => {
    const host = await opened(
      { Sets: sets, Squad: [["=TOTAL(Sets!C:C)", "=TOTAL(Loads)", "=SUM(Loads)"]] },
      { names: [{ name: "Loads", ref: "Sets!$C:$C" }] },
    );
    expect(host.values("Squad")).toEqual([[187.5, 187.5, 187.5]]);
    host.tab("Sets").setName(name);
    await host.settled();
    host.write(name, "C2", [[50]]);
    await host.settled();
    expect(host.values("Squad")).toEqual([[197.5, 197.5, 197.5]]);
  },
);

test("several workbooks in one process answer each with its own functions", async () => {
  const script = (n: number) => `/** @customfunction */ function WHICH() { return ${n}; }`;
  const one = await opened({ A: [["=WHICH()"]] }, { bundleSource: script(1) });
  const two = await opened({ A: [["=WHICH()"]] }, { bundleSource: script(2) });
  expect([one.values("A"), two.values("A")]).toEqual([[[1]], [[2]]]);
});

test.each(["TODAY()", "ECHO(NOW())", 'IF(TRUE, ECHO(RAND()), "x")', "ECHO(A1, 1 + TODAY())"])(
  "%s inside a custom function is refused, as the online sheet never finishes it",
  async (inside) => {
    const formula = inside.startsWith("TODAY") ? `=ECHO(${inside})` : `=${inside}`;
    const host = await opened({ Squad: [[1], [formula]] });
    expect(host.values("Squad")[1]).toEqual(["#ERROR!"]);
    expect(host.sentenceAt(host.tab("Squad").inside.grid.getSheetId(), 1, 0)).toMatch(
      /never finishes loading.*Type the day into a cell/,
    );
  },
);

test("the same names in quotes or outside the brackets are let through", async () => {
  expect(await values('=ECHO("TODAY()")')).toEqual([["TODAY()"]]);
  expect(await values("=IF(TODAY()>0, ECHO(2))")).toEqual([[2]]);
});

test("a custom function reads, and is stopped from writing or showing anything", async () => {
  expect(await values("=TABS()")).toEqual([[2]]);
  expect(await refusal("=WRITES()")).toMatch(/permission to call Range.setValue/);
  expect(await refusal("=SHOWS()")).toMatch(/permission to call SpreadsheetApp.getUi/);
});

test("rows handed to one function are not spoilt for the next", async () => {
  const host = await opened({ Sets: sets, Squad: [["=SPOILS(Sets!A1:B2)", "=ECHO(Sets!A1)"]] });
  expect(host.values("Squad")).toEqual([["done", "Date"]]);
  expect(host.values("Sets")[0]![0]).toBe("Date");
});

const log = [
  [day(46154), "Wren Oddie", 40],
  [day(46155), "Tomas Reyerson", 85],
  [day(46156), "Ilka Brandmoor", 60],
];
const asGiven = "2026,Wren Oddie,40;2026,Tomas Reyerson,85;2026,Ilka Brandmoor,60";

test("rows turned over, dates moved in place and rows added are all undone for the next call", async () => {
  const ask = [["=TURNS_OVER(Sets!A1:C3)"], ["=JOINED(Sets!A1:C3)"]];
  const host = await opened({ Sets: log, Squad: ask, More: ask });
  expect(host.values("Squad")[1]![0]).toBe(asGiven);
  expect(host.values("More")[1]![0]).toBe(asGiven);
  host.write("Sets", "C2", [[87.5]]);
  await host.settled();
  expect(host.values("More")[1]![0]).toBe(asGiven.replace("85", "87.5"));
});

test("a range given twice to one call is two ranges", async () => {
  const host = await opened({ Sets: log, Squad: [["=TURNS_OVER(Sets!A1:C3, Sets!A1:C3)"]] });
  const [[same, other]] = host.values("Squad") as [[unknown, string]];
  expect(same).toBe(false);
  expect(other).toMatch(/ 2026 /);
});

test("after any change the formula reads what stands in the tab then", async () => {
  const host = await opened({ Sets: log, Squad: [["=JOINED(Sets!A1:D4)"]] });
  const read = async () => {
    await host.settled();
    return host.values("Squad")[0]![0];
  };
  const blank = ",,,";
  const line = (text: string) => text.replaceAll(";", ",;");
  const before = `${line(asGiven)},;${blank}`;
  expect(await read()).toBe(before);
  host.write("Sets", "A2:C2", [[new Date(2025, 0, 5), "Oona Petrakell", 30]]);
  const edited = before.replace("2026,Tomas Reyerson,85", "2025,Oona Petrakell,30");
  expect(await read()).toBe(edited);
  host.undo();
  expect(await read()).toBe(before);
  host.tab("Sets").getRange("A1").setNumberFormat("0");
  expect(await read()).toBe(before.replace("2026", "46154"));
  host.undo();
  host.write("Sets", "D1", [["=SEQUENCE(3)"]]);
  const counted = before.split(";").map((row, i) => (i < 3 ? `${row}${i + 1}` : row));
  expect(await read()).toBe(counted.join(";"));
  host.write("Sets", "D1", [["=SEQUENCE(2)"]]);
  expect(await read()).toBe([...counted.slice(0, 2), ...before.split(";").slice(2)].join(";"));
  host.write("Sets", "D1", [[""]]);
  expect(await read()).toBe(before);
  host.tab("Sets").deleteRow(1);
  await host.settled();
  expect(await read()).toBe(before.split(";").slice(1).join(";"));
});

test("a formula typed into a tab that had none is calculated, follows its cells, moves with its row and is undone", async () => {
  const host = await opened({ Sets: sets, Squad: [["=TOTAL(Sets!C:C)"]] });
  const stands = async (cell: string) => {
    await host.settled();
    const range = host.tab("Sets").getRange(cell);
    return [range.getFormula(), range.getValue()];
  };
  host.write("Sets", "F2", [["=TOTAL(C2:C3)"]]);
  expect(await stands("F2")).toEqual(["=TOTAL(C2:C3)", 125]);
  host.write("Sets", "C2", [[50]]);
  expect(await stands("F2")).toEqual(["=TOTAL(C2:C3)", 135]);
  host.tab("Sets").insertRowsAfter(1, 1);
  expect(await stands("F3")).toEqual(["=TOTAL(C3:C4)", 135]);
  host.write("Sets", "C3", [[60]]);
  expect(await stands("F3")).toEqual(["=TOTAL(C3:C4)", 145]);
  host.undo();
  expect(await stands("F3")).toEqual(["=TOTAL(C3:C4)", 135]);
  expect(host.values("Squad")).toEqual([[197.5]]);
});

test("what changes no cell's value leaves what is known of a tab; what is not known leaves nothing", () => {
  const change = (id: string, params: object = { subUnitId: "tab-1" }) =>
    tabChange(`sheet.mutation.${id}`, params);
  expect(change("data-validation-formula-mark-dirty", {})).toBeNull();
  expect(change("set-worksheet-col-width")).toBeNull();
  expect(change("insert-row")).toEqual({ tabId: "tab-1", rows: "all" });
  expect(change("of-a-later-version", {})).toEqual({ tabId: null, rows: "unknown" });
  const typed = { subUnitId: "tab-1", cellValue: { 4: { 2: { v: 50 } } } };
  expect(change("set-range-values", typed)).toEqual({ tabId: "tab-1", rows: [4] });
  const formula = { subUnitId: "tab-1", cellValue: { 4: { 2: { f: "=A1" } } } };
  expect(change("set-range-values", formula)).toEqual({ tabId: "tab-1", rows: "unknown" });
});

test("a formula given in the terminal must say which tab its cells are on", async () => {
  expect(await refusal("=TOTAL(C2:C9)")).toBe("Say which tab C2:C9 is on, as in Sets!C2:C9.");
  expect(await refusal("=TOTAL(C:C)")).toMatch(/which tab C:C is on/);
  expect(await values('=ECHO("A1")')).toEqual([["A1"]]);
  expect(await values("=LOG10(100)")).toEqual([[2]]);
});

test("a date result is a date again", async () => {
  const [[date]] = (await values("=A_DAY()")) as [[Date]];
  expect([date.getFullYear(), date.getMonth(), date.getDate()]).toEqual([2026, 4, 12]);
});

test("thirty thousand rows are written at once and counted by a formula", async () => {
  const host = await opened({ Sets: [["Load"]], Squad: [["=TOTAL(Sets!A2:B)"]] });
  const rows = Array.from({ length: 30_000 }, () => [1, 2]);
  host.tab("Sets").inside.ensure(30_001, 2);
  host.write("Sets", "A2:B30001", rows);
  await host.settled();
  expect(host.values("Squad")).toEqual([[90_000]]);
});

test("two long formulas that share a hash each give their own answer", async () => {
  const host = await opened({
    Sums: [
      [1, "=(A1+2073.8109)*012.760"],
      [null, "=(A1+8863.5929)*199.832"],
    ],
  });
  const [[, first], [, second]] = host.values("Sums") as [[number, number], [null, number]];
  expect(first).toBeCloseTo(2074.8109 * 12.76, 6);
  expect(second).toBeCloseTo(8864.5929 * 199.832, 6);
});
