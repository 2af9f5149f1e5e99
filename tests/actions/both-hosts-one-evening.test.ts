import { smallClub } from "../faults/small-club";
import { scenarios } from "../faults/writing-actions";
import { bothHosts } from "./both-hosts";
import { meantCells } from "./both-hosts-contract";
import type { Club, Typed } from "./held-workbook";
import { changedCells, type Standing, whatStands, withNames } from "./what-stands";

// Every request that writes, one after another in one workbook, among cells of the coach's that are
// easily spoilt by reading and writing them back.
const own: readonly (readonly Typed[])[] = [
  ["'007", "'=SUM(A1:A9)", "'+44", "@gym", "'-", " room 2 ", "'10%", "'TRUE", "'1/2"],
  [0.1, 1e21, -0.5, 123456789.123456, 1e-7, 9007199254740991],
  ["first line\nsecond line", "“quotes” and 'more'", "naïve – ≥ 🏃", "שלום", "\u200bblank?", "\t"],
  [{ formula: "=LEN(A1)", value: 3 }, { formula: '=IF(1=1,"","x")', value: 0 }, "x".repeat(40_000)],
  ["2026-02-28", "23:59", "1899-12-31", "2026-06-21"],
];
const club: Club = {
  tabs: {
    ...smallClub(),
    Kit: own,
    Notes: [["", "", "far right"], [], ["", "middle"]],
  },
  marks: { Squad: { range: "A1:A9", formula: '=A1="injured"', colour: "#000000", bold: true } },
};

const seen: [string, unknown, Standing][][] = [];

test.each(bothHosts)(
  "on %s the coach's cells stay what they are through all of them",
  async (_, open) => {
    const book = await open(club);
    const stands = () => whatStands(book.tabs(), book.kept());
    const steps: [string, unknown, Standing][] = [];
    seen.push(steps);
    for (const { request, name, prepare, message } of scenarios) {
      prepare?.(book);
      const asked = message(book);
      if (request === "forgetDamaged") await book.reopen();
      const before = stands();
      const said = withNames(book.ask(request, asked), book.tabs());
      const after = stands();
      const title = `${request}: ${name}`;
      expect([title, changedCells(before, after, Object.keys(club.tabs))]).toEqual([
        title,
        meantCells(request),
      ]);
      steps.push([title, said, after]);
    }
    book.close();
  },
);

test.each(scenarios.map((one, at) => [`${one.request}: ${one.name}`, at] as const))(
  "%s: both hosts leave the same and say the same",
  (_, at) => {
    const [memory, platform] = seen as [(typeof seen)[number], (typeof seen)[number]];
    expect(memory).toHaveLength(scenarios.length);
    expect(platform[at]).toEqual(memory[at]);
  },
);
