import { catalogue } from "../../src/catalogue";
import { helpInWords } from "../../src/catalogue/help-in-words";

const said = (formulas: Parameters<typeof helpInWords>[1]["formulas"], parameters = {}) =>
  helpInWords(catalogue, { formulas, parameters });

test("British English is the catalogue's own", () => {
  expect(said({})).toEqual(catalogue);
});

test("a formula's own wording of a parameter comes before the one many formulas share", () => {
  const [check] = said(
    { ROW_CHECK: { summary: "Umber.", parameters: { athletes: "Own." } } },
    { athletes: "Shared." },
  ).filter(({ name }) => name === "ROW_CHECK");
  expect(check!.summary).toBe("Umber.");
  expect(check!.parameters.map(({ help }) => help)).toContain("Own.");
  const squad = said({}, { athletes: "Shared." }).find(({ name }) => name === "SQUAD_TABLE")!;
  expect(squad.parameters.find(({ name }) => name === "athletes")!.help).toBe("Shared.");
  expect(squad.summary).toBe(catalogue.find(({ name }) => name === "SQUAD_TABLE")!.summary);
});

test("what a formula gives and its parameters' names are the same in every language", () => {
  const before = catalogue.map(({ name, parameters }) => [name, ...parameters.map((p) => p.name)]);
  const after = said({ ROW_CHECK: { summary: "Umber." } }, { athletes: "Shared." });
  expect(after.map(({ name, parameters }) => [name, ...parameters.map((p) => p.name)])).toEqual(
    before,
  );
  expect(after.map(({ compute }) => compute)).toEqual(catalogue.map(({ compute }) => compute));
});

test("help for a formula or parameter that is not there stops the build, naming it", () => {
  expect(() => said({ ROW_CHEK: { summary: "Umber." } })).toThrow("the formula ROW_CHEK");
  expect(() => said({ ROW_CHECK: { parameters: { tabel: "Vik." } } })).toThrow(
    "ROW_CHECK has no parameter tabel.",
  );
  expect(() => said({}, { athleets: "Nael." })).toThrow("No formula has a parameter athleets.");
});
