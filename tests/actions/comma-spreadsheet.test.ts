import type { Done, WeekView } from "../../src/actions/messages";
import { openServices } from "../faults/held-by-services";
import { monday, today } from "../faults/small-club";

// A spreadsheet whose language has decimal commas, online in most of Europe: it takes no formula with
// commas between its arguments.

const askWeek = { today, monday, changes: [], athletes: null };

async function opened(locale: string) {
  const host = await openServices();
  host.calls.watch = {
    answered: (call, result) => (call === "Spreadsheet.getSpreadsheetLocale" ? locale : result),
  };
  const formulas = () =>
    host
      .tab("Next week")
      .getDataRange()
      .getFormulas()
      .flat()
      .filter((formula) => formula !== "");
  const write = () => (host.run("writeWeek", [askWeek]) as Done).said;
  const week = () => host.run("weekView", [{ today, monday, changes: [] }]) as WeekView;
  return { host, formulas, write, week };
}

test("the week's formulas are written in the spreadsheet's own language, and known again", async () => {
  const english = await opened("en_GB");
  const german = await opened("de_DE");
  const said = english.write();
  expect(german.write()).toBe(said);
  const plain = english.formulas();
  expect(plain.length).toBeGreaterThan(0);
  for (const formula of plain) expect(formula).toMatch(/^=(DAY_LOAD|IF)\([^;]+\)$/);
  const written = german.formulas();
  expect(written).toHaveLength(plain.length);
  for (const formula of written) {
    expect(formula.replace(/"[^"]*"/g, "")).toMatch(
      /^=(DAY_LOAD\([A-Z]+\d+|IF\([A-Z]+\d+=[\d,]+);[^.]+\)$/,
    );
  }
  // Written once more, all stands as it was: none of it is taken for a coach's own.
  expect(german.write()).toBe(english.write());
  expect(german.formulas()).toEqual(written);
});

test("figures are said with the language's mark where no cell tells of another", async () => {
  const english = await opened("en_GB");
  const german = await opened("de_DE");
  const speeds = ({ host }: Awaited<ReturnType<typeof opened>>) =>
    host
      .tab("Sets")
      .getRange(1, 7, 49, 1)
      .setValues(Array(49).fill([""]));
  for (const one of [english, german]) speeds(one);
  expect(english.week().numbers).toMatchObject({ mark: "." });
  expect(german.week().numbers).toMatchObject({ mark: "," });
});
