import type { AthleteView, RowCheckView, WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { monday, smallClub, today, tomas } from "../faults/small-club";
import { bothHosts } from "./both-hosts";
import { sampleCells, sampleClub } from "./sample-club";

// The invented club as other coaches would keep it: with decimal commas, and in pounds, a pound being
// 0.45359237 kg (international yard and pound agreement 1959).
const pound = 0.45359237;
const withCommas = (cells: readonly (readonly unknown[])[]) =>
  cells.map((row, at) =>
    at === 0
      ? row
      : row.map((cell) =>
          /\d\.\d/.test(String(cell)) ? String(cell).replace(/(\d)\.(?=\d)/g, "$1,") : cell,
        ),
  );
const loads = /^(Load|Bar mass|Mass) \(kg\)$/;
/** Masses to whole steps of 5 lb; plates to what a plate of about that mass is in pounds. */
const plateOf = new Map([
  [25, 55],
  [20, 45],
  [15, 35],
  [10, 25],
  [5, 10],
  [2.5, 5],
  [1.25, 2.5],
]);
function inPounds(cells: readonly (readonly unknown[])[]): unknown[][] {
  const [headings = [], ...rows] = cells;
  const isMass = headings.map((heading) => loads.test(String(heading)));
  return [
    headings.map((heading) => String(heading).replace("(kg)", "(lb)")),
    ...rows.map((row) =>
      row.map((cell, at) => {
        if (!isMass[at] || typeof cell !== "number") return cell;
        return headings[at] === "Mass (kg)" ? plateOf.get(cell)! : 5 * Math.round(cell / pound / 5);
      }),
    ),
  ];
}
const day = "2026-06-28";
const week = { today: day, monday: null, changes: [] };
const club = {
  comma: sampleClub(
    Object.fromEntries(
      (["Sets", "Jumps", "Diary", "Plates", "Runs", "Rules"] as const).map((name) => [
        name,
        withCommas(sampleCells(name)),
      ]),
    ),
  ),
  pounds: sampleClub({
    Sets: inPounds(sampleCells("Sets")),
    Plates: inPounds(sampleCells("Plates")),
  }),
};

/** Every text of an answer, but for what is the coach's own or a name for asking. */
function texts(answer: unknown, key = ""): string[] {
  if (typeof answer === "string")
    return /^(found|mend|toDo|why|day|monday)$/.test(key) ? [] : [answer];
  if (Array.isArray(answer)) return answer.flatMap((one) => texts(one, key));
  if (typeof answer !== "object" || answer === null) return [];
  return Object.entries(answer).flatMap(([name, part]) => texts(part, name));
}
const tabOf = (book: (typeof club)["comma"]) => {
  const { id } = book.tabNamed("Next week");
  return { values: book.values(id), formulas: book.formulas(id) };
};

test.each([
  ["weekView", week],
  ["squadView", { today: day }],
  ["setUpView", { today: day }],
  ["athleteView", { today: day, athlete: "Tomas Reyerson" }],
  ["athleteView", { today: day, athlete: "Wren Castellow" }],
  ["diaryView", { today: day, athlete: "Tomas Reyerson" }],
])("to a coach who writes commas, %s writes commas", (name, message) => {
  const said = texts(serveRequest(club.comma, name, message));
  expect(said.filter((text) => /\d\.\d/.test(text))).toEqual([]);
});

test("commas stand where figures are broken: speeds, plates, shares and reserves", () => {
  const { lines, numbers } = serveRequest(club.comma, "weekView", week) as WeekView;
  expect(numbers).toEqual({ unit: "kg", mark: "," });
  const { sessions } = lines.find(({ athlete }) => athlete === "Ilka Brandmoor")!;
  expect(sessions[0]).toMatchObject({ loadKg: 67.5, platesWords: "20 + 2,5 + 1,25 a side" });
  expect(sessions[0]!.bands[0]!.speed).toMatch(/^0,\d\d or faster$/);
  expect(sessions[0]!.ifWritten.join(" ")).toMatch(/About \d,\d repetitions/);
});

test("the Next week tab writes commas into its texts, numbers as numbers, and its answers too", () => {
  serveRequest(club.comma, "writeWeek", {
    today: day,
    monday: "2026-06-29",
    changes: [],
    athletes: null,
  });
  const { values, formulas } = tabOf(club.comma);
  const [ilka] = values.filter(([athlete]) => athlete === "Ilka Brandmoor");
  expect(ilka![6]).toBe(67.5);
  expect(formulas.find((row) => row.some((one) => one.includes("67.5,")))![7]).toBe(
    '=IF(G5=67.5,"20 + 2,5 + 1,25","20 + 2,5 + 1,25 make 67,5")',
  );
  const said = values.flat().filter((cell) => typeof cell === "string" && !cell.startsWith("("));
  expect(said.filter((text) => /\d\.\d/.test(text as string))).toEqual([]);
  const asked = formulas.flat().filter((formula) => formula.startsWith("=DAY_LOAD"));
  expect(asked).toHaveLength(15);
  for (const formula of asked) expect(formula).toMatch(/,0\.1,","\)$/);
});

test("to a coach who keeps pounds nothing is told in kg, and loads are whole steps of 5 lb", () => {
  const view = serveRequest(club.pounds, "weekView", week) as WeekView;
  expect(view.numbers).toEqual({ unit: "lb", mark: "." });
  expect(texts(view).filter((text) => /\bkg\b/.test(text))).toEqual([]);
  for (const { sessions } of view.lines) {
    for (const { loadKg, platesWords, bands } of sessions) {
      expect(loadKg / pound).toBeCloseTo(5 * Math.round(loadKg / pound / 5), 6);
      const masses = platesWords.replace(" a side", "").split(" + ").map(Number);
      expect(masses.filter((one) => ![55, 45, 35, 25, 10, 5, 2.5].includes(one))).toEqual([]);
      // What is lifted on a slow day is built from the gym's plates as the planned load is.
      for (const { lift } of bands) expect(lift).toMatch(/^\d*[05] lb$|^no heavy work$/);
    }
  }
  const { loadSpeed, numbers } = serveRequest(club.pounds, "athleteView", {
    today: day,
    athlete: "Tomas Reyerson",
  }) as AthleteView;
  expect(numbers.unit).toBe("lb");
  expect(loadSpeed!.inWords).toMatch(/m\/s at 150 lb, .* at 210 lb\.$/);
});

test("the Next week tab of a coach who keeps pounds is in pounds, and stays so when written again", () => {
  const message = { today: day, monday: "2026-06-29", changes: [], athletes: null };
  serveRequest(club.pounds, "writeWeek", message);
  const { values, formulas } = tabOf(club.pounds);
  const [headings] = values.filter(([athlete]) => athlete === "Athlete");
  expect(headings).toEqual(
    expect.arrayContaining(["Marker lb", "Load lb", "Plates a side, lb", "Type speed, m/s"]),
  );
  const at = values.findIndex(([athlete]) => athlete === "Tomas Reyerson");
  // Held at the 185 lb planned before: the 175 of his last session were its slow marker's.
  expect([values[at]![1], values[at]![6]]).toEqual([150, 185]);
  expect(formulas[at]![7]).toBe(`=IF(G${at + 1}=185,"55 + 10 + 5","55 + 10 + 5 make 185")`);
  const formula = formulas[at]![3]!;
  expect(formula).toMatch(/,45,0\.\d\d?,0\.1,"lb"\)$/);
  expect(serveRequest(club.pounds, "writeWeek", message)).toEqual({ said: "15 rows the same." });
});

test("a tab begun in kg goes on in kg when the coach's rows are in pounds by now", () => {
  const book = sampleClub();
  const message = { today: day, monday: "2026-06-29", changes: [], athletes: ["Tomas Reyerson"] };
  serveRequest(book, "writeWeek", message);
  for (const name of ["Sets", "Plates"] as const) {
    for (const [i, row] of inPounds(sampleCells(name)).entries()) {
      for (const [j, cell] of row.entries()) book.type(name, i + 1, j + 1, cell);
    }
  }
  serveRequest(book, "writeWeek", message);
  const { values } = tabOf(book);
  expect(values[3]).toEqual(expect.arrayContaining(["Marker kg", "Load kg"]));
  const load = values.find(([athlete]) => athlete === "Tomas Reyerson")![6] as number;
  expect(load).toBeCloseTo(185 * pound, 5);
});

const small = smallClub();
const lists = {
  ...small,
  Sets: withCommas(inPounds(small.Sets!)) as (string | number)[][],
  Diary: withCommas(small.Diary!) as (string | number)[][],
};
const seen: unknown[] = [];

test.each(bothHosts)("on %s a mend is told in the coach's mark", async (_, open) => {
  const book = await open({ tabs: lists, marks: {} });
  const { problems, mark } = book.ask("rowCheck", { today }) as unknown as RowCheckView;
  const { tabId, cell, found, mend } = problems.find((one) => one.mend === "7.5")!;
  const { said } = book.ask("mendCell", { today, tabId, cell, found, mend });
  book.ask("writeWeek", { today, monday, changes: [], athletes: [tomas] });
  book.ask("writeWeek", { today, monday, changes: [], athletes: [tomas] });
  expect([mark, said]).toEqual([",", "Diary C2: 75 is now 7,5. Undo takes it back."]);
  seen.push(book.standing("Next week"));
  book.close();
});

test("both hosts leave the same Next week in pounds and with commas", () => {
  expect(seen).toHaveLength(2);
  expect(seen[1]).toEqual(seen[0]);
  const [, , , headings, line] = seen[0] as string[][];
  expect(headings).toContain("Load lb");
  expect(line![3]).toMatch(/,"lb,"\)$/);
});
