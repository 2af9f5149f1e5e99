import { rowIssueSentences } from "../../src/words/row-issues";
import { kindWords } from "../../src/words/row-kinds";

test("every code has a kind in plain words, and none is a code in disguise", () => {
  for (const code of Object.keys(rowIssueSentences)) {
    const words = kindWords(code);
    expect(words.length).toBeGreaterThan(4);
    expect(words.length).toBeLessThan(36);
    expect(words).not.toMatch(/implausible|unsettled|-/);
  }
});

test("a code that is none is our own mistake", () => {
  expect(() => kindWords("toString")).toThrow("no kind");
});
