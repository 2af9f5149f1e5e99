import { askedFor, UsageError } from "../../../src/local-host/command-line/arguments";

test.each([
  [["frobnicate"], "There is no command “frobnicate”."],
  [["formula", "sample-sheets"], "formula needs a workbook and a formula in quotes."],
  [["squad", "--as-of", "12/05/2026"], "--as-of needs a day, such as 2026-06-28."],
  [["squad", "--as-of", "2026-02-30"], "--as-of needs a day, such as 2026-06-28."],
  [["squad", "--as-of"], "--as-of needs a day, such as 2026-06-28."],
  [["check", "--as-of", "2026-05-12"], "check does not take --as-of."],
  [["squad", "a", "b"], "squad does not know what to do with “b”."],
  [["open", "--port", "99999"], "--port needs a number from 1 to 65535."],
  [["open", "--port"], "--port needs a number from 1 to 65535."],
])("%j is wrong usage", (words, sentence) => {
  expect(() => askedFor(words)).toThrow(new UsageError(sentence));
});

test.each([
  [[], "help"],
  [["--help"], "help"],
  [["squad", "-h"], "help"],
  [["start", "--no-serve"], "start"],
])("%j asks for %s", (words, command) => {
  expect(askedFor(words).command).toBe(command);
});

test("flags may stand before or after the workbook", () => {
  const one = askedFor(["squad", "log.xlsx", "--as-of", "2026-05-12", "--json"]);
  expect(one).toEqual(askedFor(["squad", "--json", "--as-of", "2026-05-12", "log.xlsx"]));
  expect(one).toMatchObject({ workbook: "log.xlsx", asOf: "2026-05-12", json: true });
});
