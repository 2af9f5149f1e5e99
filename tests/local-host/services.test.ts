import { opened } from "./opened";

/** What a script's lines give or throw, run as a server function beside an empty tab "Plan". */
async function script(code: string, tabs: Parameters<typeof opened>[0] = { Plan: [["a"]] }) {
  const host = await opened(tabs);
  return { host, answer: () => host.run("onSheet", [code]) };
}
const plan = 'var s = ss.getSheetByName("Plan");';
const refused = async (code: string) => (await script(plan + code)).answer;
const given = async (code: string) => (await script(plan + code)).answer();

test("rows that do not fit the range are refused with both sizes", async () => {
  expect(await refused('s.getRange("A1:B2").setValues([[1, 2]])')).toThrow(
    "The data has 1 but the range has 2",
  );
  expect(await refused('s.getRange("A1:B2").setValues([[1], [2]])')).toThrow(
    "The data has 1 but the range has 2",
  );
  expect(await refused('s.getRange("A1:B1").setNumberFormats([["0"]])')).toThrow(/columns/);
});

test("a method that does not exist says so by name", async () => {
  expect(await refused('s.getRange("A1").setColour("red")')).toThrow(
    "setColour is not a function of Range",
  );
  expect(await refused("s.getRows()")).toThrow("getRows is not a function of Sheet");
  expect(await refused("SpreadsheetApp.openById('x')")).toThrow(/not a function of SpreadsheetApp/);
});

test("ranges outside the tab and unreadable addresses are refused", async () => {
  expect(await refused('s.getRange("nonsense")')).toThrow("Range not found");
  expect(await refused("s.getRange(0, 1)")).toThrow(/outside the dimensions/);
  expect(await refused("s.getRange(1, 99999)")).toThrow(/outside the dimensions/);
  expect(await refused("s.getRange(1.5, 1)")).toThrow(/outside the dimensions/);
});

test("written text is read as though typed, unless the cell is text or an apostrophe leads", async () => {
  expect(
    await given(`
      s.getRange("B1:B2").setNumberFormat("@");
      s.getRange("A1:A8").setValues([["01234"], ["=1+1"], ["'=1+1"], ["12%"], ["TRUE"], ["5x15+5"], ["1,250"], [""]]);
      s.getRange("B1:B2").setValues([["01234"], ["=1+1"]]);
      return s.getRange("A1:B8").getValues().concat(s.getRange("A2:B3").getFormulas());`),
  ).toEqual([
    [1234, "01234"],
    ["", "=1+1"],
    ["=1+1", ""],
    [0.12, ""],
    [true, ""],
    ["5x15+5", ""],
    [1250, ""],
    ["", ""],
    ["=1+1", ""],
    ["", ""],
  ]);
});

test("dates, times and day-month text become dates", async () => {
  expect(
    await given(`
      s.getRange("A1:A4").setValues([[new Date(2026, 4, 12)], ["2026-05-12"], ["12/5/2026"], ["5:30"]]);
      var v = s.getRange("A1:A4").getValues();
      return [v[0][0].getTime() === v[1][0].getTime(), v[1][0].getTime() === v[2][0].getTime(), v[2][0].getMonth(), v[3][0].getHours()];`),
  ).toEqual([true, true, 4, 5]);
});

test("a value that no cell holds is refused", async () => {
  expect(await refused('s.getRange("A1").setValue({})')).toThrow(/cell's value/);
  expect(await refused('s.getRange("A1").setValue(0/0)')).toThrow(/Cannot write NaN/);
});

test("looks, notes, frozen rows and formats are read back as written", async () => {
  expect(
    await given(`
      var r = s.getRange("A1");
      r.setBackground("#fde0c4").setFontWeight("bold").setNote("Race week").setNumberFormat("0.00");
      s.setFrozenRows(1);
      return [r.getBackground(), r.getNote(), r.getNumberFormat(), s.getFrozenRows(), r.setNote("").getNote()];`),
  ).toEqual(["#fde0c4", "Race week", "0.00", 1, ""]);
});

test("conditional format rules are replaced as a whole and follow rows", async () => {
  const { host, answer } = await script(`${plan}
    var rule = function (word, colour) {
      return SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=$A2="' + word + '"')
        .setBackground(colour).setBold(true).setRanges([s.getRange("A2:C9")]).build();
    };
    s.setConditionalFormatRules([rule("old", "#000000")]);
    s.setConditionalFormatRules([rule("slipping", "#fde0c4"), rule("rising", "#d9e7f6")]);
    return s.getConditionalFormatRules().map(function (r) { return r.getBooleanCondition().getCriteriaValues()[0]; });`);
  expect(answer()).toEqual(['=$A2="slipping"', '=$A2="rising"']);
  host.tab("Plan").insertRowsAfter(1, 3);
  await host.settled();
  expect(host.workbook().tabs[0]!.conditionalFormats).toEqual([
    { ranges: ["A5:C12"], formula: '=$A5="slipping"', background: "#fde0c4", bold: true },
    { ranges: ["A5:C12"], formula: '=$A5="rising"', background: "#d9e7f6", bold: true },
  ]);
});

test("a rule without range or condition is refused", async () => {
  expect(await refused("SpreadsheetApp.newConditionalFormatRule().build()")).toThrow(/condition/);
  expect(
    await refused('SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied("=1").build()'),
  ).toThrow(/range/);
});

test("a list of allowed values stays with its cells", async () => {
  const { host, answer } = await script(`${plan}
    s.getRange("B2:B9").setDataValidation(SpreadsheetApp.newDataValidation()
      .requireValueInList(["full", "modified, light", "out"]).setAllowInvalid(true).setHelpText("May do").build());`);
  answer();
  expect(host.workbook().tabs[0]!.validations).toEqual([
    {
      range: "B2:B9",
      values: ["full", "modified, light", "out"],
      refusesOthers: false,
      help: "May do",
    },
  ]);
});

test("tags follow their rows, go with them, and are there after reopening", async () => {
  const { host, answer } = await script(`${plan}
    s.addDeveloperMetadata("table", "plan");
    s.getRange("3:3").addDeveloperMetadata("week", "4");
    s.getRange("5:5").addDeveloperMetadata("week", "5");`);
  answer();
  host.tab("Plan").insertRowsAfter(1, 1);
  host.tab("Plan").deleteRow(6);
  const again = await opened({}, host.workbook());
  const tags = (range: string) =>
    again.run("onSheet", [
      `return ss.getSheetByName("Plan").getRange("${range}").getDeveloperMetadata().map(function (m) { return m.getValue(); })`,
    ]);
  expect([tags("4:4"), tags("3:3"), tags("6:6")]).toEqual([["4"], [], []]);
  expect(
    again.run("onSheet", ['return ss.getSheetByName("Plan").getDeveloperMetadata()[0].getValue()']),
  ).toBe("plan");
});

test("a tab keeps its number when tabs are moved, renamed and reopened", async () => {
  const { host, answer } = await script(
    'ss.insertSheet("First", 0); ss.getSheetByName("Plan").setName("Next week"); return ss.getSheetByName("Next week").getSheetId();',
  );
  const number = answer();
  const again = await opened({}, host.workbook());
  expect(again.run("onSheet", [`return ss.getSheetById(${number}).getName()`])).toBe("Next week");
});

test("protection warns, and is described", async () => {
  expect(
    await given(
      'return s.getRange("A1:B2").protect().setDescription("Plan").setWarningOnly(true) !== null;',
    ),
  ).toBe(true);
});

test("document properties hold text of 9 KB a value and 500 KB in all, and are saved", async () => {
  const host = await opened({ Plan: [] });
  const run = (code: string) =>
    host.run("onSheet", [`var p = PropertiesService.getDocumentProperties(); ${code}`]);
  run('p.setProperty("a", "1").setProperty("b", "2").deleteProperty("a")');
  expect(run("return [p.getProperty('a'), p.getProperties()]")).toEqual([null, { b: "2" }]);
  expect(host.workbook().properties).toMatchObject({ b: "2" });
  expect(() => run('p.setProperty("a", new Array(9300).join("x"))')).toThrow(/too large/);
  expect(() =>
    run('for (var i = 0; i < 60; i++) p.setProperty("k" + i, new Array(9000).join("x"))'),
  ).toThrow(/quota/);
});

test("a lock is held by one at a time", async () => {
  expect(
    await given(
      "var a = LockService.getDocumentLock(); a.waitLock(1); var second = a.tryLock(1); a.releaseLock(); return [second, a.tryLock(1)];",
    ),
  ).toEqual([false, true]);
});

test("a lock that a failed run left held is free for the next", async () => {
  const host = await opened({ Plan: [] });
  const lock = "var a = LockService.getDocumentLock();";
  expect(() => host.run("onSheet", [`${lock} a.waitLock(1); throw new Error("lost")`])).toThrow(
    "lost",
  );
  expect(host.run("onSheet", [`${lock} return a.tryLock(1)`])).toBe(true);
});

test("another run can neither take a lock that is held nor free it", async () => {
  const host = await opened({ Plan: [] });
  const lock = "var a = LockService.getDocumentLock();";
  const others: unknown[] = [];
  host.calls.watch = {
    before: (call) => {
      if (call !== "SpreadsheetApp.flush") return;
      const tried = `${lock} var had = [a.tryLock(1), a.hasLock()]; a.releaseLock(); return had;`;
      others.push(host.run("onSheet", [tried]), host.run("onSheet", [tried]));
    },
  };
  const flushed = `${lock} a.waitLock(1); SpreadsheetApp.flush(); return a.hasLock();`;
  expect(host.run("onSheet", [flushed])).toBe(true);
  expect(others).toEqual([
    [false, false],
    [false, false],
  ]);
});

test("the cache refuses more than 100 KB", async () => {
  expect(
    await refused('CacheService.getDocumentCache().put("a", new Array(102500).join("x"))'),
  ).toThrow(/too large/);
});

test("the add-on's menu and sidebar reach the page", async () => {
  const shown: string[] = [];
  const host = await opened(
    { Plan: [] },
    { hooks: { sidebar: (title: string, html: string) => shown.push(title, html) } },
  );
  expect(host.menus).toEqual([
    {
      title: "Holdline",
      items: [
        { label: "Open", functionName: "openIt" },
        { label: "Check", functionName: "check" },
      ],
    },
  ]);
  host.run("openIt");
  expect(shown).toEqual(["Holdline", "<p>Squad</p>"]);
  expect(() => host.run("onSheet", ['HtmlService.createHtmlOutputFromFile("Other")'])).toThrow(
    "No HTML file named Other was found.",
  );
});

test("the bridge carries plain data and refuses dates, functions and hidden names", async () => {
  const host = await opened({ Plan: [] });
  expect(host.run("givesBack", [{ list: [1, "a", null, undefined], left: undefined }])).toEqual({
    list: [1, "a", null, null],
  });
  expect(host.run("givesNothing")).toBeNull();
  expect(() => host.run("givesDate")).toThrow(/answer holds a Date at day/);
  expect(() => host.run("givesBack", [new Date(0)])).toThrow(/argument holds a Date/);
  expect(() => host.run("givesBack", [() => 1])).toThrow(/function/);
  expect(() => host.run("hidden_")).toThrow("Script function not found: hidden_");
  expect(() => host.run("noSuch")).toThrow("Script function not found: noSuch");
  expect(() => host.run("toString")).toThrow("Script function not found: toString");
  expect(() => host.run("says")).toThrow("No rows yet.");
});

test("every service call is counted, and can be made to fail before or after it takes effect", async () => {
  const host = await opened({ Plan: [["a"]] });
  const write = 's.getRange("A1").setValue("b")';
  host.calls.reset();
  host.run("onSheet", [plan + write]);
  expect(Object.fromEntries(host.calls.counts)).toEqual({
    "SpreadsheetApp.getActive": 1,
    "Spreadsheet.getSheetByName": 1,
    "Sheet.getRange": 1,
    "Range.setValue": 1,
  });
  const fail = (call: string) => {
    if (call === "Range.setValue") throw new Error("Service error: Spreadsheets");
  };
  host.calls.watch = { before: fail };
  expect(() => host.run("onSheet", [plan + write.replace("b", "c")])).toThrow(/Service error/);
  host.calls.watch = { after: fail };
  expect(() => host.run("onSheet", [plan + write.replace("b", "d")])).toThrow(/Service error/);
  host.calls.watch = {};
  expect(host.values("Plan")).toEqual([["d"]]);
});
