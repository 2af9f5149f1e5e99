import * as numfmt from "numfmt";
import { typedValue } from "../../src/local-host/engine/typed-value";
import { inLanguagesOrder } from "../../src/local-host/page/in-languages-order";
import { serialFromIso } from "../../src/local-host/spreadsheet-date";

const typed = (text: string, language: string) => typedValue(text, numfmt as never, language, 2026);
const day = (iso: string, z: string) => ({ v: serialFromIso(iso), z });

// Orders of day and month by language: Unicode CLDR, short dates of en-GB, de and en-US.
test.each([
  ["12/05/2026", "en-GB", day("2026-05-12", "dd/mm/yyyy")],
  ["12/05/2026", "de-DE", day("2026-05-12", "dd/mm/yyyy")],
  ["12/05/2026", "en-US", day("2026-12-05", "mm/dd/yyyy")],
  ["5.6.2026", "de-DE", day("2026-06-05", "d.m.yyyy")],
  ["12-05-26", "en-GB", day("2026-05-12", "dd-mm-yy")],
  ["12/5", "en-GB", day("2026-05-12", "d/m")],
  ["12/5", "en-US", day("2026-12-05", "m/d")],
  ["2026-05-12", "en-GB", day("2026-05-12", "yyyy-mm-dd")],
  ["05/28/2026", "en-GB", day("2026-05-28", "mm/dd/yyyy")],
])("%s is in %s the day it says", (text, language, found) => {
  expect(typed(text, language)).toEqual(found);
});

test.each([
  ["0,734", "de-DE", 0.734],
  ["57,5", "de-DE", 57.5],
  ["12,5%", "de-DE", 0.125],
  ["0.62", "de-DE", 0.62],
  ["0.62", "en-GB", 0.62],
  ["1,234", "en-GB", 1234],
  ["0,734", "en-GB", null],
  ["12,5%", "en-GB", null],
  ["12.5%", "en-GB", 0.125],
  ["85%", "en-GB", 0.85],
  ["5:30", "en-GB", 5.5 / 24],
  ["0.70 0.72 0.69", "en-GB", null],
  ["5x15+5", "en-GB", null],
])("%s is in %s the number %s", (text, language, number) => {
  const found = typed(text, language);
  if (number === null) expect(found).toBeNull();
  else expect(found?.v).toBeCloseTo(number, 12);
});

test.each([
  ["12/05/2026", "dd/mm/yyyy", "en-US", "05/12/2026"],
  ["05/12/2026", "mm/dd/yyyy", "en-GB", "12/05/2026"],
  ["12/5", "d mmm", "en-US", "5/12"],
  ["12/05/2026", "dd/mm/yyyy", "en-GB", "12/05/2026"],
  ["12/05/2026", "yyyy-mm-dd", "en-GB", "12/05/2026"],
  ["12/05/2026", "0.0", "en-US", "12/05/2026"],
  ["12/05/2026", "h:mm", "en-US", "12/05/2026"],
  ["5x15/5", "dd/mm/yyyy", "en-US", "5x15/5"],
])(
  "%s typed into a cell that shows days as %s is read in %s as %s",
  (text, pattern, language, read) => {
    expect(inLanguagesOrder(text, pattern, language)).toBe(read);
  },
);
