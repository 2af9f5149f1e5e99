import { catalogue } from "../../src/catalogue";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { findTables } from "../../src/rows/find-tables";
import { understandTable } from "../../src/rows/read-table";
import { type TableName, tableNames } from "../../src/rows/table-name";

// Every pattern is read in moments; one that took its square would not end within this.

const today = dayFromIso("2026-06-16") as number;
/** The most letters a cell of the online sheet holds. */
const most = 50_000;
const filled = (piece: string) => piece.repeat(Math.ceil(most / piece.length)).slice(0, most);
/** A cell of nothing else, and one in which it parts a figure from a letter. */
const bothWays = (piece: string) => [filled(piece), `1${filled(piece).slice(2)}x`];

/** Pieces that a reader looks for, over and over: what is matched piece by piece must not start again at each. */
const pieces = [
  ..." 0()[-+;:x@,.?\t\n–'\"",
  ..." 1|0.6 |5x5 |95x5x5 @ .62 |a, |1/|2026-|12:|5+|kg|1 x |from |Mon |a(a|ab)|wie Di |é|  a|, from ,".split(
    "|",
  ),
];
const headings: Readonly<Record<TableName, string>> = {
  Athletes: "Athlete|Group|Experience|Birth year|Supervisor|Sessions|Notes|Baseline from",
  Availability: "Athlete|From|Until|May do|By whom|Pain|Note",
  Sets: "Date|Athlete|Exercise|Kind|Reps|Load (kg)|Rep speeds (m/s)|Note",
  Jumps: "Date|Athlete|Test|Height (cm)|Stack|Contact time|Flight time|Note",
  Diary: "Date|Athlete|Sleep (h)|Soreness|Mood|New today|Note|Food note|Pain",
  Runs: "Date|Athlete|Kind|Minutes|RPE|Distance|Note",
  Races: "Date|Start|Race|Who|Distance|Matters|Note",
  Plates: "mass kg|thickness cm|owned|Note",
  Rules: "Rule|Value|Note",
};

test.each(pieces)(
  "cells filled with %j to the sheet's limit, and between a figure and a letter, are read or reported, and reading ends",
  (piece) => {
    for (const [big, table] of bothWays(piece).flatMap((one) =>
      tableNames.map((name) => [one, name] as const),
    )) {
      const heading = headings[table].split("|");
      const everywhere = [heading, heading.map(() => big)];
      const oneEach = [
        heading,
        ...heading.map((_, at) => heading.map((__, on) => (on === at ? big : "2026-06-02"))),
      ];
      const above = [heading.map(() => big), heading, ["2026-06-02", "Oona Petrakell"]];
      for (const cells of [everywhere, oneEach, above]) {
        const { reading } = understandTable(table, cells, { today });
        // As many records as a row can hold, however much its cells say.
        expect(reading.records.length).toBeLessThan(2_000);
        for (const { found } of reading.issues) expect(found.length).toBeLessThanOrEqual(60);
        for (const { sureness } of findTables([{ name: table, cells }], { today }))
          expect(sureness).toBeLessThanOrEqual(1);
      }
    }
  },
);

test.each(catalogue)(
  "$name ends with a cell filled to the sheet's limit in any place",
  ({ compute, examples, parameters }) => {
    let answered = 0;
    for (const piece of pieces) {
      for (const [at] of parameters.entries()) {
        for (const big of bothWays(piece)) {
          const args: unknown[] = [...examples[0]!.args];
          while (args.length < at) args.push("");
          args[at] = big;
          try {
            compute(args);
          } catch (error) {
            expect((error as Error).constructor).toBe(Error);
            expect((error as Error).message.length).toBeLessThan(1_500);
          }
        }
        answered++;
      }
    }
    expect(answered).toBe(pieces.length * parameters.length);
  },
);

test("a cell of ten thousand schemes is no session, and a supervisor of fifty thousand letters is nobody", () => {
  const sets = understandTable(
    "Sets",
    [
      headings.Sets.split("|"),
      ["2026-06-02", "Oona Petrakell", "back squat", "work", 5, filled("5x5 "), "", ""],
    ],
    { today },
  );
  expect(sets.reading.records).toMatchObject([{ reps: 5, loadKg: null }]);
  expect(sets.reading.issues.map(({ cell }) => cell)).toEqual(["F2"]);
  const athletes = understandTable(
    "Athletes",
    [headings.Athletes.split("|"), ["Bea Lindqvale", "", "novice", 2009, filled("("), 2, "", ""]],
    { today },
  );
  expect(athletes.reading.records).toMatchObject([{ supervisor: "", supervisorFrom: null }]);
  expect(athletes.reading.issues.map(({ code }) => code)).toContain("supervisor-day");
});
