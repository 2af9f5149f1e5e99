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

test("just a wobble over or under, and the baseline itself, belong to the inner heights", () => {
  const edges = seasonWeeks(seasonOf([3, 3.01, 0, -0.01, -3, -3.01]), gymDay(0));
  expect(edges.flatMap(({ early, late }) => [early, late])).toEqual([
    ...["upper", "above", "upper", "lower", "lower", "below"],
  ]);
});

test("the picture is of the value followed, whichever stands first", () => {
  const season = seasonOf([4, 4], gymDay, [-4, -4]);
  const [bar, jump] = season.measures;
  const picture = (value: typeof bar) => seasonWeeks({ ...season, value: value! }, gymDay(0))[0];
  expect(picture(bar)).toMatchObject({ early: "above", late: "above" });
  expect(picture(jump)).toMatchObject({ early: "below", late: "below" });
  // Two values of one kind, or two kinds of one lift, are told apart as well.
  for (const other of [
    { ...jump!, kind: "bar speed" as const },
    { ...jump!, of: "back squat" },
  ]) {
    const measures = [bar!, other];
    expect(seasonWeeks({ ...season, measures, value: other }, gymDay(0))[0]).toMatchObject({
      early: "below",
    });
  }
});

test("sessions without a value followed are empty weeks, and a week is there from its Monday on", () => {
  const season = seasonOf([4, 4]);
  const none = {
    ...season,
    value: null,
    measures: [],
    sessions: season.sessions.map((one) => ({ ...one, percents: [] })),
  };
  expect(seasonWeeks(none, gymDay(0))).toMatchObject([{ early: null, late: null, wobbles: null }]);
  const monday = gymDay(2) - 1;
  expect(seasonWeeks({ ...season, asOf: monday }, gymDay(0)).map((week) => week.monday)).toEqual([
    monday - 7,
    monday,
  ]);
});
