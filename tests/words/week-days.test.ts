import { dayFromIso } from "../../src/coaching/calendar/day";
import { gymDaysWords } from "../../src/words/week-days";

const monday = dayFromIso("2026-06-29")!;
const race = { race: "R4", matters: "A" };

test("days that one rule refuses stand in one line, three and more in a row from first to last", () => {
  const before = (day: number, hours: number) => ({
    day: monday + day,
    refused: { code: "before-race", hours, limit: 72, race },
  });
  const after = (day: number, hours: number) => ({
    day: monday + day,
    refused: { code: "after-race", hours, limit: 48, race },
  });
  const all = [
    before(0, 71),
    before(2, 60),
    before(3, 40),
    before(4, 17),
    after(5, 7),
    after(6, 31),
  ];
  expect(gymDaysWords({ best: [{ day: monday + 1 }], second: [], all } as never)).toEqual([
    "Best: Tue 30 Jun.",
    "Mon 29 Jun and Wed 1 Jul to Fri 3 Jul refused: within 72 h before R4, an A race.",
    "Sat 4 Jul and Sun 5 Jul refused: within 48 h after R4, an A race.",
  ]);
});
