import type { RowCheckView, SquadView } from "../../../src/actions/messages";
import { bothHosts } from "../both-hosts";
import type { HeldWorkbook, Typed } from "../held-workbook";
import { sampleCells } from "../sample-club";
import { withSlip } from "../with-slip";

const today = "2026-06-28";
// Three athletes of the sample are enough, and few rows the same on both hosts.
const few = (cells: readonly (readonly unknown[])[], column: number) =>
  cells.filter((row, at) => at === 0 || /Ilka|Tomas|Oona/.test(String(row[column]))) as Typed[][];
const tabs = {
  Athletes: few(sampleCells("Athletes"), 0),
  Sets: few(withSlip(sampleCells("Sets")), 2),
};
/** The cell of the mistyped load. */
const place = `H${tabs.Sets.findIndex((row) => row[7] === 58) + 1}`;
const asked = (book: HeldWorkbook) => book.ask("rowCheck", { today }) as unknown as RowCheckView;
const looks = (book: HeldWorkbook) => asked(book).problems.filter(({ right }) => right !== null);
const squad = (book: HeldWorkbook) => book.ask("squadView", { today }) as unknown as SquadView;
const whyOf = (book: HeldWorkbook) =>
  squad(book).lines.find(({ athlete }) => athlete === "Tomas Reyerson")!.why;
const seen: unknown[] = [];

test.each(bothHosts)(
  "on %s a set far off all others is listed with what is usual, until it is mended or said to be right",
  async (_, open) => {
    const book = await open({ tabs, marks: {} });
    const before = book.standing("Sets");
    const [one, ...others] = looks(book);
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      tab: "Sets",
      cell: place,
      found: "58 kg at 0.61 m/s",
      kind: "set-far-off",
      mend: null,
    });
    expect(one!.toDo).toMatch(
      /^Tomas Reyerson, back squat: usually \d\.\d\d m\/s at that load or 8\d kg at that speed\. Correct it, or say it is right\.$/,
    );
    // As many to check in the squad's view as the Rows view lists, and named beside the word.
    const { problems, names } = asked(book);
    expect(squad(book).toCheck).toBe(problems.length + names.length);
    expect(whyOf(book)).toMatch(/far off all the others, on 7 Apr: 58 kg at 0\.61 m\/s/);
    seen.push(one!.toDo);

    const set = one!.right!;
    book.ask("answerSet", { today, set });
    expect([looks(book), book.standing("Sets")]).toEqual([[], before]);
    expect(whyOf(book)).not.toMatch(/far off/);
    await book.reopen();
    expect(looks(book)).toEqual([]);
    book.ask("forgetSet", { today, set });
    expect(looks(book).map(({ cell }) => cell)).toEqual([place]);

    // Mended by hand it is asked about no more; and an answer for another figure counts for none.
    book.ask("answerSet", { today, set: set.replace("58 kg", "59 kg") });
    expect(looks(book)).toHaveLength(1);
    book.type("Sets", Number(place.slice(1)), 8, 85);
    expect(looks(book)).toEqual([]);
    book.close();
  },
);

test("both hosts say the same", () => {
  expect(seen).toHaveLength(2);
  expect(seen[1]).toBe(seen[0]);
});

test("in a second tab of sets the cell is that tab's, whatever the spelling of the name", async () => {
  const [headings = [], ...rows] = tabs.Sets;
  const moved = rows.map((row) =>
    row.map((cell) => (cell === "Tomas Reyerson" ? "T. Reyerson" : cell)),
  );
  const [, open] = bothHosts[0];
  const book = await open({
    tabs: {
      ...tabs,
      Sets: [headings, ...rows.filter((row) => row[2] === "Ilka Brandmoor")] as Typed[][],
      "Older sets": [headings, ...moved.filter((row) => row[2] !== "Ilka Brandmoor")] as Typed[][],
    },
    marks: {},
  });
  book.ask("answerName", { today, written: "T. Reyerson", athlete: "Tomas Reyerson", same: true });
  const [one] = looks(book);
  const { cell, tab } = one!;
  const [, row] = /^H(\d+)$/.exec(cell)!;
  expect([tab, book.standing("Older sets")[Number(row) - 1]!.slice(2, 8)]).toEqual([
    "Older sets",
    ["T. Reyerson", "back squat", "1", "work", "5", "58"],
  ]);
  book.close();
});
