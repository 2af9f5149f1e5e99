import { dayFromIso } from "../../../src/coaching/calendar/day";
import { seasonWeeks } from "../../../src/coaching/season/season-weeks";
import { plainSeasonPicture, seasonPicture } from "../../../src/words/season-picture";
import { gymDay, seasonOf } from "../diary/constructed";

// Wobble 3 %: above 1 wobble, upper half, lower half, below 1 wobble, by sessions of four weeks.
const percents = [4, 1, -1, -4, null, -9, 2, null];
// Asked anew in each test, so that a fault in it belongs to one.
const weeks = () => seasonWeeks(seasonOf(percents), gymDay(0));

test("each week has its Tuesday on the left and its Thursday on the right, in four heights", () => {
  expect(weeks().map(({ early, late }) => [early, late])).toEqual([
    ["above", "upper"],
    ["lower", "below"],
    [null, "below"],
    ["upper", null],
  ]);
  expect(seasonPicture(weeks())).toBe("⠑⢄⢀⠂");
});

test("the plain picture has one sign a week and a space for no session", () => {
  expect(plainSeasonPicture(weeks())).toBe("--_-");
  const late = seasonWeeks(seasonOf([...percents, null, null, 7, 7]), gymDay(0));
  expect(plainSeasonPicture(late)).toBe("--_- ¯");
  expect(seasonPicture(late)).toHaveLength(6);
});

test("pictures of a squad start together: weeks before an athlete's first session are empty", () => {
  const early = seasonWeeks(seasonOf(percents), dayFromIso("2026-03-25")!);
  expect(plainSeasonPicture(early)).toBe("  --_-");
});
