import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleCells, sampleClub } from "../actions/sample-club";

test("where the sessions a week are left blank, nobody who lifts once a week is told to have missed half of them", () => {
  const [heading, ...rows] = sampleCells("Athletes");
  const column = heading!.indexOf("Sessions a week");
  const blank = rows.map((row) => row.map((cell, at) => (at === column ? "" : cell)));
  const book = sampleClub({ Athletes: [heading!, ...blank] });
  const paper = weekPaper(printableWeek(book, dayFromIso("2026-06-14")!, null, []));
  const once = rows.filter((row) => row[column] === 1).map(([name]) => String(name));
  expect(once.length).toBeGreaterThan(0);
  for (const name of once) {
    expect(paper.sentences.join(" ")).not.toContain(`${name}, `);
    expect(paper.lines.find(({ athlete }) => athlete === name)?.sessions).toMatch(/of 1$/);
  }
});
