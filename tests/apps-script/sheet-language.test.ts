import { SheetLanguage } from "../../src/apps-script/sheet-language";

// Decimal marks: Unicode CLDR, as Node's own internationalisation library has them. That a formula's
// separators follow the spreadsheet's language: the online sheet's own help on locale settings.

const of = (locale: string) => new SheetLanguage(() => locale);

test.each([
  ["en_GB", "."],
  ["en_US", "."],
  ["ja_JP", "."],
  ["de_CH", "."],
  ["de_DE", ","],
  ["fr_FR", ","],
  ["nl_NL", ","],
  ["sv_SE", ","],
  ["pt_BR", ","],
  ["pl_PL", ","],
])("%s writes its decimals with %s", (locale, mark) => {
  expect(of(locale).decimalMark()).toBe(mark);
});

const day = '=DAY_LOAD(A5,0.86,B5,3,2.5,67.5,"20, 15 and 2.5",20,0.76)';

test("where a comma is the decimal mark, semicolons part the arguments and texts stay as they are", () => {
  const written = '=DAY_LOAD(A5;0,86;B5;3;2,5;67,5;"20, 15 and 2.5";20;0,76)';
  expect(of("de_DE").written(day)).toBe(written);
  expect(of("de_DE").plain(written)).toBe(day);
  // The platform may hand it over as it was in English.
  expect(of("de_DE").plain(day)).toBe(day);
});

test("a tab's name in its quotes is no number and no argument", () => {
  const formula = "=SUM('Block 1,5; spring'!A1:A9,2.5)";
  const written = "=SUM('Block 1,5; spring'!A1:A9;2,5)";
  expect(of("fr_FR").written(formula)).toBe(written);
  expect(of("fr_FR").plain(written)).toBe(formula);
});

test("where a point is, nothing changes, a coach's semicolons included", () => {
  expect(of("en_GB").written(day)).toBe(day);
  expect(of("en_GB").plain("={1;2}")).toBe("={1;2}");
});

test("the language is asked for once, and not at all for a formula without either", () => {
  const locale = jest.fn(() => "de_DE");
  const language = new SheetLanguage(locale);
  language.written("=A1");
  language.plain("=A1*2");
  expect(locale).not.toHaveBeenCalled();
  language.written(day);
  language.decimalMark();
  expect(locale).toHaveBeenCalledTimes(1);
});
