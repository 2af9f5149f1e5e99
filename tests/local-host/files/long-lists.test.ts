import { writeXlsx } from "../../../src/local-host/files/xlsx/write-xlsx";
import { plainTab, type WorkbookData } from "../../../src/local-host/workbook-data";
import { firstTab, partOf, read, saved } from "./xlsx-file";

const squad = Array.from({ length: 40 }, (_, at) => `Athlete number ${at + 1}`);
const commas = ["Brandmoor, Ilka", 'Reyerson, "Tom"'];
const workbook: WorkbookData = {
  name: "Log",
  tabs: [
    {
      ...plainTab("Sets", [[{ value: "Athlete" }]]),
      validations: [
        { range: "A2:A", values: squad, refusesOthers: false },
        { range: "B2:B9", values: commas, refusesOthers: true },
        { range: "C2:C9", values: ["y", "n"], refusesOthers: true },
      ],
    },
    {
      ...plainTab("Jumps", [[{ value: "Athlete" }]]),
      validations: [{ range: "A2:A", values: squad, refusesOthers: false }],
    },
  ],
  names: [],
  properties: { choices: "mine" },
};

test("a squad too long to stand with its cells, and names with a comma, are offered again", async () => {
  const written = await writeXlsx(workbook, null);
  if (!written.ok) throw new Error(written.refusal.code);
  const again = await read(written.value);
  expect(again.tabs.map(({ validations }) => validations)).toEqual(
    workbook.tabs.map(({ validations }) => validations),
  );
  expect(again.tabs.map(({ name }) => name)).toEqual(["Sets", "Jumps"]);
  expect(again.properties).toEqual(workbook.properties);
  // ECMA-376 part 1, 18.3.1.33: 255 signs in quotes, or a range.
  expect(partOf(written.value, "xl/worksheets/sheet1.xml")).toContain(
    "<formula1>_holdline!$B$1:$B$40</formula1>",
  );
});

test("one list changed, the others offer what they did", async () => {
  const written = await writeXlsx(workbook, null);
  if (!written.ok) throw new Error(written.refusal.code);
  const [list, ...others] = workbook.tabs[0]!.validations;
  const longer = { ...list!, values: ["Athlete number 0", ...squad] };
  const change = firstTab((tab) => ({ ...tab, validations: [longer, ...others] }));
  const again = await read(await saved(written.value, change));
  expect(again.tabs[0]!.validations).toEqual(expect.arrayContaining([longer, ...others]));
  expect(again.tabs[1]!.validations).toEqual(workbook.tabs[1]!.validations);
});
