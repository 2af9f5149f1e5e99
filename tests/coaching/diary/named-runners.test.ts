import {
  namedInBrackets,
  namedRunners,
  namesRunner,
} from "../../../src/coaching/diary/named-runners";

test("several names of one cell are parted at commas, signs and words; blanks between are none", () => {
  expect(namedRunners("Ilka; Bram, Jo/Kofi + Ada & Tove and Wren und Oona")).toEqual(
    "Ilka Bram Jo Kofi Ada Tove Wren Oona".split(" "),
  );
  expect(namedRunners("Sandra Rolanda")).toEqual(["Sandra Rolanda"]);
  expect([namedRunners(""), namedRunners("Ilka;;Bram,")]).toEqual([[], ["Ilka", "Bram"]]);
});

test("no name names nobody", () => {
  expect(namesRunner("Ilka, Bram", "bram")).toBe(true);
  expect([namesRunner("Ilka, Bram", "Bra"), namesRunner("", ""), namesRunner("Ilka", "")]).toEqual([
    false,
    false,
    false,
  ]);
});

test("brackets of a race may name its runners", () => {
  expect(namedInBrackets("10k champs ( Ilka, Tomas )")).toEqual(["Ilka", "Tomas"]);
  expect(namedInBrackets("10k (B)")).toEqual(["B"]);
  expect([namedInBrackets("10k champs"), namedInBrackets("10k ()")]).toEqual([[], []]);
});
