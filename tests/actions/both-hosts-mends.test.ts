import type { RowCheckView } from "../../src/actions/messages";
import { smallClub, today, tomas } from "../faults/small-club";
import { bothHosts } from "./both-hosts";
import type { Club } from "./held-workbook";
import { changedCells, whatStands, withNames } from "./what-stands";

// Every kind of value that is proposed, written one after another: each into its own cell, as what it is.
const { Sets: sets = [], Diary: diary = [], ...others } = smallClub();
const squat = (day: string | number, load: string | number, speeds: string) => [
  day,
  tomas,
  "back squat",
  "work",
  5,
  load,
  speeds,
];
const club: Club = {
  tabs: {
    ...others,
    Sets: [
      ...sets,
      squat(46_190, 70, "0.61 0.60 0.59"),
      squat("2026-06-19", "72.5?", "0.61 0.60 0.59"),
      squat("2026-06-19", 700, "0.61 0.60 0.59"),
      squat("2026-06-19", 70, "0.61 60 0.59"),
      squat("2026-06-19", 70, "0,61 0,6 59"),
    ],
    Diary: [...diary, ["2026-06-20", tomas, "7?", 3, 5, ""]],
    Runs: [
      ["Date", "Athlete", "Kind", "Minutes", "Exertion"],
      ["2026-06-16", tomas, "easy", "45?", 3],
      ["2026-06-18", tomas, "easy", 40, "3?"],
    ],
    Rules: [
      ["Rule", "Value"],
      ["Velocity loss cap", 20],
    ],
  },
  marks: {},
};

/** What stands in each cell afterwards: a day is a day, a number a number, a list of speeds text. */
const mended = {
  "Sets 50,1": "2026-06-17",
  "Sets 51,6": "72.5",
  "Sets 52,6": "70",
  "Sets 53,7": "'0.61 0.6 0.59",
  "Sets 54,7": "'0,61 0,6 0,59",
  "Diary 2,3": "7.5",
  "Diary 5,3": "7",
  "Runs 2,4": "45",
  "Runs 3,5": "3",
  "Rules 2,2": "0.2",
};
const seen: unknown[] = [];

test.each(bothHosts)("on %s each goes into its own cell alone, once", async (_, open) => {
  const book = await open(club);
  const stands = () => whatStands(book.tabs(), book.kept());
  const proposed = () =>
    (book.ask("rowCheck", { today }) as unknown as RowCheckView).problems.filter(
      ({ mend }) => mend !== null,
    );
  const written: (readonly [string, string])[] = [];
  const sentences: unknown[] = [];
  for (const { tabId, cell, found, mend } of proposed()) {
    const before = stands();
    const message = { today, tabId, cell, found, mend };
    const first = book.ask("mendCell", message).said;
    const after = stands();
    for (const place of changedCells(before, after)) {
      const [, tab, row, column] = /^(.+) (\d+),(\d+)$/.exec(place)!;
      written.push([place, after.cells[tab!]![Number(row) - 1]![Number(column) - 1]!]);
    }
    sentences.push(first, book.ask("mendCell", message).said);
    expect(stands()).toEqual(after);
  }
  expect(written).toEqual(Object.entries(mended));
  expect(proposed()).toEqual([]);
  seen.push([sentences, stands(), withNames(book.ask("rowCheck", { today }), book.tabs())]);
  book.close();
});

test("both hosts leave the same cells and say the same", () => {
  expect(seen).toHaveLength(2);
  expect(seen[1]).toEqual(seen[0]);
});
