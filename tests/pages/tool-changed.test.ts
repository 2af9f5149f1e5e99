import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleClub } from "../actions/sample-club";

test("of an athlete whose tool has changed the head coach reads when the speed was last compared", () => {
  const week = printableWeek(sampleClub(), dayFromIso("2026-06-28")!, null, []);
  const { lines } = weekPaper(week);
  const nils = lines.find(({ athlete }) => athlete === "Nils Quarrington");
  // Bar tool B from 2 June on.
  expect(nils?.words).toMatch(
    /^; a loss of \d+ % would show; back squat speed last compared on \d+ May$/,
  );
  const others = lines.filter((line) => line !== nils);
  for (const { words } of others) expect(words).not.toContain("last compared");
});
