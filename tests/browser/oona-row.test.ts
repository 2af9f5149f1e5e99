import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { type ServedPage, servedPage, typeInto, until, values } from "./served-page";

/** Oona's own headings, and a formula beside them that says what of her rows was not read. */
const workbook: WorkbookData = {
  name: "Oona",
  tabs: [
    plainTab("Sets", [
      ["Date", "Athlete", "Lift", "Set", "Reps", "Load (kg)", "Speed (m/s)"].map((value) => ({
        value,
      })),
      [{ value: "" }],
      [{ value: "" }],
      [{ value: null, formula: '=ROW_CHECK(A1:G2,"Sets")' }],
      [{ value: null, formula: "=VELOCITY_LOSS(G2:G2)" }],
    ]),
  ],
  names: [],
  properties: {},
};
let shown: ServedPage;
beforeAll(async () => {
  shown = await servedPage({ workbook });
});
afterAll(() => shown.close());

test("Oona's row is read as she types it: 19/05/2026, squat, 1, 5, 57,5 and 0,64", async () => {
  const row = ["19/05/2026", "Oona", "squat", "1", "5", "57,5", "0,64"];
  for (const [at, text] of row.entries()) {
    await typeInto(shown.page, "Sets", `${String.fromCharCode(65 + at)}2`, text);
  }
  const said = async () => String((await values(shown.page, "Sets"))[3]![0]);
  await until(async () => (await said()) === "all rows read");
  // One number is one repetition: no loss can be told, and that is what is said, not that it is no speed.
  const loss = async () => String((await values(shown.page, "Sets"))[4]![0]);
  expect(await loss()).toMatch(/#ERROR|at least two repetitions/);
  // Read wrong the other way the comma would have made 575 kg and 64 m/s: those are complained of.
  await typeInto(shown.page, "Sets", "F2", "575");
  await until(async () => /^F2/.test(await said()));
  expect(shown.strays).toEqual([]);
});
