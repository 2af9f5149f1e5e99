import { opened } from "./opened";

test("a write of five thousand cells is undone and done again as a whole", async () => {
  const host = await opened({
    Sets: [
      ["a", { value: 2, format: "0.0", style: { bold: true } }],
      ["=1+1", "x"],
    ],
  });
  const before = host.workbook().tabs;
  host.write(
    "Sets",
    "A1:E1000",
    Array.from({ length: 1000 }, (_, row) => [row, "new", true, new Date(2026, 4, 12), "=2*3"]),
  );
  await host.settled();
  const after = host.values("Sets");
  expect([after.length, after[999]![4]]).toEqual([1000, 6]);
  host.undo();
  await host.settled();
  expect(host.workbook().tabs).toEqual(before);
  host.redo();
  await host.settled();
  expect(host.values("Sets")).toEqual(after);
});

test("what one action wrote in several steps, over the same cells too, one Undo takes back", async () => {
  const host = await opened({ Plan: [["Ilka Brandmoor", 40]] });
  const before = host.workbook().tabs;
  host.run("onSheet", [
    'var s = ss.getSheetByName("Plan"); var r = s.getRange("A1:B1");' +
      'r.setValues([["Wren Oddie", 1]]); r.setValues([["Tomas Reyerson", 2]]); r.setFontWeight("bold");' +
      's.getRange("A3").setNote("by Holdline"); ss.insertSheet("Next week").getRange("A1").setValue("Athlete"); return 1;',
  ]);
  await host.settled();
  expect(host.workbook().tabs.map(({ name }) => name)).toEqual(["Plan", "Next week"]);
  host.undo();
  await host.settled();
  expect(host.workbook().tabs).toEqual(before);
  host.redo();
  await host.settled();
  expect(host.values("Plan")[0]).toEqual(["Tomas Reyerson", 2]);
  expect(host.values("Next week")).toEqual([["Athlete"]]);
});

test("an action that failed half way is undone as far as it went", async () => {
  const host = await opened({ Plan: [["a"]] });
  expect(() =>
    host.run("onSheet", [
      'ss.getSheetByName("Plan").getRange("A1").setValue("b"); throw new Error("Stopped.");',
    ]),
  ).toThrow("Stopped.");
  host.undo();
  expect(host.values("Plan")).toEqual([["a"]]);
});
