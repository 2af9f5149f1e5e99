import { sayRowIssue } from "../../src/words/row-issues";
import { issue } from "./invented-issue";

const toDo = (code: string, found: string, facts = {}) =>
  sayRowIssue(issue(code, facts, { found })).whatToDo;

test.each([
  ["31.06.2026", "June has 30 days. Type the day it was, such as 2026-06-30."],
  ["31/9/2026", "September has 30 days. Type the day it was, such as 2026-09-30."],
  ["11/31/26", "November has 30 days. Type the day it was, such as 2026-11-30."],
  ["2026-02-30", "February 2026 has 28 days. Type the day it was, such as 2026-02-28."],
  ["30 Feb 2028", "February 2028 has 29 days. Type the day it was, such as 2028-02-29."],
])("a date past the end of its month says how many days that has: %s", (found, said) => {
  expect(toDo("not-a-day", found)).toBe(said);
});

test.each(["tuesday", "soon", "2026-13-05", "2026-06-45", "31.06.", "45.45.2026"])(
  "what is no date of any month is asked for with an example: %s",
  (found) => {
    expect(toDo("not-a-day", found)).toBe("Type the day it was, such as 2026-06-23.");
  },
);

test("a list of speeds with a word in it is asked for as a list, with its own speeds", () => {
  const facts = { piece: "fast", heading: "Rep speeds (m/s)" };
  expect(toDo("not-a-number", "0.59 fast 0.56", facts)).toBe(
    "Type the speeds with a space between, such as 0.59 0.56; words belong in the note.",
  );
  expect(toDo("not-a-number", "fast", facts)).toContain("such as 0.62 0.60;");
  expect(toDo("not-a-number", "many", { heading: "Reps" })).toBe(
    "Type one number in “Reps”; words belong in the note.",
  );
});

test("a rule's name that is nearly one is asked about, as an athlete's is", () => {
  const near = "Weeks at a step before the next";
  expect(toDo("rule-unknown", "Weeks at a step", { near })).toBe(
    `Is this “${near}”? Type it so, or the name of another rule as Set up lists them.`,
  );
  expect(toDo("rule-unknown", "Moon phase")).toBe(
    "Use the name of a rule as Set up lists them under Rules.",
  );
});
