import { shownShare, shownValue } from "../../../src/local-host/command-line/shown-value";
import { textTable, width } from "../../../src/local-host/command-line/text-table";

test("numbers stand to the right, words to the left, whatever letters they have", () => {
  expect(
    textTable([
      ["Athlete", "Change"],
      ["Ilka", "+2 %"],
      ["Zoë", "−11 %"],
      ["Bea", "–"],
    ]),
  ).toBe("Athlete  Change\n───────────────\nIlka       +2 %\nZoë       −11 %\nBea           –\n");
});

test("an accent that is a sign of its own takes no room", () => {
  expect(width("Zoe\u0308")).toBe(3);
});

test("a cell cannot move the terminal's cursor", () => {
  expect(shownValue("a\u001b[2Jb\nc")).toBe("a [2Jb c");
});

test("numbers keep four figures, shares are percent with a true minus sign", () => {
  expect([shownValue(0.123456), shownValue(1234.56), shownValue(-2)]).toEqual([
    "0.1235",
    "1234.56",
    "−2",
  ]);
  expect([
    shownShare(-0.084, true),
    shownShare(0.02, true),
    shownShare(0.02, false),
    shownShare("–", true),
  ]).toEqual(["−8 %", "+2 %", "2 %", "–"]);
});
