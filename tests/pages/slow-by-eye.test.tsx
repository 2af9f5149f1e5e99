import render from "preact-render-to-string";
import { cardPages } from "../../src/actions/pages/card-pages";
import { printableWeek } from "../../src/actions/pages/printable-week";
import { isoFromDay } from "../../src/coaching/calendar/day";
import { Card } from "../../src/pages/card";
import { memoryWorkbook } from "../actions/memory-workbook";
import { firstDay } from "../coaching/series/invented-season";

/** The card of an athlete whose speeds nobody takes, under the squad's own rule. */
function cardWith(shareOff: number): string {
  const book = memoryWorkbook({
    Sets: [
      ["Date", "Athlete", "Exercise", "Kind", "Reps", "Load (kg)"],
      ...[0, 3, 7, 10, 14].flatMap((at) =>
        Array.from({ length: 5 }, () => [
          ...[isoFromDay(firstDay + at), "Ada Fenwright", "squat", "work", 5, 60],
        ]),
      ),
    ],
    Rules: [
      ["Rule", "Value"],
      ["Load off on a slow day", shareOff],
    ],
  });
  const [card] = cardPages(printableWeek(book, firstDay + 20, null, []));
  return render(<Card card={card!} />);
}

test("without speeds the card takes off what the squad's rule says, as the formula does", () => {
  expect(cardWith(0.1)).toContain("if it is so again take about 10 % off. Ill");
  expect(cardWith(0.05)).toContain("if it is so again take about 5 % off. Ill");
  expect(cardWith(0)).toContain("by eye, or with fewer left in reserve: repeat it once. Ill");
});
