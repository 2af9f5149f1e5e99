import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleCells, sampleClub } from "../actions/sample-club";

const name = "Ilka Brandmoor";

test("a jump that fell while the bar holds its speed is named on the head coach's page", () => {
  const words = (share: number) => {
    const jumps = sampleCells("Jumps").map(([day, who, test, height, ...rest]) => [
      day,
      who,
      test,
      who === name && test === "box jump" && String(day) > "2026-06-14"
        ? Number(height) * share
        : height,
      ...rest,
    ]);
    const week = printableWeek(sampleClub({ Jumps: jumps }), dayFromIso("2026-06-28")!, null, []);
    return weekPaper(week).lines.find(({ athlete }) => athlete === name)!.words;
  };
  expect(words(0.93)).toMatch(/^; box jump −\d+ % now, wobble \d+ %: too few sessions to call it$/);
  expect(words(1)).toMatch(/^; a loss of \d+ % would show$/);
});
