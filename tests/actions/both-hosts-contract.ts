import type { RequestName } from "../../src/actions/requests";
import { smallClub } from "../faults/small-club";
import type { Scenario } from "../faults/writing-actions";
import { bothHosts } from "./both-hosts";
import type { Club, HeldWorkbook } from "./held-workbook";
import { changedCells, whatStands, withNames } from "./what-stands";

/** The small club, with a formula and a highlight of the coach's own. */
export const club: Club = {
  tabs: {
    ...smallClub(),
    Squad: [
      ["Athlete", "Word", "Letters"],
      ["Tomas Reyerson", "slipping", { formula: "=LEN(A2)", value: 14 }],
    ],
  },
  marks: { Squad: { range: "A1:A9", formula: '=A1="injured"', colour: "#000000", bold: true } },
};

/** The one cell of the coach's that a request is for, of those that are for one. */
const meant: { readonly [Request in RequestName]?: string } = {
  mendCell: "Diary 2,3",
  writeDiaryAnswer: "Diary 2,6",
};

/** The coach's cells that a request is there to change. */
export const meantCells = (request: RequestName) => [meant[request] ?? []].flat();

/** Asks three times, the workbook closed and opened before and after; all that was said and left. */
async function asked(open: (club: Club) => Promise<HeldWorkbook>, scenario: Scenario) {
  const book = await open(club);
  const stands = () => whatStands(book.tabs(), book.kept());
  const places: [string, number, number][] = [];
  const typed = () =>
    places.map(([tab, row, column]) => book.standing(tab)[row - 1]?.[column - 1] ?? "");
  const type: HeldWorkbook["type"] = (tab, row, column, value) => {
    places.push([tab, row, column]);
    book.type(tab, row, column, value);
  };
  scenario.prepare?.({ ...book, type });
  const message = scenario.message(book);
  await book.reopen();
  const before = { ...stands(), typed: typed() };
  const turns = [1, 2, 3].map(() => {
    const said = withNames(book.ask(scenario.request, message), book.tabs());
    return { said, left: { ...stands(), typed: typed() } };
  });
  await book.reopen();
  const opened = stands();
  book.close();
  return { before, turns, opened };
}

/** One contract for every request that writes, whichever host holds the workbook. */
export function holdsOnBothHosts(scenario: Scenario): void {
  describe(`${scenario.request}: ${scenario.name}`, () => {
    const seen: unknown[] = [];

    test.each(bothHosts)("on %s: done once, no harm when repeated", async (_, open) => {
      const all = await asked(open, scenario);
      seen.push(all);
      const { before, turns, opened } = all;
      const [once, again, third] = turns;
      const { typed, ...left } = once!.left;
      expect(once!.left).not.toEqual(before);
      expect(again!.left).toEqual(once!.left);
      expect(third).toEqual(again);
      expect(opened).toEqual(left);
      const own = changedCells(before, left, Object.keys(club.tabs));
      expect(own).toEqual(meantCells(scenario.request));
      expect(typed).toEqual(before.typed);
      expect(left.highlights.Squad?.[0]).toEqual(club.marks.Squad);
    });

    test("both hosts leave the same and say the same", () => {
      expect(seen).toHaveLength(2);
      expect(seen[1]).toEqual(seen[0]);
    });
  });
}

/** Whether a request is about what is remembered, not about cells. */
export const isAnswer = ({ request }: Scenario) => /^(answer|forget)/.test(request);
