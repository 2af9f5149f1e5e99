import type { SeasonHold } from "../../../../src/coaching/hold/season-hold";
import { howAllChanged } from "../../../../src/coaching/hold/shared-change/how-all-changed";
import { chance } from "../../../bench/seasons/chance";

const wobble = 4;
const first = 100;
const shared = 160;
type Change = (day: number) => number;
const still: Change = () => 0;
const step =
  (wobbles: number, from = shared): Change =>
  (day) =>
    day < from ? 0 : wobbles;
const slope =
  (wobbles: number, days: number): Change =>
  (day) =>
    wobbles * Math.max(0, Math.min(1, (day - shared + 1) / days));

/** Six athletes of two sessions a week: what bar speed and jump truly do, in wobbles, with their noise. */
function squad(bars: (athlete: number) => Change, jumps: ((athlete: number) => Change) | null) {
  const random = chance(41);
  return Array.from({ length: 6 }, (_, athlete) => ({
    measures: [{ kind: "bar speed", wobble }, ...(jumps ? [{ kind: "jump height", wobble }] : [])],
    sessions: Array.from({ length: 34 }, (_, at) => {
      const day = first + 7 * Math.floor(at / 2) + 3 * (at % 2);
      const read = (change: Change) => wobble * (change(day) + random.normal());
      return { day, percents: [read(bars(athlete)), ...(jumps ? [read(jumps(athlete))] : [])] };
    }),
  })) as unknown as SeasonHold[];
}
const how = (squadNow: readonly SeasonHold[], word = "slipping", reading = "bar speed") =>
  howAllChanged(squadNow, { word, day: shared, reading });

test("bar speeds fall from one day on while jumps hold: the tool may have changed", () => {
  expect(
    how(
      squad(
        () => step(-2),
        () => still,
      ),
    ),
  ).toBe("at once");
  expect(how(squad(() => step(-2), null))).toBe("at once");
});

test("bar speeds and jumps fall alike, at once or not: no one tool reads both", () => {
  expect(
    how(
      squad(
        () => step(-2),
        () => step(-2),
      ),
    ),
  ).toBe("in both");
  expect(
    how(
      squad(
        () => slope(-2, 35),
        () => slope(-2, 35),
      ),
    ),
  ).toBe("in both");
  const jumps = how(
    squad(
      () => step(-2),
      () => step(-2),
    ),
    "slipping",
    "jumps",
  );
  expect(jumps).toBe("in both");
});

test("what rises with the bars is a rise, not a fall of the jumps", () => {
  expect(
    how(
      squad(
        () => step(2),
        () => step(1),
      ),
      "rising",
    ),
  ).toBe("in both");
  expect(
    how(
      squad(
        () => step(2),
        () => step(-1),
      ),
      "rising",
    ),
  ).toBe("at once");
  expect(
    how(
      squad(
        () => step(-2),
        () => step(1),
      ),
    ),
  ).toBe("at once");
});

test("of jumps, what counts is the mean since the shared day: 0.6 wobbles are a change of their own", () => {
  const flat = (wobbles: number) =>
    squad(
      () => step(-2),
      () => still,
    ).map((one) => ({
      ...one,
      sessions: one.sessions.map(({ day, percents }) => ({
        day,
        percents: [percents[0]!, day < shared ? -99 : wobble * wobbles],
      })),
    })) as unknown as SeasonHold[];
  expect(how(flat(-0.59))).toBe("at once");
  expect(how(flat(-0.61))).toBe("in both");
});

test("speed alone that sinks over weeks, or from day to day of each athlete's own, came little by little", () => {
  expect(
    how(
      squad(
        () => slope(-2.5, 35),
        () => still,
      ),
    ),
  ).toBe("little by little");
  const own = (athlete: number) => step(-2.5, shared - 15 + 6 * athlete);
  expect(how(squad(own, () => still))).toBe("little by little");
});

test("one misreading among the jumps makes no fall of them", () => {
  const [one, ...others] = squad(
    () => step(-2),
    () => still,
  );
  const sessions = one!.sessions.map(({ percents, ...rest }, at) => ({
    ...rest,
    percents: at === 33 ? [percents[0]!, -100 * wobble] : percents,
  }));
  expect(how([{ ...one!, sessions }, ...others] as SeasonHold[])).toBe("at once");
});

test("a value not read that day is no value", () => {
  const gaps = squad(
    () => step(-2),
    () => still,
  ).map((one) => ({
    ...one,
    sessions: one.sessions.map(({ day, percents }) => ({ day, percents: [percents[0]!, null] })),
  })) as unknown as SeasonHold[];
  expect(how(gaps)).toBe("at once");
});

/** Bar speeds that fall on the shared day, and what the jumps of a day lie off, in wobbles. */
const jumpsOff = (of: (day: number, at: number) => number | null) =>
  squad(
    () => step(-2),
    () => still,
  ).map((one) => ({
    ...one,
    sessions: one.sessions.map(({ day, percents }, at) => {
      const off = of(day, at);
      return { day, percents: [percents[0]!, off === null ? null : wobble * off] };
    }),
  })) as unknown as SeasonHold[];

test("days on which nobody jumped make no fall of the jumps smaller", () => {
  expect(how(jumpsOff((_, at) => (at % 2 ? -0.8 : null)))).toBe("in both");
});

test("what is read on the shared day itself is of the change", () => {
  // A session's day: two and a half wobbles then and half a one on the fifteen after it are 0.63 on the mean.
  const day = first + 63;
  const off = jumpsOff((on) => (on === day ? -2.5 : -0.5));
  expect(howAllChanged(off, { word: "slipping", day, reading: "bar speed" })).toBe("in both");
});
