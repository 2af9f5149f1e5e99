import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { squadView } from "../../src/actions/squad/squad-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleClub } from "./sample-club";

// From 12 May on the club's bars are read a tenth slower, and its jumps as ever.
const today = dayFromIso("2026-06-28")!;
const slower = (sets: unknown[][]) => {
  const at = sets[0]!.findIndex((heading) => /^Rep speeds/.test(String(heading)));
  const read = (speeds: unknown) =>
    String(speeds).replace(/\d\.\d+/g, (speed) => (0.9 * Number(speed)).toFixed(2));
  return sets.map((row) =>
    row.map((cell, column) =>
      column === at && String(row[0]) >= "2026-05-12" ? read(cell) : cell,
    ),
  );
};

test("the head coach reads of a change that many share, the coach in the sidebar what to do about it", () => {
  const club = sampleClub({ Sets: slower });
  const small = weekPaper(printableWeek(club, today, null, [])).lines.flatMap((line) =>
    /athletes followed/.test(line.small) ? [line.small] : [],
  );
  const [first] = small;
  expect(first).toMatch(
    /^\d of \d+ athletes followed are slipping in bar speed from about \d+ May: look at the tool first\.$/,
  );
  expect(new Set(small).size).toBe(1);
  const told = squadView(club, today).lines.filter(({ why }) => why.includes(first!.slice(0, -1)));
  expect(told.map(({ athlete }) => athlete).length).toBeGreaterThan(2);
  for (const { why } of told)
    expect(why).toContain("look at the tool first; if nothing changed there, the fall is theirs");
});
